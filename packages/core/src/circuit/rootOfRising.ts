/** A function that never falls, with its derivative. */
export interface Rising {
  /** @returns the value at x; leaves the derivative in `slope` */
  at(x: number): number;
  readonly slope: number;
}

/** One unit in the last place, relative. */
const ULP = 2 ** -52;

/**
 * Where a rising function of a positive argument meets a target. It cannot fail to converge: every step stays inside a
 * bracket that shrinks, and where the function has a step the answer is the last argument below it.
 *
 * The step fits a x + b x^2 through value and slope and solves that: exact for laminar lines, filters and fittings, and
 * close for turbulent lines, so two or three evaluations are usual.
 *
 * @param rising value 0 or a step at 0; never falls
 * @param target more than 0
 * @param guess more than 0
 * @returns the argument, more than 0; Infinity when the target is never met
 */
export function rootOfRising(rising: Rising, target: number, guess: number): number {
  let low = 0;
  let high = Infinity;
  let x = guess;
  for (let round = 0; round < 400; round++) {
    const value = rising.at(x);
    const miss = value - target;
    if (Math.abs(miss) <= ULP * target) return x;
    if (miss > 0) high = x;
    else low = x;
    let next = round < 60 ? fitted(x, value, rising.slope, target) : Number.NaN;
    // Turned round: a step that is not a number, or leaves the bracket, is replaced too.
    if (!(next > low && next < high)) next = inside(low, high);
    // No number lies between: the function steps over the target here, or rounding has the last word.
    if (next <= low || next >= high) return low;
    if (Math.abs(next - x) <= ULP * x) return next;
    x = next;
  }
  return low;
}

/** The argument at which a x + b x^2, fitted to value and slope at x, meets the target; Newton's where it bends more. */
function fitted(x: number, value: number, slope: number, target: number): number {
  const chord = value / x;
  const bend = (slope - chord) / x;
  const start = 2 * chord - slope;
  if (start >= 0 && bend >= 0) return (2 * target) / (start + Math.sqrt(start * start + 4 * bend * target));
  return x - (value - target) / slope;
}

/** A number well inside a bracket: its geometric middle while it is wide, the plain middle once it is narrow. */
function inside(low: number, high: number): number {
  if (high === Infinity) return low * 16;
  if (low === 0) return high / 16;
  return high > 2 * low ? Math.sqrt(low) * Math.sqrt(high) : low + (high - low) / 2;
}
