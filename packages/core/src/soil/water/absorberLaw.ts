import { requireMoreThan } from "../../require.js";
import { singles } from "../loading/forms.js";
import type { LoadingLaw } from "../loading/LoadingLawKinds.js";
import { loadingLaw } from "../loading/loadingLaw.js";

/**
 * How an element that absorbs water grows more restrictive as it swells: a loading law for load in kg of water
 * absorbed. It shuts in the end, which is what such elements are for.
 *
 * Pores narrow evenly inside, as in standard blocking, through the stated point; that swelling does the same is common
 * practice, no source. Where the element holds soil as well, the ratios of both multiply: both narrow the same pores
 * (the safe side; adding them would give less).
 *
 * @param stated water absorbed, kg, and the resistance ratio it brought, more than 1
 * @throws InputError for water not above 0 or a ratio not above 1
 * @example
 * plugsAt(absorberLaw({ water: 0.05, ratio: 4 })) // 0.1 kg
 */
export function absorberLaw(stated: { readonly water: number; readonly ratio: number }): LoadingLaw {
  requireMoreThan("absorberLaw", "water", stated.water, 0, "kg");
  requireMoreThan("absorberLaw", "ratio", stated.ratio, 1);
  return loadingLaw("standard", { standard: singles.standard.constant(stated.water, stated.ratio) });
}
