import { requireMoreThan } from "../../require.js";

/**
 * How much faster a clean drop moves than the rigid sphere of Stokes's law, since its inside turns with the flow: 1 for a
 * thick drop in thin fuel, 1.5 for a thin one in thick fuel, about 1.3 for water in diesel.
 *
 * For clean liquids in creeping flow. Traces of soap or dirt on its skin make a small drop rigid, and fuel is never free
 * of them: count on 1, and take this for the most it can be.
 *
 * @param given dynamic viscosities of the drop and of the fuel around it, Pa s
 * @throws InputError for a viscosity not above 0
 * @see J. Hadamard, C. R. Acad. Sci. 152 (1911) 1735; W. Rybczynski, Bull. Acad. Sci. Cracovie A (1911) 40 (from memory)
 * @example
 * cleanDropFactor({ drop: 1.0016e-3, fuel: 2.475e-3 }) // 1.3111
 */
export function cleanDropFactor(given: { readonly drop: number; readonly fuel: number }): number {
  requireMoreThan("cleanDropFactor", "drop", given.drop, 0, "Pa s");
  requireMoreThan("cleanDropFactor", "fuel", given.fuel, 0, "Pa s");
  return (3 * (given.fuel + given.drop)) / (2 * given.fuel + 3 * given.drop);
}
