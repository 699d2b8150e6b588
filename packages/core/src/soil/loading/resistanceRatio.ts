import { requireAtLeast } from "../../require.js";
import { forms } from "./forms.js";
import type { LoadingLaw } from "./LoadingLawKinds.js";

/**
 * Resistance of a loaded medium over its clean resistance: 1 clean, Infinity plugged. It multiplies the medium's linear
 * term only, which is what a filter's `restriction` does; body and inertia do not grow with soil.
 *
 * It depends on the load alone, whatever the flow was on the way. It never falls with load.
 *
 * @param load in the unit the law's constants are per
 * @throws InputError for a load below 0
 * @see G. Bolton and others, J. Membrane Sci. 277 (2006) 75
 * @example
 * resistanceRatio(loadingLaw("intermediate", { intermediate: 10 }), 0.04) // 1.4918 after 40 g, constant per kg
 */
export function resistanceRatio(law: LoadingLaw, load: number): number {
  requireAtLeast("resistanceRatio", "load", load, 0);
  const form = forms[law.name];
  return load >= form.plugsAt(law) ? Infinity : form.ratio(law, load);
}
