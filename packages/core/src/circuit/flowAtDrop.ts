import type { OwnLaw, Pace } from "../parts/law/index.js";
import { fittedFlow } from "./fittedFlow.js";

/** One unit in the last place, relative. */
const ULP = 2 ** -52;

/**
 * The flow at which a law's drop meets a target: where it steps over the target, the last flow below the step. It cannot
 * fail to converge: every step stays inside a bracket that shrinks.
 *
 * The step fits a q + b q^2 through value and slope and solves that: exact for laminar lines, filters and fittings, and
 * close for turbulent lines, so three or four evaluations are usual. Banks close in on their split at the same time.
 *
 * @param law its drop never falls with flow
 * @param target Pa, not 0; the flow has its sign
 * @param guess a flow of the right size, m3/s, more than 0
 * @param opening what the drop holds at rest, Pa
 * @param close relative step after which to stop: what is left is a few times its square, as far as the fit bends with
 *   the law
 * @param steps flows at which the law is known to step, m3/s, ascending: the last one below the step
 * @returns m3/s; the law's slope is left as it is near there, Infinity where the flow is held by a step
 */
export function flowAtDrop(
  law: OwnLaw,
  target: number,
  guess: number,
  opening: number,
  close: number,
  steps: readonly number[],
): number {
  const sign = target < 0 ? -1 : 1;
  const size = Math.abs(target);
  let low = 0;
  let high = Infinity;
  let lowValue = 0;
  let highValue = Infinity;
  let flow = guess;
  let pace: Pace = "first step";
  for (let round = 0; round < 400; round++) {
    law.flow = sign * flow;
    law.update(pace);
    const value = sign * (law.drop - opening);
    const { settled } = law;
    const miss = value - size;
    const met = Math.abs(miss) <= ULP * size;
    if (met && settled) return sign * flow;
    // A drop whose split is still moving is no bound.
    if (settled && miss > 0) {
      high = flow;
      highValue = value;
    }
    if (settled && miss < 0) {
      low = flow;
      lowValue = value;
    }
    let next = round < 60 ? fittedFlow(flow, value, law.slope, size) : Number.NaN;
    const near = Math.abs(next - flow) <= (law.kinked ? KINKED_CLOSE : close) * flow;
    if (settled && near && next >= low && next <= high && !(stepBetween(steps, flow, next) > 0)) return sign * next;
    // Turned round: a step that is not a number, or leaves the bracket, is replaced too.
    if (!(next > low && next < high)) {
      if (!settled && round < 60) next = flow;
      else {
        next = stepBetween(steps, low, high);
        if (!(next > 0)) next = inside(low, high);
      }
    }
    // No number lies between: the law steps over the target here, or rounding has the last word.
    if (next <= low || next >= high) {
      if (highValue - lowValue > 1e-9 * size) law.slope = Infinity;
      return sign * low;
    }
    pace = round < 50 ? "next step" : "whole";
    flow = next;
  }
  return sign * low;
}

/** Relative step that ends the search where the slope may jump: a small step then says nothing of what is left. */
const KINKED_CLOSE = 16 * ULP;

/** The side of a known step that lies strictly between two flows, the lower first; 0 where there is none. */
function stepBetween(steps: readonly number[], one: number, other: number): number {
  const low = Math.min(one, other);
  const high = Math.max(one, other);
  for (let at = 0; at < steps.length; at++) {
    const below = steps[at] as number;
    const above = below * (1 + 4 * ULP);
    if (below > low && below < high) return below;
    if (above > low && above < high) return above;
  }
  return 0;
}

/** A number well inside a bracket: its geometric middle while it is wide, the plain middle once it is narrow. */
function inside(low: number, high: number): number {
  if (high === Infinity) return low * 16;
  if (low === 0) return high / 16;
  return high > 2 * low ? Math.sqrt(low) * Math.sqrt(high) : low + (high - low) / 2;
}
