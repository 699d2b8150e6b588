import { lawConstants, loadAtRatio, loadingLaw, resistanceRatio } from "@thirstline/core";
import { expect, test } from "vitest";
import { flat, isPlain, MOST, shapes } from "./shapes.js";

test("shapes has every law of core: once with one constant, at a quarter, a half and three quarters with two", () => {
  for (const [law, constants] of Object.entries(lawConstants)) {
    const mixes = shapes.filter((shape) => shape.law === law).map(({ mix }) => mix);
    expect(mixes, law).toEqual(constants.length === 1 ? [null] : [0.25, 0.5, 0.75]);
  }
  expect(shapes.filter(isPlain).every(({ mix }) => mix === null)).toBe(true);
  expect(shapes.filter(isPlain).length).toBeLessThan(shapes.length);
});

test("flat does not grow", () => {
  expect([flat.law, flat.mix, flat.ratio(5), flat.load(5)]).toEqual(["none", null, 1, 0]);
});

test.each(shapes.filter(isPlain))(
  "shape $law comes to four times clean at a load of 1, as core's law does all along",
  (shape) => {
    const { law, ratio, load } = shape;
    if (law === "none") throw new Error("a law");
    const [single] = lawConstants[law];
    const full = loadAtRatio(loadingLaw(law, { [single as string]: 1 }), 4);
    const own = loadingLaw(law, { [single as string]: full });
    for (const one of [0.02, 0.3, 1, 1.2]) {
      const wanted = resistanceRatio(own, one);
      if (wanted < MOST) expect(ratio(one) / wanted, `at ${one}`).toBeCloseTo(1, 3);
    }
    expect(load(4)).toBeCloseTo(1, 4);
  },
);

test.each(shapes)("shape $law ($mix) has a load for each resistance, and comes back to it", ({ ratio, load }) => {
  let last = 0;
  for (const one of [1.001, 1.4, 3, 20, 700, 9999]) {
    expect(ratio(load(one)) / one).toBeCloseTo(1, 9);
    expect(load(one)).toBeGreaterThan(last);
    last = load(one);
  }
});

test.each(shapes)("shape $law ($mix) begins clean, and ends at what no gauge tells apart", ({ ratio, load }) => {
  expect([ratio(0), ratio(-1), ratio(Number.NaN), load(1), load(0.5), load(Number.NaN)]).toEqual([1, 1, 1, 0, 0, 0]);
  expect(load(1e9)).toBe(load(MOST));
  expect([ratio(load(MOST)), ratio(load(MOST) + 1), ratio(1e9)]).toEqual([MOST, MOST, MOST]);
});
