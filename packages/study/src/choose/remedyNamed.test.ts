import type { SystemFilter } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { elementOf } from "../../../../tests/support/plainSystem.js";
import { fittedFrom } from "./fittedFrom.js";
import { hoseBores, nextBore } from "./hoseBores.js";
import type { RemedyAnswer } from "./RemedyAnswer.js";
import { remedyNamed } from "./remedyNamed.js";

test("remedyNamed(answer, of) finds a result by the name that workings give it", () => {
  const answer = { single: ["s0", "s1"], pairs: ["p0", "p1"] } as unknown as RemedyAnswer;
  const names = ["single 0", "single 1", "single 2", "pairs 1", "pairs 2", "now", "now 0", "", "single"];
  expect(names.map((of) => remedyNamed(answer, of))).toEqual(["s0", "s1", null, "p1", null, null, null, null, null]);
});

const INCH = 0.0254;

test("nextBore(bore) is the next size up of hose as sold, and a quarter more beyond the list", () => {
  expect(hoseBores.map((bore) => bore / INCH)).toEqual(
    [7, 9, 11, 14, 18, 22, 28].map((one) => expect.closeTo(one / 32, 12)),
  );
  expect(nextBore(0.001)).toEqual({ bore: (7 / 32) * INCH, listed: true });
  expect(nextBore((7 / 32) * INCH)).toEqual({ bore: (9 / 32) * INCH, listed: true });
  expect(nextBore(0.3 * INCH)).toEqual({ bore: (11 / 32) * INCH, listed: true });
  expect(nextBore((7 / 8) * INCH)).toEqual({ bore: expect.closeTo(1.25 * (7 / 8) * INCH, 12), listed: false });
  expect(nextBore(0.05)).toEqual({ bore: 0.0625, listed: false });
});

test("nextBore(bore) takes a size less than 2 % wider for the same hose", () => {
  const size = (9 / 32) * INCH;
  expect(nextBore(size / 1.019).bore).toBeGreaterThan(size);
  expect(nextBore(size / 1.021).bore).toBe(size);
});

test("fittedFrom(filter, catalogue) is the element whose medium, tests, area and style are alike, whatever its name", () => {
  const plain = elementOf("plain", { drop: 1e3 });
  const drop = elementOf("drop", { drop: 2e3 });
  const betas = elementOf("betas", { drop: 1e3, filter: { betas: [{ size: 1e-5, beta: 75 }] } });
  const style = elementOf("style", { drop: 1e3, filter: { style: "spin-on" } });
  const area = elementOf("area", { drop: 1e3, filter: { area: 0.5 } });
  const { capacityTest: _, ...untested } = plain.filter;
  const bare = { ...plain, name: "bare", filter: untested as SystemFilter };
  const { betas: _betas, ...blind } = plain.filter;
  const unknown = { ...plain, name: "unknown", filter: blind as SystemFilter };
  const catalogue = [drop, betas, style, area, bare, unknown, plain];
  for (const one of catalogue) {
    const filter = { ...one.filter, name: "place", restriction: 2, blocked: true, thread: "M20" };
    expect(fittedFrom(filter, catalogue)?.name).toBe(one.name);
    expect(
      fittedFrom(
        filter,
        catalogue.filter((other) => other !== one),
      ),
    ).toBeNull();
  }
});

test("fittedFrom(filter, catalogue) takes figures that differ by rounding alone for alike, and the first of those", () => {
  const [one, same] = ["one", "same"].map((name) => elementOf(name, { drop: 1e3 * (1 + 1e-12) }));
  const { filter } = elementOf("place", { drop: 1e3 });
  expect(one && same && fittedFrom(filter, [one, same])?.name).toBe("one");
  expect(fittedFrom(filter, [elementOf("other", { drop: 1e3 * (1 + 1e-6) })])).toBeNull();
});
