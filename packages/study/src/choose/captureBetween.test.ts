import type { SystemFilter } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf } from "../../../../tests/support/plainSystem.js";
import { captureBetween, captureBy } from "./captureBetween.js";

const um = 1e-6;
const { betas: _, ...bare } = elementOf("own", { drop: 1e3 }).filter;
const tested = (...betas: [size: number, beta: number][]): SystemFilter => ({
  ...bare,
  betas: betas.map(([size, beta]) => ({ size: size * um, beta })),
});
const own = tested([10, 20], [25, 200]);
const rating = { kind: "beta 75", size: 10 * um } as const;

describe("captureBetween(fitted, other)", () => {
  test.each<[string, SystemFilter, string]>([
    ["of the same betas", tested([10, 20], [25, 200]), "same"],
    ["of higher betas", tested([10, 40], [25, 400]), "finer"],
    ["of lower betas", tested([10, 10], [25, 100]), "coarser"],
    ["of betas higher at one size and lower at the other", tested([10, 60], [25, 80]), "mixed"],
    ["that leaks past its seal", { ...own, leak: 0.02 }, "coarser"],
    ["of no betas", bare, "not known"],
    ["of a nominal rating", { ...bare, statedRating: { kind: "nominal", size: 10 * um } }, "not known"],
  ])("of one %s", (_, other, fineness) => {
    expect(captureBetween(own, other)).toBe(fineness);
    const turned = { finer: "coarser", coarser: "finer" }[fineness] ?? fineness;
    expect(captureBetween(other, own)).toBe(turned);
  });

  test("does not know two of which neither is known", () => expect(captureBetween(bare, bare)).toBe("not known"));

  test("takes what only differs by rounding for the same", () => {
    expect(captureBetween(own, tested([10, 20 * (1 + 1e-12)], [25, 200]))).toBe("same");
    expect(captureBetween(own, tested([10, 20 * (1 - 1e-12)], [25, 200]))).toBe("same");
  });
});

describe("captureBy(filter)", () => {
  const middle = (filter: SystemFilter) => [...(captureBy(filter)?.efficiency.middle ?? [])];

  test("is known by tested betas, or by a rating that stands for one, stated or the medium's own", () => {
    const medium: SystemFilter["medium"] = { by: "rating", ...rating, area: 0.5, thickness: 6e-4 };
    const byOne = middle(tested([10, 75]));
    expect(byOne.length).toBeGreaterThan(0);
    expect(middle({ ...bare, statedRating: rating })).toEqual(byOne);
    expect(middle({ ...bare, medium })).toEqual(byOne);
  });

  test("goes by the rating that is stated before that of the medium", () => {
    const medium: SystemFilter["medium"] = { by: "rating", kind: "beta 75", size: 30 * um, area: 0.5, thickness: 6e-4 };
    expect(middle({ ...bare, medium, statedRating: rating })).toEqual(middle({ ...bare, statedRating: rating }));
  });

  test("is of the filter the right way round, and of what leaks past its seal", () => {
    expect(middle({ ...own, reversed: true })).toEqual(middle(own));
    const leaking = middle({ ...own, leak: 0.1 });
    // A tenth of the flow keeps all it carries, so no more than nine tenths are caught.
    expect(Math.max(...middle(own))).toBeGreaterThan(0.99);
    expect(Math.max(...leaking)).toBeLessThanOrEqual(0.9);
    expect(Math.max(...leaking)).toBeGreaterThan(0.89);
  });

  test("is null where nobody can say", () => expect(captureBy(bare)).toBeNull());
});
