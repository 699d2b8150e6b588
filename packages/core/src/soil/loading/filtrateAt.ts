import { requireAtLeast, requireMoreThan } from "../../require.js";
import { forms } from "./forms.js";
import type { LoadingLaw } from "./LoadingLawKinds.js";

/**
 * How much a medium has filtered after a time at constant pressure, as its flow dies away.
 *
 * @param law with load as filtered volume per area, m, so constants in 1/m
 * @param given velocity through the clean medium, m/s; time, s
 * @returns filtered volume per area, m
 * @throws InputError for a velocity not above 0 or a time below 0
 * @see G. Bolton and others, J. Membrane Sci. 277 (2006) 75, table of laws at constant pressure
 * @example
 * filtrateAt(loadingLaw("intermediate", { intermediate: 1.2 }), { initialVelocity: 1e-3, time: 700 }) // 0.5081
 */
export function filtrateAt(
  law: LoadingLaw,
  given: { readonly initialVelocity: number; readonly time: number },
): number {
  requireMoreThan("filtrateAt", "initialVelocity", given.initialVelocity, 0, "m/s");
  requireAtLeast("filtrateAt", "time", given.time, 0, "s");
  return forms[law.name].filtrate(law, given.initialVelocity * given.time);
}
