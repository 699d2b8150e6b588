import { expect, test } from "vitest";
import { instantsOf, newRun, weighedOf } from "../../../../tests/support/gaugeRuns.js";
import { type Averaged, averaged, intervalOf, LEAST, timeAtRatio } from "./averaged.js";
import { type Fitted, fitOne } from "./fitAll.js";
import { flat, type Shape, shapes } from "./shapes.js";

const cake = shapes.find(({ law }) => law === "cake") as Shape;
const weighed = weighedOf(newRun(instantsOf([1010, 1480, 2030, 2490, 3000])), { zeroSpread: 100 });
const fittedTo = (shape: Shape) => fitOne(weighed, shape, [], []) as Fitted;

test("averaged(weighed, laws, seed) draws every law that weighs a hundredth or more, each by its weight", () => {
  const [grown, still] = [fittedTo(cake), fittedTo(flat)];
  const draws = averaged(
    weighed,
    [
      { fitted: grown, weight: 1 - LEAST },
      { fitted: still, weight: LEAST },
    ],
    1,
  );
  const weightOf = (fitted: Fitted) => draws.reduce((sum, draw) => sum + (draw.fitted === fitted ? draw.weight : 0), 0);
  expect(weightOf(grown)).toBeCloseTo(0.99, 9);
  expect(weightOf(still)).toBeCloseTo(0.01, 9);
  expect(averaged(weighed, [{ fitted: still, weight: 0.0099 }], 1)).toEqual([]);
});

test("averaged(weighed, laws, seed) has the state of each draw's own parameters", () => {
  const draws = averaged(weighed, [{ fitted: fittedTo(cake), weight: 1 }], 1);
  expect(draws.length).toBeGreaterThan(100);
  for (const { parameters, state, shape } of draws.slice(0, 5)) {
    expect(shape).toBe(cake);
    expect(state.demand).toBeCloseTo(Math.exp(0.1 * (parameters[0] as number)), 12);
    expect(state.ratioAt(4 * 3600)).toBeCloseTo(1 + Math.exp(parameters[2] as number), 6);
  }
});

test("intervalOf(draws, of) is where 5, 50 and 95 in 100 of the weight lie below", () => {
  const draws = Array.from({ length: 100 }, (_, at) => ({ weight: 2, at }) as unknown as Averaged);
  const of = (draw: Averaged) => (draw as unknown as { readonly at: number }).at;
  expect(intervalOf(draws, of)).toEqual({
    low: expect.closeTo(4.5, 9),
    middle: expect.closeTo(49.5, 9),
    high: expect.closeTo(94.5, 9),
  });
});

test("timeAtRatio(draw, ratio) is when the load is reached that gives a resistance", () => {
  const state = (start: number, rate: number) => ({ load: { start, rate } }) as Averaged["state"];
  // Four times clean is a load of 1, but for what is straight between a law's figures.
  expect(timeAtRatio({ shape: cake, state: state(0, 0.01) }, 4)).toBeCloseTo(100, 1);
  expect(timeAtRatio({ shape: cake, state: state(0.5, 0.01) }, 4)).toBeCloseTo(50, 1);
  expect(timeAtRatio({ shape: cake, state: state(0.5, 0.01) }, 1)).toBeCloseTo(-50, 6);
});

test("timeAtRatio(draw, ratio) is never without growth, or where no resistance is asked for", () => {
  const load = { start: 0, rate: 0.01 };
  const of = (shape: Shape, more: object, ratio: number) =>
    timeAtRatio({ shape, state: { load: { ...load, ...more } } as Averaged["state"] }, ratio);
  expect(of(flat, {}, 4)).toBe(Infinity);
  expect(of(cake, { rate: 0 }, 4)).toBe(Infinity);
  expect(of(cake, { rate: Number.NaN }, 4)).toBe(Infinity);
  expect(of(cake, {}, Infinity)).toBe(Infinity);
  expect(of(cake, {}, 4)).toBeLessThan(Infinity);
});
