import { expect, test } from "vitest";
import { fitSeparable, type Separable } from "./fitSeparable.js";

const xs = [0, 1, 2, 3, 4, 5, 6];
const readings = xs.map((x) => 3 * Math.exp(-x / 2) + 2);
const columns: Separable["columns"] = ([rate = 0]) => [xs.map((x) => Math.exp(-rate * x)), xs.map(() => 1)];
const near = (values: readonly number[], places = 9) => values.map((one) => expect.closeTo(one, places));

test("fitSeparable(model) gives multipliers in the order of their columns, then the others", () => {
  const fit = fitSeparable({ columns, readings, starts: [[0.8]] });
  expect(fit.parameters).toEqual(near([3, 2, 0.5]));
  expect(fit.sum).toBeLessThan(1e-20);
  expect(fit.freedom).toBe(4);
});

test.each([0.1, 5, 50, 90])("fitSeparable(model) finds a rate of 0.5 from a start of %d", (start) => {
  expect(fitSeparable({ columns, readings, starts: [[start]] }).parameters).toEqual(near([3, 2, 0.5], 6));
});

test("fitSeparable(model) takes the best of several starts", () => {
  // A wave read at whole numbers: there are hollows all along, and only the start near 1 leads to the deepest.
  const wave: Separable["columns"] = ([turn = 0]) => [xs.map((x) => Math.sin(turn * x + 0.3))];
  const read = xs.map((x) => 4 * Math.sin(x + 0.3));
  for (const starts of [
    [[1.1], [2.9]],
    [[2.9], [1.1]],
  ]) {
    expect(fitSeparable({ columns: wave, readings: read, starts }).parameters).toEqual(near([4, 1], 6));
  }
});

test("fitSeparable(model) has slopes and covariance of the whole model, misses of it less what was read", () => {
  const off = readings.map((one, at) => one + (at % 2 === 0 ? 0.1 : -0.1));
  const fit = fitSeparable({ columns, readings: off, starts: [[0.8]] });
  const [times = 0, level = 0, rate = 0] = fit.parameters;
  fit.slopes.forEach((row, x) => {
    expect([...row]).toEqual(near([Math.exp(-rate * x), 1, -x * times * Math.exp(-rate * x)], 6));
    expect(fit.misses[x]).toBeCloseTo(times * Math.exp(-rate * x) + level - (off[x] as number), 12);
  });
  expect(fit.covariance.map((row) => row.length)).toEqual([3, 3, 3]);
  // At the least no parameter has a slope left.
  for (let place = 0; place < 3; place++) {
    const slope = fit.slopes.reduce((sum, row, at) => sum + (row[place] as number) * (fit.misses[at] as number), 0);
    expect(slope).toBeCloseTo(0, 8);
  }
});

test("fitSeparable(model) lets columns that are alike share their part", () => {
  const twice: Separable["columns"] = ([rate = 0]) => [0, 1].map(() => xs.map((x) => Math.exp(-rate * x)));
  const [one = 0, other = 0, rate] = fitSeparable({
    columns: twice,
    readings: xs.map((x) => 6 * Math.exp(-x / 2)),
    starts: [[0.8]],
  }).parameters;
  expect(one + other).toBeCloseTo(6, 6);
  expect(one).toBeGreaterThan(0);
  expect(other).toBeGreaterThan(0);
  expect(rate).toBeCloseTo(0.5, 6);
});
