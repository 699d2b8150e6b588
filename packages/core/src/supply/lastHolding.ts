import { closeBracket } from "../closeBracket.js";

/** Flow beyond which nothing on a machine's fuel line is looked for, m3/s. */
const FAR = 1e3;

/**
 * The largest flow at which a margin that falls with flow is still 0 or more.
 *
 * The bracket always closes; where the margin steps, the answer is the flow below the step.
 *
 * @param margin falls, or at least never rises, with flow in m3/s
 * @param guess a flow of the right size, m3/s
 * @returns m3/s; 0 when the margin is negative from the start, Infinity when it holds at any flow up to 1000 m3/s
 */
export function lastHolding(margin: (flow: number) => number, guess: number): number {
  let low = 0;
  let lowMargin = margin(0);
  if (!(lowMargin >= 0)) return 0;
  let high = guess;
  let highMargin = margin(high);
  while (highMargin >= 0) {
    if (high > FAR) return Infinity;
    [low, lowMargin] = [high, highMargin];
    high *= 4;
    highMargin = margin(high);
  }
  return closeBracket(margin, { at: low, value: lowMargin }, { at: high, value: highMargin }, 1e-14).low;
}
