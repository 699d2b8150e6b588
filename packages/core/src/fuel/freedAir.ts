import { requireAtLeast, requireMoreThan } from "../require.js";
import { dissolvedAir } from "./dissolvedAir.js";

/**
 * Volume of air that comes out of saturated fuel under suction, per volume of fuel, if all that can be freed is.
 * A vacuum of 40 kPa frees 8 % of the fuel's volume: bubbles are no proof of a leak.
 *
 * Henry's law with the solubility of `dissolvedAir` and its limits; release takes time, so this is the most.
 *
 * @param given density at 15 degC, kg/m3; temperature, K; pressure at which the fuel stood in air, Pa, absolute (the
 *   atmosphere's); pressure in the line, Pa, absolute
 * @returns volume of gas at the line's pressure over volume of fuel; 0 where the line is not under suction
 * @throws InputError outside the limits of `dissolvedAir`, or for a line pressure not above 0
 * @see Henry's law; ASTM D2779-92(2020)
 * @example
 * freedAir({ densityAt15: 840, temperature: 293.15, saturatedAt: 101325, pressure: 61325 }) // 0.078
 */
export function freedAir(given: {
  readonly densityAt15: number;
  readonly temperature: number;
  readonly saturatedAt: number;
  readonly pressure: number;
}): number {
  const { densityAt15, temperature, saturatedAt, pressure } = given;
  requireAtLeast("freedAir", "saturatedAt", saturatedAt, 0, "Pa");
  requireMoreThan("freedAir", "pressure", pressure, 0, "Pa");
  const { ostwald } = dissolvedAir({ densityAt15, temperature, pressure: saturatedAt });
  // More pressure than the fuel was saturated at frees nothing: none is a true answer there.
  return (ostwald * Math.max(0, saturatedAt - pressure)) / pressure;
}
