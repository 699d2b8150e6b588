import { expect, test } from "vitest";
import { instantsOf, level, newRun, proportional } from "../../../../tests/support/gaugeRuns.js";
import type { Run } from "./Instant.js";
import { runModel } from "./runModel.js";
import { flat, type Shape, shapes } from "./shapes.js";
import type { Term } from "./Term.js";

const cake = shapes.find(({ law }) => law === "cake") as Shape;
const HOUR = 3600;
const near = (values: readonly number[], places = 9) => values.map((one) => expect.closeTo(one, places));
/** Readings at 2, 3 and 4 hours. */
const late = instantsOf([1000, 1500, 2000], (at) => ({ time: (at + 2) * HOUR }));
const unknown: Run = { instants: late, start: { known: false } };
const stated: Run = { instants: late, start: { known: true, ratio: 2, by: "stated" } };

test("runModel(run, zeroSpread, shape, terms) counts its parameters", () => {
  const counts = (run: Run, shape: Shape, terms: readonly Term[] = []) => {
    const { growing, count } = runModel(run, 100, shape, terms);
    return [growing, count];
  };
  expect(counts(newRun(late), flat)).toEqual([0, 2]);
  expect(counts(newRun(late), cake)).toEqual([1, 3]);
  expect(counts(unknown, flat)).toEqual([1, 3]);
  expect(counts(unknown, cake, [{ kind: "fall" }])).toEqual([2, 5]);
});

test("runModel(run, zeroSpread, shape, terms) grows from time 0, or from the first reading where the start is not known", () => {
  const spanOf = (run: Run) => {
    const { first, span } = runModel(run, 100, cake, []);
    return [first, span];
  };
  expect(spanOf(newRun(late))).toEqual([0, 4 * HOUR]);
  expect(spanOf(unknown)).toEqual([2 * HOUR, 2 * HOUR]);
  expect(spanOf(newRun(instantsOf([1000])))).toEqual([0, 1]);
  expect(spanOf({ instants: [], start: { known: false } })).toEqual([0, 1]);
});

test("model.stateAt(parameters) has the file's own errors, of which one deviation is 10 % of the demand", () => {
  const { demand, zero } = runModel(newRun(late), 250, flat, []).stateAt([2, -3]);
  expect(demand).toBeCloseTo(1.2214, 4);
  expect(zero).toBe(-750);
});

test("model.stateAt(parameters) without growth stays where it began", () => {
  const of = (run: Run, ...parameters: number[]) => {
    const { ratioAt, load } = runModel(run, 100, flat, []).stateAt([0, 0, ...parameters]);
    return { ratios: [0, 4 * HOUR].map(ratioAt), load };
  };
  const still = { start: 0, rate: 0 };
  expect(of(newRun(late))).toEqual({ ratios: [1, 1], load: still });
  expect(of(stated)).toEqual({ ratios: [2, 2], load: still });
  expect(of(unknown, Math.log(3))).toEqual({ ratios: near([4, 4]), load: still });
});

test("model.stateAt(parameters) grows from its start to so much more at the last reading, and on", () => {
  const grown = runModel(newRun(late), 100, cake, []).stateAt([0, 0, Math.log(3)]);
  expect([0, 4 * HOUR].map(grown.ratioAt)).toEqual(near([1, 4], 6));
  // Cake grows evenly.
  expect([2 * HOUR, 8 * HOUR].map(grown.ratioAt)).toEqual(near([2.5, 7], 2));
  expect(grown.load.start).toBeCloseTo(0, 12);
  expect(grown.load.rate * 4 * HOUR).toBeCloseTo(cake.load(4), 9);
  const begun = runModel(stated, 100, cake, []).stateAt([0, 0, Math.log(3)]);
  expect([0, 4 * HOUR].map(begun.ratioAt)).toEqual(near([2, 5], 6));
  const found = runModel(unknown, 100, cake, []).stateAt([0, 0, Math.log(3), Math.log(0.5)]);
  expect([2 * HOUR, 4 * HOUR].map(found.ratioAt)).toEqual(near([1.5, 4.5], 6));
  // The load at time 0 is that of the line through both, here less than none.
  expect(found.load.start + found.load.rate * 2 * HOUR).toBeCloseTo(cake.load(1.5), 9);
  expect(found.load.start).toBeLessThan(0);
});

test("model.problem(sigmas, starts) is what each reading misses, in its own deviations, and the file's own errors", () => {
  const { problem } = runModel(newRun(late), 200, flat, []);
  const { misses, starts } = problem([100, 200, 50], [[7, 7]]);
  expect(starts).toEqual([[7, 7]]);
  expect([...misses([0, 0])]).toEqual(near([0, -2.5, -20, 0, 0]));
  expect([...misses([-1, 1.5])]).toEqual(near([3, -1, -14, -1, 1.5]));
});

test("model.problem(sigmas, starts) asks what is read at the demand it takes", () => {
  const run = newRun(instantsOf([1000, 1000], undefined, proportional));
  const [one, other] = runModel(run, 200, flat, []).problem([100, 100], []).misses([1, 0]);
  expect([one, other]).toEqual(near([1.0517, 1.0517], 3));
});

test.each([
  [{ kind: "outlier", at: 1 }, 3, [0, 3, 0]],
  [{ kind: "step", at: 1 }, 0.4, [0, 4, 4]],
  [{ kind: "cold", below: 298 }, 0.4, [4, 4, 4]],
  [{ kind: "fall" }, 0.8, [-4, -6, -8]],
] as const)("model.problem(sigmas, starts) adds a term of %o at its size of %d", (term, size, more) => {
  const run = newRun(instantsOf([1000, 1000, 1000], (at) => ({ time: (at + 2) * HOUR })));
  const { misses } = runModel(run, 200, flat, [term]).problem([100, 100, 100], []);
  expect([...misses([0, 0, size])]).toEqual(near([...more, 0, 0]));
});

test("model.problem(sigmas, starts) takes a share of the flow away from a thin reading on", () => {
  const run = newRun(instantsOf([1000, 1000, 1000], undefined, proportional));
  const { misses } = runModel(run, 200, flat, [{ kind: "thin", at: 1 }]).problem([100, 100, 100], []);
  expect([...misses([0, 0, 0.3])]).toEqual(near([0, -3, -3, 0, 0], 6));
});

test("model.problem(sigmas, starts) has sizes after growth and start, one for each term in order", () => {
  const terms: readonly Term[] = [
    { kind: "outlier", at: 0 },
    { kind: "step", at: 2 },
  ];
  const { misses } = runModel(unknown, 200, cake, terms).problem([100, 100, 100], []);
  const plain = runModel(unknown, 200, cake, []).problem([100, 100, 100], []).misses([0, 0, 0.5, 0.2]);
  const [a = 0, b = 0, c = 0] = plain;
  expect([...misses([0, 0, 0.5, 0.2, 7, 0.3])]).toEqual(near([a + 7, b, c + 3, 0, 0]));
});

test("model.problem(sigmas, starts) holds resistance within ten thousand times clean, either way", () => {
  const { misses } = runModel(newRun(late), 200, flat, [{ kind: "step", at: 0 }]).problem([1, 1, 1], []);
  expect(misses([0, 0, 5e4])[0]).toBeCloseTo(1e7 - 1000, 3);
  expect(misses([0, 0, -5e4])[0]).toBeCloseTo(-1e7 - 1000, 3);
});

test("model.problem(sigmas, starts) bounds errors, growth, start and sizes", () => {
  const { lower, upper } = runModel(unknown, 200, cake, [{ kind: "fall" }]).problem([1, 1, 1], []);
  expect(lower).toEqual([-6, -8, Math.log(1e-4), Math.log(1e-4), -1000]);
  expect(upper).toEqual([6, 8, Math.log(3000), Math.log(3000), 1000]);
  expect(runModel(newRun(late), 200, flat, []).problem([1, 1, 1], []).lower).toEqual([-6, -8]);
});

test("model.problem(sigmas, starts) leaves readings on tables of their own", () => {
  const instants = instantsOf([1000, 1000], (at) => ({ table: at === 0 ? level : proportional }));
  const [one, other] = runModel(newRun(instants), 200, flat, []).problem([100, 100], []).misses([3, 0]);
  expect(one).toBeCloseTo(0, 9);
  expect(other).toBeGreaterThan(3);
});
