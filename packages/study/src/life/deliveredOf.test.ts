import {
  distributionFromCode,
  distributionFromCounts,
  distributionFromMass,
  type KnownCapture,
  massOf,
  parseCode,
} from "@thirstline/core";
import type { System, SystemFilter, SystemPart } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, plainSystem } from "../../../../tests/support/plainSystem.js";
import { captureFor } from "./captureFor.js";
import { deliveredOf } from "./deliveredOf.js";
import { efficiencyOf } from "./efficiencyOf.js";
import { filtersOf } from "./filtersOf.js";
import { firstToGo } from "./firstToGo.js";
import { keptBy } from "./keptBy.js";

describe("deliveredOf(fuel)", () => {
  const distribution = (fuel: Parameters<typeof deliveredOf>[0]) => {
    const found = deliveredOf(fuel);
    if ("code" in found) throw new Error(found.code);
    return found;
  };

  test("is all of the solids stated by mass, of the dust named or the usual one, with nothing carried on", () => {
    const fine = distribution({ solids: 0.01, dust: "A2 fine" });
    expect(massOf(fine.distribution)).toBeCloseTo(0.01, 9);
    expect(fine).toEqual({ distribution: distributionFromMass({ mass: 0.01, dust: "A2 fine" }), extrapolated: 0 });
    expect(distribution({ solids: 0.01 }).distribution).toEqual(distributionFromMass({ mass: 0.01 }));
    expect(distribution({ solids: 0.01, code: "20/18/15" }).distribution).toEqual(distributionFromMass({ mass: 0.01 }));
  });

  test("is what counts or a code tell, with the share of the mass that lies beyond the counted sizes", () => {
    for (const [fuel, made] of [
      [{ counts: { at4: 1000, at6: 300, at14: 20 } }, distributionFromCounts({ at4: 1000, at6: 300, at14: 20 })],
      [{ code: "20/18/15" }, distributionFromCode(parseCode("20/18/15"))],
    ] as const) {
      if (!made.known) throw new Error(made.reason);
      const { below, above } = made.extrapolated;
      const found = distribution(fuel);
      expect(found.distribution).toEqual(made);
      expect(found.extrapolated).toBeCloseTo(below + above, 12);
      expect(below).toBeGreaterThan(0);
      expect(above).toBeGreaterThan(0);
    }
  });

  test("is none where nothing is stated, and no solids, with the reason, where what is stated gives no sizes", () => {
    expect(deliveredOf({})).toEqual({ code: "no delivered fuel" });
    expect(deliveredOf({ counts: { at4: 1000 } })).toEqual({ code: "no solids", why: "too few sizes counted" });
    expect(deliveredOf({ code: "28/28/28" })).toEqual({ code: "no solids", why: "more than 1 g/L of solids" });
  });
});

describe("captureFor(filter)", () => {
  const { betas: _, ...bare } = elementOf("own", { drop: 1e3 }).filter;
  const betas = [
    { size: 10e-6, beta: 20 },
    { size: 25e-6, beta: 200 },
  ];
  const rating = { kind: "beta 75", size: 10e-6 } as const;
  const most = (filter: SystemFilter) => {
    const capture = captureFor(filter);
    return capture.known ? Math.max(...capture.efficiency.middle) : capture.reason;
  };

  test("goes by betas, else by a stated rating, else by the medium's own", () => {
    const medium: SystemFilter["medium"] = { by: "rating", kind: "beta 200", size: 10e-6, area: 0.5, thickness: 6e-4 };
    const one = (beta: number) => captureFor({ ...bare, betas: [{ beta, size: 10e-6 }] });
    expect(captureFor({ ...bare, betas, statedRating: rating })).toEqual(captureFor({ ...bare, betas: [...betas] }));
    expect(captureFor({ ...bare, statedRating: rating, medium })).toEqual(one(75));
    expect(captureFor({ ...bare, medium })).toEqual(one(200));
    expect(most(bare)).toBe("no beta stated");
    expect(most({ ...bare, statedRating: { kind: "nominal", size: 10e-6 } })).toBe("nominal rating");
  });

  test("does not know of a filter the wrong way round, and loses what leaks past its seal", () => {
    expect(most({ ...bare, betas, reversed: true })).toBe("fitted backwards");
    expect(most({ ...bare, betas, leak: 0.1 })).toBeLessThanOrEqual(0.9);
    expect(most({ ...bare, betas, leak: 0.1 })).toBeGreaterThan(0.89);
    expect(most({ ...bare, statedRating: rating, leak: 0.5 })).toBeLessThanOrEqual(0.5);
  });

  test("keeps what it worked out for the same betas, leak and direction, and for no others", () => {
    const first = captureFor({ ...bare, betas });
    expect(captureFor({ ...bare, betas, leak: 0 })).toBe(first);
    expect(captureFor({ ...bare, betas, leak: 0.1 })).not.toEqual(first);
    expect(captureFor({ ...bare, betas })).toEqual(first);
    expect(captureFor({ ...bare, betas, reversed: true })).not.toEqual(first);
    expect(captureFor({ ...bare, betas })).toEqual(first);
  });
});

test("efficiencyOf(capture, at) goes straight from the least over the middle to the most", () => {
  const [low, middle, high] = [
    [0, 0.2],
    [0.4, 0.4],
    [0.6, 1],
  ].map((bins) => Float64Array.from(bins));
  const capture = { efficiency: { low, middle, high } } as unknown as KnownCapture;
  const at = (share: number) => [...efficiencyOf(capture, share)].map((one) => expect.closeTo(one, 12));
  expect(at(0)).toEqual([0, 0.2]);
  expect(at(0.25)).toEqual([0.2, 0.3]);
  expect(efficiencyOf(capture, 0.5)).toBe(middle);
  expect(at(0.75)).toEqual([0.5, 0.7]);
  expect(at(1)).toEqual([0.6, 1]);
  const known = { efficiency: { low: middle, middle, high: middle } } as unknown as KnownCapture;
  expect(efficiencyOf(known, 0)).toBe(middle);
});

test("keptBy(filter, flow) is the stated share at the stated flow, none at no flow, all of an absorber's without a share", () => {
  const filter = (more: object) => ({ ...elementOf("own", { drop: 1e3 }).filter, ...more }) as SystemFilter;
  const separation = { efficiency: 0.9, flow: 1e-4 };
  expect(keptBy(filter({ separation }), 1e-4)).toBeCloseTo(0.9, 12);
  // At half the flow as much again of what is left: 1 - 0.1 x 0.1.
  expect(keptBy(filter({ separation }), 0.5e-4)).toBeCloseTo(0.99, 12);
  expect(keptBy(filter({ separation }), 0)).toBe(0);
  expect(keptBy(filter({}), 1e-4)).toBe(0);
  expect(keptBy(filter({ absorbs: { water: 0.1, restriction: 2 } }), 1e-4)).toBe(1);
  expect(keptBy(filter({ separation, absorbs: { water: 0.1, restriction: 2 } }), 1e-4)).toBeCloseTo(0.9, 12);
});

test("filtersOf(system) has every filter in the order the fuel meets them, those in banks too", () => {
  const filter = (name: string) => elementOf(name, { drop: 1e3 }).filter;
  const line: SystemPart = { part: "line", name: "line", length: 1, bore: 0.01, roughness: 1e-6 };
  const system: System = {
    ...plainSystem,
    tanks: plainSystem.tanks.map((tank) => ({ ...tank, path: [line, filter("in tank")] })),
    suction: [line, { part: "bank", name: "pair", branches: [[filter("A")], [line, filter("B")]] }, filter("C")],
    delivery: [filter("fine")],
  };
  expect(filtersOf(system).map(({ name }) => name)).toEqual(["in tank", "A", "B", "C", "fine"]);
  const { delivery: _, ...open } = { ...system, tanks: [], suction: [] };
  expect(filtersOf(open)).toEqual([]);
});

test("firstToGo(elements) are those that make up most of the rise, and alike", () => {
  const of = (...shares: number[]) => firstToGo(shares.map((share) => ({ share }))).map(({ share }) => share);
  expect(of(0.2, 0.5, 0.3)).toEqual([0.5]);
  expect(of(0.4, 0.2, 0.4)).toEqual([0.4, 0.4]);
  expect(of(0.4, 0.4 * (1 + 1e-9), 0.2)).toHaveLength(2);
  expect(of(0.4, 0.4 * (1 + 1e-5), 0.2)).toHaveLength(1);
  expect(of(0, 0)).toEqual([]);
  expect(of()).toEqual([]);
});

test("firstToGo(elements) takes shares for alike within a millionth of the first, however small they are", () => {
  const of = (...shares: number[]) => firstToGo(shares.map((share) => ({ share }))).length;
  expect([of(0.01, 0.01 * (1 + 1e-4)), of(0.01, 0.01 * (1 + 1e-7))]).toEqual([1, 2]);
});
