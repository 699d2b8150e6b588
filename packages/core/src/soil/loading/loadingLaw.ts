import { InputError } from "../../InputError.js";
import { requireAtLeast } from "../../require.js";
import {
  type LoadingLaw,
  type LoadingLawName,
  lawConstants,
  type SingleLawName,
  singleLawNames,
} from "./LoadingLawKinds.js";
import { lawOfConstants } from "./lawOfConstants.js";

/**
 * A loading law of known constants.
 *
 * The published constants belong to filtered volume per area: in their letters, for a medium first passed at J0 m/s,
 * cake is Kc J0, intermediate Ki, standard Ks and complete Kb/J0, all 1/m.
 *
 * @param name of a law of one constant, or a pair of them
 * @param constants those the name mentions, 0 or more, per unit of load; `fitLoadingLaw` finds them from a test
 * @throws InputError for an unknown name, or a constant that is missing, below 0 or not part of that law
 * @see J. Hermia, Trans. IChemE 60 (1982) 183; G. Bolton and others, J. Membrane Sci. 277 (2006) 75
 * @example
 * loadingLaw("cake-complete", { cake: 40, complete: 0.8 })
 */
export function loadingLaw(
  name: LoadingLawName,
  constants: Readonly<Partial<Record<SingleLawName, number>>>,
): LoadingLaw {
  if (!Object.hasOwn(lawConstants, name)) {
    throw new InputError("loadingLaw", "name", Object.keys(lawConstants).join(", "), name);
  }
  const needed = lawConstants[name];
  for (const one of singleLawNames) {
    const value = constants[one];
    if (needed.includes(one)) requireAtLeast("loadingLaw", one, value ?? Number.NaN, 0, "per unit of load");
    else if (value !== undefined) throw new InputError("loadingLaw", one, `left out: a ${name} law has none`, value);
  }
  return lawOfConstants(name, (one) => constants[one] ?? 0);
}
