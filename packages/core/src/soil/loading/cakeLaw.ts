import { requireMoreThan } from "../../require.js";
import type { LoadingLaw } from "./LoadingLawKinds.js";
import { loadingLaw } from "./loadingLaw.js";

/**
 * The cake law from specific resistances, as filtration textbooks give them, for load in kg of cake per m2.
 *
 * For load as filtered volume, `rescaleLaw` it by the solids each volume brings, kg/m3.
 *
 * @param given specific resistance of the cake, m/kg; resistance of the medium, 1/m (its linear resistance times its
 *   area)
 * @throws InputError for either not above 0
 * @see C. J. Geankoplis, Transport Processes and Unit Operations (3rd ed.), section 14.2
 * @example
 * cakeLaw({ specificResistance: 5.79e9, mediumResistance: 1.3e10 }).cake // 0.445 per kg/m2
 */
export function cakeLaw(given: { readonly specificResistance: number; readonly mediumResistance: number }): LoadingLaw {
  requireMoreThan("cakeLaw", "specificResistance", given.specificResistance, 0, "m/kg");
  requireMoreThan("cakeLaw", "mediumResistance", given.mediumResistance, 0, "1/m");
  return loadingLaw("cake", { cake: given.specificResistance / given.mediumResistance });
}
