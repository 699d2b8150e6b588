import { expect, test } from "vitest";
import type { Fitted, Weighed } from "./fitAll.js";
import { hasTrend } from "./hasTrend.js";
import { lawWeights } from "./lawWeights.js";
import { flat } from "./shapes.js";

const fittedOf = (law: string, score: number) => ({ model: { shape: { law } }, score }) as unknown as Fitted;

test("lawWeights(fits) falls by a factor of e for each two that a score is worse, the best first", () => {
  const [a, b, c] = [fittedOf("a", 14), fittedOf("b", 10), fittedOf("c", 12)];
  const all = 1 + Math.exp(-1) + Math.exp(-2);
  expect(lawWeights([a, b, c])).toEqual([
    { fitted: b, weight: expect.closeTo(1 / all, 12) },
    { fitted: c, weight: expect.closeTo(Math.exp(-1) / all, 12) },
    { fitted: a, weight: expect.closeTo(Math.exp(-2) / all, 12) },
  ]);
});

test("lawWeights(fits) counts the best of one law's mixes only", () => {
  const [poor, good, other] = [fittedOf("a", 11), fittedOf("a", 10), fittedOf("b", 10)];
  expect(lawWeights([poor, other, good])).toEqual([
    { fitted: other, weight: 0.5 },
    { fitted: good, weight: 0.5 },
  ]);
  expect(lawWeights([])).toEqual([]);
});

const weighedBy = (readings: number, weight: number) =>
  ({ sigmas: new Float64Array(readings), prior: { weight, sum: weight } }) as unknown as Weighed;
const growing = (deviance: number) => ({ model: { shape: { law: "cake" } }, deviance }) as unknown as Fitted;
const still = (deviance: number) => ({ model: { shape: flat }, deviance }) as unknown as Fitted;

// One chance in twenty of Student's distribution lies beyond 1.8125 with 10 degrees of freedom, beyond 6.3138 with one.
test.each([
  [8, 4, 12 * Math.log(1 + 1.8125 ** 2 / 10)],
  [1, 1, 2 * Math.log(1 + 6.3138 ** 2)],
])(
  "hasTrend(weighed, fits) of %i readings and %i beforehand asks growth to win so much",
  (readings, weight, needed) => {
    const trendOf = (won: number) => hasTrend(weighedBy(readings, weight), [growing(60), still(50 + won), growing(50)]);
    expect([trendOf(needed - 0.01), trendOf(needed + 0.01)]).toEqual([false, true]);
  },
);

test("hasTrend(weighed, fits) says no where there is no fit without growth, or none with it", () => {
  expect(hasTrend(weighedBy(8, 4), [growing(-1e6)])).toBe(false);
  expect(hasTrend(weighedBy(8, 4), [still(1e6)])).toBe(false);
});
