import { expect, test } from "vitest";
import type { OwnLaw, Pace } from "../parts/law/index.js";
import { fittedFlow, rootOfQuadratic } from "./fittedFlow.js";
import { flowAtDrop } from "./flowAtDrop.js";

/** A law by its drop and slope at a flow of either sign; counts how often it is worked out, and notes the pace asked for. */
class Counted implements OwnLaw {
  flow = 0;
  drop = 0;
  slope = 0;
  settled = true;
  kinked = false;
  readonly paces: Pace[] = [];
  private readonly of: (size: number) => readonly [drop: number, slope: number];
  private readonly opening: number;

  constructor(of: (size: number) => readonly [drop: number, slope: number], opening = 0) {
    this.of = of;
    this.opening = opening;
  }

  update(pace: Pace): void {
    this.paces.push(pace);
    const [drop, slope] = this.of(Math.abs(this.flow));
    this.drop = this.opening + Math.sign(this.flow) * drop;
    this.slope = slope;
  }
}

const quadratic = () => new Counted((q) => [2 * q + 3 * q * q, 2 + 6 * q]);
const power = () => new Counted((q) => [q ** 1.75, 1.75 * q ** 0.75]);

test("flowAtDrop(law of linear and quadratic terms, …) asks twice: the fit is exact", () => {
  for (const guess of [1e-6, 1, 1e6]) {
    const law = quadratic();
    expect(flowAtDrop(law, 16, guess, 0, 1e-9, []) / 2).toBeCloseTo(1, 14);
    expect(law.paces.length).toBeLessThanOrEqual(3);
  }
});

test("flowAtDrop(law as of a turbulent line, …) asks five times at most from within a factor of 2", () => {
  for (const guess of [0.5, 0.9, 2]) {
    const law = power();
    expect(flowAtDrop(law, 1, guess, 0, 1e-9, [])).toBeCloseTo(1, 14);
    expect(law.paces.length).toBeLessThanOrEqual(5);
    expect(law.paces.slice(0, 2)).toEqual(["first step", "next step"]);
  }
});

test("flowAtDrop(law, target, …) comes back from a guess far off, on either side", () => {
  for (const guess of [1e-12, 1e9]) {
    const law = power();
    expect(flowAtDrop(law, 1, guess, 0, 1e-9, [])).toBeCloseTo(1, 14);
    expect(law.paces.length).toBeLessThanOrEqual(60);
  }
});

test("flowAtDrop(law, a target below 0, …) is a flow below 0, and what the law holds at rest is left out", () => {
  expect(flowAtDrop(quadratic(), -16, 1, 0, 1e-9, [])).toBeCloseTo(-2, 14);
  expect(flowAtDrop(new Counted((q) => [q, 1], 5), 3, 1, 5, 1e-9, [])).toBeCloseTo(3, 14);
});

test("flowAtDrop(law that steps over the target, …) is the last flow below the step, held there", () => {
  const steps = () => new Counted((q) => (q <= 1 ? [q, 1] : [2 * q, 2]));
  const blind = steps();
  const found = flowAtDrop(blind, 1.5, 0.2, 0, 1e-9, []);
  expect([found <= 1, 1 - found < 1e-15, blind.slope]).toEqual([true, true, Infinity]);
  const told = steps();
  expect(flowAtDrop(told, 1.5, 0.2, 0, 1e-9, [1])).toBe(1);
  expect(told.slope).toBe(Infinity);
  expect(told.paces.length).toBeLessThan(blind.paces.length / 4);
  // A target below the step, or above it, is met as if there were none.
  expect(flowAtDrop(steps(), 0.75, 0.2, 0, 1e-9, [1])).toBeCloseTo(0.75, 14);
  expect(flowAtDrop(steps(), 3, 0.2, 0, 1e-9, [1])).toBeCloseTo(1.5, 14);
  expect(flowAtDrop(steps(), -1.5, 0.2, 0, 1e-9, [1])).toBe(-1);
});

test("flowAtDrop(law whose slope jumps, …) is not taken in by a small step beside the bend", () => {
  const bent = new Counted((q) => (q <= 1 ? [q, 1] : [1 + 1e6 * (q - 1), 1e6]));
  bent.kinked = true;
  expect(flowAtDrop(bent, 1 + 1e-3, 0.5, 0, 1e-6, [])).toBeCloseTo(1 + 1e-9, 14);
});

test("flowAtDrop(law that is still closing in, …) asks again until it has settled", () => {
  const slow = power();
  slow.settled = false;
  const update = slow.update.bind(slow);
  slow.update = (pace) => {
    update(pace);
    slow.settled = slow.paces.length > 6 || pace === "whole";
    // While it is not settled it says a tenth too much.
    if (!slow.settled) slow.drop *= 1.1;
  };
  expect(flowAtDrop(slow, 1, 0.8, 0, 1e-9, [])).toBeCloseTo(1, 14);
  expect(slow.paces.length).toBeLessThanOrEqual(12);
});

test("rootOfQuadratic(2, 3, 16) is 2, and fittedFlow finds it from drop and slope at another flow", () => {
  expect(rootOfQuadratic(2, 3, 16)).toBe(2);
  expect(fittedFlow(1, 5, 8, 16)).toBeCloseTo(2, 14);
  // A slope below the chord bends the other way, one above twice the chord more than a square: the tangent is taken.
  expect(fittedFlow(1, 5, 4, 9)).toBe(2);
  expect(fittedFlow(1, 5, 12, 17)).toBe(2);
});
