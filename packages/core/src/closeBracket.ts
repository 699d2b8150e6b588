/** What a closed bracket leaves: neighbours, or nearly, on both sides of where a falling function passes 0. */
export interface ClosedBracket {
  /** where the function is still 0 or more */
  readonly low: number;
  /** where it is below 0 */
  readonly high: number;
}

/**
 * Closes a bracket on the place where a function that never rises passes from 0 or more to below. Cannot fail: where
 * the function steps, the bracket closes on the step.
 *
 * Inverse quadratic interpolation where its own criterion trusts it, else bisection; about ten evaluations for a smooth
 * function, up to sixty where it is met at exactly 0 or steps.
 *
 * @param fall never rises; values may be infinite, not NaN
 * @param low where it is 0 or more; `high` where it is below 0
 * @param relative width, of the larger end, at which to stop; two units in the last place at the least
 * @see T. R. Chandrupatla, Adv. Eng. Softw. 28 (1997) 145
 */
export function closeBracket(
  fall: (x: number) => number,
  low: { readonly at: number; readonly value: number },
  high: { readonly at: number; readonly value: number },
  relative: number,
): ClosedBracket {
  // a is the newest end, b the one across the sign, c the end a replaced
  let a = high.at;
  let valueA = high.value;
  let b = low.at;
  let valueB = low.value;
  let share = 0.5;
  for (let round = 0; round < 300; round++) {
    const x = a + share * (b - a);
    if (x === a || x === b) break;
    const value = fall(x);
    let c = a;
    let valueC = valueA;
    if (value >= 0 !== valueA >= 0) {
      c = b;
      valueC = valueB;
      b = a;
      valueB = valueA;
    }
    a = x;
    valueA = value;
    const width = Math.abs(b - a);
    // Two units in the last place at least, so that a step across the root is never rounded away.
    const least = Math.max(relative, 2 ** -51) * Math.max(Math.abs(a), Math.abs(b));
    if (width <= least) break;
    const edge = least / width;
    share = Math.min(1 - edge, Math.max(edge, nextShare(a, valueA, b, valueB, c, valueC)));
  }
  return valueA >= 0 ? { low: a, high: b } : { low: b, high: a };
}

function nextShare(a: number, valueA: number, b: number, valueB: number, c: number, valueC: number): number {
  const xi = (a - b) / (c - b);
  const phi = (valueA - valueB) / (valueC - valueB);
  const trusted = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
  if (!trusted) return 0.5;
  const fromB = (valueA / (valueB - valueA)) * (valueC / (valueB - valueC));
  const fromC = ((c - a) / (b - a)) * (valueA / (valueC - valueA)) * (valueB / (valueC - valueB));
  const share = fromB + fromC;
  // Infinite values leave no number to trust.
  return share > 0 && share < 1 ? share : 0.5;
}
