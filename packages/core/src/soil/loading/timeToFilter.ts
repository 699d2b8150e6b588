import { requireAtLeast, requireMoreThan } from "../../require.js";
import { forms } from "./forms.js";
import type { LoadingLaw } from "./LoadingLawKinds.js";

/**
 * How long a medium takes to filter a volume at constant pressure; the inverse of `filtrateAt`.
 *
 * @param law with load as filtered volume per area, m, so constants in 1/m
 * @param given velocity through the clean medium, m/s; filtered volume per area, m
 * @returns s; Infinity for a volume it never filters
 * @throws InputError for a velocity not above 0 or a volume below 0
 * @see G. Bolton and others, J. Membrane Sci. 277 (2006) 75
 * @example
 * timeToFilter(loadingLaw("cake", { cake: 40 }), { initialVelocity: 1e-3, filtrate: 0.1 }) // 300
 */
export function timeToFilter(
  law: LoadingLaw,
  given: { readonly initialVelocity: number; readonly filtrate: number },
): number {
  requireMoreThan("timeToFilter", "initialVelocity", given.initialVelocity, 0, "m/s");
  requireAtLeast("timeToFilter", "filtrate", given.filtrate, 0, "m");
  const form = forms[law.name];
  if (given.filtrate >= form.plugsAt(law)) return Infinity;
  return form.effort(law, given.filtrate) / given.initialVelocity;
}
