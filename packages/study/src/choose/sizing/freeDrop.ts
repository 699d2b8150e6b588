/** What can be known of a sum of drops against what is free for it. */
export type Fits = "yes" | "no" | "too close";

/** A sum this near to what is free, Pa, is too close to call: both are reckoned to far less. */
const CLOSE = 0.01;

/** Drop beyond which nothing on a fuel line is looked for, Pa. */
const FAR = 1e9;

/** Whether a drop fits into what is free. */
export function fits(drop: number, free: number): Fits {
  // Turned round: a drop that is no number never fits.
  if (!(drop <= free + CLOSE)) return "no";
  return drop <= free - CLOSE ? "yes" : "too close";
}

/**
 * The largest drop, Pa, at which a margin that never rises with it is still 0 or more; -Infinity where it is not even
 * without any, Infinity where no drop touches it.
 *
 * Most margins give way Pa for Pa, so the margin itself is tried first.
 */
export function freeDrop(margin: (drop: number) => number): number {
  const whole = margin(0);
  if (!(whole >= 0)) return -Infinity;
  if (Math.abs(margin(whole)) < CLOSE / 100 && !(margin(whole + 1) >= 0)) return whole;
  if (margin(FAR) >= 0) return Infinity;
  let [good, bad] = [0, FAR];
  while (bad - good > CLOSE / 100) {
    const middle = (good + bad) / 2;
    if (margin(middle) >= 0) good = middle;
    else bad = middle;
  }
  return good;
}
