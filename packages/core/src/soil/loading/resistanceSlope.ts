import { requireAtLeast } from "../../require.js";
import { forms } from "./forms.js";
import type { LoadingLaw } from "./LoadingLawKinds.js";

/**
 * How fast the ratio of `resistanceRatio` grows with load, per unit of load; Infinity from where the law plugs.
 *
 * @throws InputError for a load below 0
 * @example
 * resistanceSlope(loadingLaw("cake", { cake: 25 }), 0.04) // 25: a cake's resistance grows evenly
 */
export function resistanceSlope(law: LoadingLaw, load: number): number {
  requireAtLeast("resistanceSlope", "load", load, 0);
  const form = forms[law.name];
  return load >= form.plugsAt(law) ? Infinity : form.slope(law, load);
}
