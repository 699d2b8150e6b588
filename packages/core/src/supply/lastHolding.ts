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
  for (let round = 0; round < 200 && high - low > 1e-14 * high; round++) {
    const share = Number.isFinite(highMargin) ? lowMargin / (lowMargin - highMargin) : 0.5;
    // A straight line through the ends, kept off them; every third round the middle, so that the bracket always halves.
    const middle = low + (round % 3 === 2 ? 0.5 : Math.min(0.999, Math.max(0.001, share))) * (high - low);
    if (middle <= low || middle >= high) break;
    const value = margin(middle);
    if (value >= 0) [low, lowMargin] = [middle, value];
    else [high, highMargin] = [middle, value];
  }
  return low;
}
