import { type FuelState, freeWater, type Hydrocarbons, typicalHydrocarbons, waterSolubility } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";

/** Water in the delivered fuel at a temperature, kg/m3; `dissolved` null where nobody knows how much this fuel dissolves. */
export function freeWaterAt(
  system: System,
  fuel: FuelState,
  temperature: number,
): { readonly dissolved: number | null; readonly free: number } {
  const total = system.deliveredFuel?.water ?? 0;
  const kind = hydrocarbonsOf(system);
  if (!kind || temperature < COLDEST || temperature > WARMEST) return { dissolved: null, free: total };
  return freeWater({ total, solubility: waterSolubility({ ...kind, temperature }), density: fuel.density });
}

/** Where the law of solubility is given, K. */
const COLDEST = 233;
const WARMEST = 373;

/** Typical make-up; null for fuels that take up far more water than hydrocarbons do. */
function hydrocarbonsOf({ fuel }: System): Hydrocarbons | null {
  const kind = fuel.kind === "measured" ? fuel.like : fuel.kind;
  switch (kind) {
    case "diesel":
    case "paraffinic":
    case "kerosene":
      return typicalHydrocarbons["light diesel"];
    case "petrol":
    case "premix":
      return "ethanol" in fuel && fuel.ethanol > 0 ? null : typicalHydrocarbons.petrol;
    case "biodiesel":
      return null;
  }
}
