/**
 * An error as the accuracy report prints it.
 *
 * @param {number | null} value JSON has no Infinity: a missing answer was written as null
 */
export function figure(value) {
  if (value === null) return "no answer";
  if (value === 0) return "0";
  return value < 0.001 || value >= 1000 ? value.toExponential(1) : value.toPrecision(2);
}
