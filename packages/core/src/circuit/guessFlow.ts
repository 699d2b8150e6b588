import type { OwnLaw, PartLaw } from "../parts/law/index.js";
import { fittedFlow, rootOfQuadratic } from "./fittedFlow.js";

/** What a run resists: its folded terms, banks as at rest in the linear one, Pa s/m3 and Pa s2/m6, and laws of their own. */
export interface Resisting {
  readonly linear: number;
  readonly quadratic: number;
  readonly own: readonly PartLaw[];
}

/**
 * About how much a friction drives, m3/s, without its sign: what the folded terms and the laws at rest would let pass,
 * bettered by one step with the banks still as at rest, since a turbulent line is far from its rest.
 */
export function guessFlow({ linear, quadratic, own }: Resisting, target: number, sign: 1 | -1): number {
  const start = rootOfQuadratic(linear + sumOfSlopes(own, 0), quadratic, target);
  if (own.length === 0) return start;
  let drop = (linear + quadratic * start) * start;
  let slope = linear + 2 * quadratic * start;
  for (const law of own) {
    law.flow = sign * start;
    law.update("whole");
    drop += sign * law.drop;
    slope += law.slope;
  }
  const next = fittedFlow(start, drop, slope, target);
  return next > 0 ? next : start;
}

/** The slopes of laws at a flow, m3/s, added up, Pa s/m3. */
export function sumOfSlopes(laws: readonly OwnLaw[], flow: number): number {
  return laws.reduce((sum, law) => {
    law.flow = flow;
    law.update("whole");
    return sum + law.slope;
  }, 0);
}
