import { expect, test } from "vitest";
import { instantsOf, newRun, proportional, weighedOf } from "../../../../tests/support/gaugeRuns.js";
import { devianceOf, type Fitted, fitAll, fitOne } from "./fitAll.js";
import type { Run } from "./Instant.js";
import { flat, type Shape, shapes } from "./shapes.js";

const shapeOf = (law: string, mix: number | null = null) =>
  shapes.find((one) => one.law === law && one.mix === mix) as Shape;
const cake = shapeOf("cake");
const mixed = shapes.find(({ mix }) => mix === 0.5) as Shape;
const reads = [1010, 1480, 2030, 2490, 3000];
const run = newRun(instantsOf(reads));
const weighed = weighedOf(run, { zeroSpread: 100 });
const fitOf = (shape: Shape, from = weighed, terms: Parameters<typeof fitOne>[2] = [], sizes: readonly number[] = []) =>
  fitOne(from, shape, terms, sizes) as Fitted;

test("devianceOf(weighed, sum, parameters) averages the scatter out and counts the file's own errors", () => {
  // Five readings and as it were four more, whose sum of squares is 4; 9 x ln(4 + 6) and the squares of 2 and 3.
  expect(devianceOf(weighed, 6, [2, -3, 50])).toBeCloseTo(9 * Math.log(10) + 4 + 9, 12);
  expect(devianceOf(weighed, 6, [])).toBeCloseTo(9 * Math.log(10), 12);
});

test("fitOne(weighed, shape, terms, sizes) finds growth from clean", () => {
  const { model, fit, sum, deviance } = fitOf(cake);
  expect(model.stateAt(fit.parameters).ratioAt(4 * 3600)).toBeCloseTo(3, 1);
  expect(sum).toBeCloseTo(
    [...fit.misses.subarray(0, 5)].reduce((total, one) => total + one * one, 0),
    12,
  );
  expect(sum).toBeLessThan(0.5);
  expect(deviance).toBeCloseTo(devianceOf(weighed, sum, fit.parameters), 12);
});

test("fitOne(weighed, shape, terms, sizes) finds a start that nobody knows", () => {
  const unknown: Run = { instants: instantsOf([3000, 3500, 4000, 4500, 5000]), start: { known: false } };
  const { model, fit } = fitOf(cake, weighedOf(unknown));
  const { ratioAt } = model.stateAt(fit.parameters);
  expect([0, 4 * 3600].map(ratioAt)).toEqual([expect.closeTo(3, 1), expect.closeTo(5, 1)]);
  const level = fitOf(flat, weighedOf({ ...unknown, instants: instantsOf([3000, 3100, 2900, 3000, 3000]) }));
  expect(level.model.stateAt(level.fit.parameters).ratioAt(0)).toBeCloseTo(3, 2);
});

test("fitOne(weighed, shape, terms, sizes) finds how large terms are, from any start of them", () => {
  const stepped = weighedOf(newRun(instantsOf([1000, 1000, 1000, 1600, 1600, 1600])));
  for (const sizes of [[], [0.5], [-2]]) {
    expect(fitOf(flat, stepped, [{ kind: "step", at: 3 }], sizes).fit.parameters.at(-1)).toBeCloseTo(0.6, 3);
  }
});

// Hurvich and Tsai: 2 k + 2 k (k + 1) / (n - k - 1), with n of five readings and four as it were.
test.each([
  ["no growth", flat, true, 0, 0],
  ["a law of one constant", cake, true, 0, 2 + 4 / 7],
  ["a law of two, of which the second is the mix", mixed, true, 0, 4 + 12 / 6],
  ["the same with a start that nobody knows", mixed, false, 0, 6 + 24 / 5],
  ["the same with two terms", mixed, false, 2, 10 + 60 / 3],
] as const)("fitOne(weighed, shape, terms, sizes) scores %s", (_, shape, known, count, penalty) => {
  const from = known ? weighed : weighedOf({ instants: run.instants, start: { known } }, { zeroSpread: 100 });
  const terms = [
    { kind: "outlier", at: 1 },
    { kind: "outlier", at: 2 },
  ] as const;
  const { score, deviance } = fitOf(shape, from, terms.slice(0, count));
  expect(score - deviance).toBeCloseTo(penalty, 9);
});

test("fitOne(weighed, shape, terms, sizes) says null where readings are too few for so many constants", () => {
  const few = (count: number, weight: number, known: boolean) =>
    weighedOf(
      known
        ? newRun(instantsOf(reads.slice(0, count)))
        : { instants: instantsOf(reads.slice(0, count)), start: { known } },
      { prior: { weight, sum: weight } },
    );
  // One constant: n - 2 is left.
  expect(fitOne(few(1, 1, true), cake, [], [])).toBeNull();
  expect(fitOne(few(1, 2, true), cake, [], [])).not.toBeNull();
  // Growth and start want two readings, whatever was known beforehand.
  expect(fitOne(few(1, 12, false), cake, [], [])).toBeNull();
  expect(fitOne(few(2, 12, false), cake, [], [])).not.toBeNull();
});

test("fitAll(weighed) tries no growth and every law, in order, and leaves out those that want more readings", () => {
  const lawsOf = (from = weighed) => fitAll(from).map(({ model }) => model.shape);
  expect(lawsOf()).toEqual([flat, ...shapes]);
  const two = weighedOf(newRun(instantsOf([1000, 1500])), { prior: { weight: 1, sum: 1 } });
  expect(lawsOf(two)).toEqual([flat, ...shapes.filter(({ mix }) => mix === null)]);
  expect(fitAll(weighed, [], [], [cake, flat]).map(({ model }) => model.shape)).toEqual([cake, flat]);
});

test("fitAll(weighed, terms, sizes) has the terms in every fit", () => {
  const fits = fitAll(weighed, [{ kind: "outlier", at: 2 }], [1]);
  expect(fits.every(({ model, fit }) => model.terms.length === 1 && fit.parameters.length === model.count)).toBe(true);
});

test("fitOne(weighed, shape, terms, sizes) takes a demand that is off for what it is, as far as that is known", () => {
  // All read 10 % too much: with the zero held, one deviation of the file's demand explains it.
  const more = newRun(instantsOf([1105, 1105, 1105, 1105, 1105, 1105, 1105, 1105], undefined, proportional));
  const [demand = 0, zero = 0] = fitOf(
    flat,
    weighedOf(more, { zeroSpread: 1e-3, sigmas: new Float64Array(8).fill(10) }),
  ).fit.parameters;
  expect(demand).toBeCloseTo(1, 1);
  expect(zero).toBeCloseTo(0, 2);
});
