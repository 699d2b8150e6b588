/**
 * Integral of x^(power - 1) from one positive size to another; close to power 0 it passes smoothly into the logarithm.
 */
export function powerIntegral(from: number, to: number, power: number): number {
  const logarithm = Math.log(to / from);
  const exponent = power * logarithm;
  if (exponent === 0) return logarithm;
  return from ** power * (Math.expm1(exponent) / power);
}
