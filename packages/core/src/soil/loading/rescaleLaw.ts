import { requireMoreThan } from "../../require.js";
import type { LoadingLaw } from "./LoadingLawKinds.js";
import { lawOfConstants } from "./lawOfConstants.js";

/**
 * The same law for load in another unit: from soil per area to soil by the area, from filtered volume to soil by how
 * much of it a volume brings.
 *
 * @param law per old unit of load
 * @param oldPerNew how many old units one new unit is
 * @throws InputError when that is not above 0
 * @example
 * rescaleLaw(perSquareMetre, 1 / area) // kg/m2 to kg: one kg is 1/area kg/m2
 * rescaleLaw(perMetre, 1 / caught) // m of filtrate to kg/m2: one kg/m2 is 1/caught m, caught in kg/m3
 */
export function rescaleLaw(law: LoadingLaw, oldPerNew: number): LoadingLaw {
  requireMoreThan("rescaleLaw", "oldPerNew", oldPerNew, 0);
  return lawOfConstants(law.name, (one) => law[one] * oldPerNew);
}
