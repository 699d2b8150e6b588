import { requireAtLeast, requireMoreThan } from "../../require.js";

/** Water in fuel, kg per m3 of fuel; 0.15 is 150 mg/L. */
export interface WaterInFuel {
  readonly dissolved: number;
  /** as drops: what separates, settles and freezes */
  readonly free: number;
}

/**
 * How much of a fuel's water is free: what it cannot dissolve. Cooling sets free what the warm fuel held; warming takes
 * it up again, slowly, so fuel just warmed may hold more free water than this says.
 *
 * @param given total water, kg/m3; solubility, kg of water per kg of fuel at its temperature, from `waterSolubility`;
 *   density of the fuel there, kg/m3
 * @throws InputError for a total or solubility below 0, or a density not above 0
 * @see `waterSolubility` for the law and its source; `typicalHydrocarbons` where the fuel's make-up is not known
 * @example
 * freeWater({ total: 0.15, solubility: 92.8e-6, density: 830 }) // { dissolved: 0.0770, free: 0.0730 }
 */
export function freeWater(given: {
  readonly total: number;
  readonly solubility: number;
  readonly density: number;
}): WaterInFuel {
  const { total, solubility, density } = given;
  requireAtLeast("freeWater", "total", total, 0, "kg/m3");
  requireAtLeast("freeWater", "solubility", solubility, 0, "kg/kg");
  requireMoreThan("freeWater", "density", density, 0, "kg/m3");
  const dissolved = Math.min(total, solubility * density);
  return { dissolved, free: total - dissolved };
}
