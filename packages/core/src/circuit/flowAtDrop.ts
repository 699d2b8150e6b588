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
 * @returns m3/s
 */
export function flowAtDrop(law: OwnLaw, target: number, guess: number, opening: number, close: number): number {
  const sign = target < 0 ? -1 : 1;
  const size = Math.abs(target);
  let low = 0;
  let high = Infinity;
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
    if (settled && miss > 0) high = flow;
    if (settled && miss < 0) low = flow;
    let next = round < 60 ? fittedFlow(flow, value, law.slope, size) : Number.NaN;
    if (settled && Math.abs(next - flow) <= close * flow && next >= low && next <= high) return sign * next;
    // Turned round: a step that is not a number, or leaves the bracket, is replaced too.
    if (!(next > low && next < high)) next = settled || round >= 60 ? inside(low, high) : flow;
    // No number lies between: the law steps over the target here, or rounding has the last word.
    if (next <= low || next >= high) return sign * low;
    pace = round < 50 ? "next step" : "whole";
    flow = next;
  }
  return sign * low;
}

/** A number well inside a bracket: its geometric middle while it is wide, the plain middle once it is narrow. */
function inside(low: number, high: number): number {
  if (high === Infinity) return low * 16;
  if (low === 0) return high / 16;
  return high > 2 * low ? Math.sqrt(low) * Math.sqrt(high) : low + (high - low) / 2;
}
