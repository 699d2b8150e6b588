import { expect, test } from "vitest";
import { instantsOf, newRun, proportional } from "../../../../tests/support/gaugeRuns.js";
import { sideFit } from "./SideFit.js";
import { flat } from "./shapes.js";

const wobble = [60, -90, 30, -30, 90, -60, 45, -75, 15, -15];
const scattered = (of: (at: number) => number, count = 8) =>
  Array.from({ length: count }, (_, at) => of(at) + (wobble[at] as number));
const fitOf = (of: (at: number) => number) => {
  const fit = sideFit("suction", newRun(instantsOf(scattered(of), undefined, proportional)), 100, 12, 1);
  if (!fit) throw new Error("a fit");
  return fit;
};

const grownFit = () => fitOf((at) => 1000 + 400 * at);
const levelFit = () => fitOf(() => 1000);
const standingFit = () => fitOf((at) => 1000 + 300 * at + (at === 4 ? 3000 : 0));

test("sideFit(side, run, zeroSpread, weight, seed) of no readings is none", () => {
  expect(sideFit("suction", newRun([]), 100, 12, 1)).toBeNull();
});

test("sideFit(side, run, zeroSpread, weight, seed) of readings that grow takes a law of growth, and leaves none at all out", () => {
  const grown = grownFit();
  const { trend, laws, best, ratio, draws, weighed } = grown.soil;
  expect(trend).toBe(true);
  expect(laws.every(({ fitted }) => fitted.model.shape !== flat)).toBe(true);
  expect(laws.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
  expect(best).toBe(laws[0]?.fitted);
  expect(weighed).toBe(grown.weighed);
  expect(grown.soilWithout).toBeNull();
  expect(draws.length).toBeGreaterThan(160);
  // The last reading is some 3.8 kPa where clean elements read 1.
  expect(ratio.low).toBeLessThan(3.8);
  expect(ratio.high).toBeGreaterThan(3.6);
  expect(ratio.high - ratio.low).toBeLessThan(2);
});

test("sideFit(side, run, zeroSpread, weight, seed) of level readings shows no trend, and keeps no growth among the laws", () => {
  const level = levelFit();
  expect(level.soil.trend).toBe(false);
  expect(level.soil.laws.some(({ fitted }) => fitted.model.shape === flat)).toBe(true);
});

test("sideFit(side, run, zeroSpread, weight, seed) fits again without readings that stand off, as though never noted", () => {
  const standing = standingFit();
  expect(standing.explained.terms).toEqual([{ kind: "outlier", at: 4 }]);
  expect(standing.soilWithout?.weighed.run.instants.map(({ reading }) => reading.row)).toEqual([1, 2, 3, 4, 6, 7, 8]);
  expect(standing.soilWithout?.trend).toBe(true);
  // Without the scatter that one reading made it is known far better.
  const wide = ({ low, high }: { readonly low: number; readonly high: number }) => high - low;
  expect(wide(standing.soilWithout?.ratio ?? { low: 0, high: 9 })).toBeLessThan(wide(standing.soil.ratio));
});

test("sideFit(side, run, zeroSpread, weight, seed) draws alike for the same seed only", () => {
  const grown = grownFit();
  const again = (seed: number) => sideFit("suction", grown.weighed.run, 100, 12, seed)?.soil.ratio;
  expect(again(1)).toEqual(grown.soil.ratio);
  expect(again(2)).not.toEqual(grown.soil.ratio);
});
