import { forms } from "./forms.js";
import type { LoadingLaw } from "./LoadingLawKinds.js";

/**
 * The load at which a medium passes nothing any more; Infinity for laws whose resistance only grows.
 *
 * @returns in the unit the law's constants are per
 * @example
 * plugsAt(loadingLaw("complete", { complete: 20 })) // 0.05
 */
export function plugsAt(law: LoadingLaw): number {
  return forms[law.name].plugsAt(law);
}
