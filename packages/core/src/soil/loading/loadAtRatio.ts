import { requireAtLeast } from "../../require.js";
import { forms } from "./forms.js";
import type { LoadingLaw } from "./LoadingLawKinds.js";

/**
 * The load at which a medium's resistance has grown to a ratio: how much soil it takes before a limit is met.
 *
 * @param ratio 1 or more; for a ratio that is never reached see `plugsAt`
 * @returns in the unit the law's constants are per; Infinity when both constants are 0 and nothing ever grows
 * @throws InputError for a ratio below 1
 * @example
 * loadAtRatio(loadingLaw("cake", { cake: 25 }), 2) // 0.04
 */
export function loadAtRatio(law: LoadingLaw, ratio: number): number {
  requireAtLeast("loadAtRatio", "ratio", ratio, 1);
  return forms[law.name].load(law, ratio);
}
