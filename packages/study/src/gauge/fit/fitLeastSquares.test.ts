import { expect, test } from "vitest";
import { fitLeastSquares } from "./fitLeastSquares.js";
import type { Misses } from "./LeastSquares.js";

const line: Misses = ([a = 0, b = 0]) => Float64Array.of(a - 1, a + b - 3, a + 2 * b - 5, a + 3 * b - 8);
const near = (values: readonly number[], places = 9) => values.map((one) => expect.closeTo(one, places));

test("fitLeastSquares(problem) gives all of a straight line, as worked out by hand", () => {
  const fit = fitLeastSquares({ misses: line, starts: [[1, 1]] });
  expect(fit.parameters).toEqual(near([0.8, 2.3], 12));
  expect(fit.sum).toBeCloseTo(0.3, 12);
  expect([...fit.misses]).toEqual(near([-0.2, 0.1, 0.4, -0.3], 12));
  expect(fit.slopes.map((row) => [...row])).toEqual([0, 1, 2, 3].map((x) => near([1, x])));
  expect(fit.covariance).toEqual([near([0.7, -0.3]), near([-0.3, 0.2])]);
  expect(fit.freedom).toBe(2);
});

test("fitLeastSquares(problem) finds parameters of very unlike size", () => {
  const misses: Misses = ([a = 0, b = 0]) => Float64Array.of(a / 1e6 - 3, b * 1e6 - 2, a / 1e6 + b * 1e6 - 5);
  const fit = fitLeastSquares({ misses, starts: [[1e6, 1e-6]] });
  expect([(fit.parameters[0] as number) / 1e6, (fit.parameters[1] as number) * 1e6]).toEqual(near([3, 2]));
});

test("fitLeastSquares(problem) takes the best of what its starts lead to, in whatever order they come", () => {
  // Two hollows: at -2 nothing is missed, near 2 something is.
  const misses: Misses = ([a = 0]) => Float64Array.of(a * a - 4, 0.1 * (a + 2));
  expect(fitLeastSquares({ misses, starts: [[3]] }).parameters[0]).toBeCloseTo(2, 1);
  for (const starts of [
    [[3], [-3]],
    [[-3], [3]],
  ]) {
    expect(fitLeastSquares({ misses, starts }).parameters).toEqual(near([-2]));
  }
});

test("fitLeastSquares(problem) holds parameters within their bounds, also from a start of another size than 1", () => {
  const misses: Misses = ([a = 0, b = 0]) => Float64Array.of(a - 500, b + 500);
  const fit = fitLeastSquares({ misses, starts: [[10, -10]], lower: [-30, -30], upper: [40, 40] });
  expect(fit.parameters).toEqual([40, -30]);
});

test("fitLeastSquares(problem) turns round where a miss is no number", () => {
  const misses: Misses = ([a = 0]) => Float64Array.of(Math.log(a) - 1, 0.1);
  expect(fitLeastSquares({ misses, starts: [[0.01]] }).parameters).toEqual(near([Math.E]));
});

test("fitLeastSquares(problem) stays at a start that misses nothing, and at one of zero", () => {
  const misses: Misses = ([a = 0]) => Float64Array.of(3 * a, 4 * a);
  const fit = fitLeastSquares({ misses, starts: [[0]] });
  expect(fit).toMatchObject({ parameters: [0], sum: 0, freedom: 1 });
  expect(fit.covariance[0]).toEqual(near([1 / 25]));
});

test("fitLeastSquares(problem) shares a spread between parameters that do the same, and gives none to one that does nothing", () => {
  const same: Misses = ([a = 0, b = 0]) => Float64Array.of(a + b - 1, a + b - 3);
  // The products are all 2; of such a matrix the pseudo-inverse is an eighth everywhere.
  expect(fitLeastSquares({ misses: same, starts: [[1, 1]] }).covariance).toEqual([
    near([0.125, 0.125], 6),
    near([0.125, 0.125], 6),
  ]);
  const idle: Misses = ([a = 0]) => Float64Array.of(a - 1, a - 3);
  expect(fitLeastSquares({ misses: idle, starts: [[1, 1]] }).covariance).toEqual([near([0.5, 0]), near([0, 0])]);
});

test("fitLeastSquares(problem, effort) asks the less, the fewer steps it may take", () => {
  const asked = (steps: number, toTheLast: boolean) => {
    let count = 0;
    const misses: Misses = ([a = 0, b = 0]) => {
      count++;
      return Float64Array.of(10 * (b - a * a), 1 - a);
    };
    return [fitLeastSquares({ misses, starts: [[-1.2, 1]] }, { steps, toTheLast }).sum, count] as const;
  };
  const [[roughly, few], [exactly, many]] = [asked(1, false), asked(1, true)];
  expect(few).toBeLessThan(many);
  expect(roughly).toBeGreaterThan(exactly);
  expect(asked(20, false)[0]).toBeLessThan(roughly);
});

test("fitLeastSquares(problem) requires a start", () => {
  expect(() => fitLeastSquares({ misses: line, starts: [] })).toThrow(
    new TypeError("fitLeastSquares requires one start or more"),
  );
});
