import { requireBetween, requireMoreThan } from "../require.js";
import { psi } from "./units.js";

/**
 * True vapour pressure of petrol from its Reid vapour pressure (about the vapour pressure at 37.8 degC, as the
 * standards limit it) and the slope S of its distillation curve.
 *
 * Within 2.5 % of the printed table from 40 to 100 degF. S hardly matters: 0.5 more or less moves 60 kPa petrol at
 * 40 degC by 0.3 %. Below -18 degC and above 60 degC it is carried on without data. The standards' dry vapour pressure
 * equivalent is taken as the Reid value; the two tests differ by 1 or 2 kPa.
 *
 * @param given Reid vapour pressure, Pa; S, degF per % evaporated (3.0 motor, 2.0 aviation petrol); temperature, K
 * @returns vapour pressure, Pa, absolute
 * @throws InputError for a Reid vapour pressure outside 1 to 200 kPa, S outside 1 to 4, or a temperature not above 0
 * @see US EPA AP-42, chapter 7.1, figure 7.1-14b, P = exp{…}, P in psia, T in degF (from memory)
 * @example
 * petrolVapourPressure({ reid: 60e3, slope: 3, temperature: 293.15 }) // 35.78e3
 */
export function petrolVapourPressure(given: {
  readonly reid: number;
  readonly slope: number;
  readonly temperature: number;
}): number {
  requireBetween("petrolVapourPressure", "reid", given.reid, { from: 1e3, to: 200e3 }, "Pa");
  requireBetween("petrolVapourPressure", "slope", given.slope, { from: 1, to: 4 }, "degF per %");
  requireMoreThan("petrolVapourPressure", "temperature", given.temperature, 0, "K");
  const rootS = Math.sqrt(given.slope);
  const logReid = Math.log10(given.reid / psi);
  // T + 459.6 with T in degF, as the equation has it; the exact zero of the scale is 459.67.
  const rankine = 1.8 * given.temperature - 459.67 + 459.6;
  const exponent =
    (0.7553 - 413 / rankine) * rootS * logReid -
    (1.854 - 1042 / rankine) * rootS +
    (2416 / rankine - 2.013) * logReid -
    8742 / rankine +
    15.64;
  return Math.exp(exponent) * psi;
}
