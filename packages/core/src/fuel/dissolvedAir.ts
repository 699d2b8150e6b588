import { requireAtLeast, requireBetween } from "../require.js";

/** Air dissolved in a fuel. */
export interface DissolvedAir {
  /** Ostwald coefficient: volume of gas, at its own temperature and pressure, in a volume of fuel. No unit. */
  readonly ostwald: number;
  /** Bunsen coefficient: the same gas reduced to 0 degC and 101.325 kPa. No unit. */
  readonly bunsen: number;
}

/**
 * Air that a petroleum fuel holds in solution when saturated. Warm fuel holds slightly more; light fuel holds more.
 *
 * Holds from 630 to 900 kg/m3 and 228 to 423 K. Biodiesel and alcohols are outside it. The equations are recalled, and
 * no measured table was found to check them on.
 *
 * @param given density of the fuel at 15 degC, kg/m3; temperature, K; pressure of the air, Pa, absolute, less the
 *   fuel's vapour pressure
 * @throws InputError outside these ranges or for a pressure below 0
 * @see ASTM D2779-92(2020): L = 0.300 exp(0.639 (700 - T)/T ln(3.333 L0)), Lc = 7.70 L (0.980 - d), Bunsen = 2697 p Lc/T (from memory)
 * @example
 * dissolvedAir({ densityAt15: 840, temperature: 293.15, pressure: 101325 }) // { ostwald: 0.1199, bunsen: 0.112 }
 */
export function dissolvedAir(given: {
  readonly densityAt15: number;
  readonly temperature: number;
  readonly pressure: number;
}): DissolvedAir {
  const { densityAt15, temperature, pressure } = given;
  requireBetween("dissolvedAir", "densityAt15", densityAt15, { from: 630, to: 900 }, "kg/m3");
  requireBetween("dissolvedAir", "temperature", temperature, { from: 228, to: 423 }, "K");
  requireAtLeast("dissolvedAir", "pressure", pressure, 0, "Pa");
  const airInReferenceLiquid = 0.098; // L0 of air
  const ofReference =
    0.3 * Math.exp(((0.639 * (700 - temperature)) / temperature) * Math.log(3.333 * airInReferenceLiquid));
  const ostwald = 7.7 * ofReference * (0.98 - densityAt15 / 1000);
  const megapascal = pressure / 1e6;
  return { ostwald, bunsen: (2697 * megapascal * ostwald) / temperature };
}
