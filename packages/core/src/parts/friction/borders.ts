/**
 * Reynolds number up to which the flow in a round line stays laminar.
 * @see White, Fluid Mechanics (7th ed. 2011), sec. 6.1 (from memory)
 */
export const LAMINAR_END = 2300;

/**
 * Reynolds number from which the Moody chart and the Colebrook–White equation hold.
 * @see White, Fluid Mechanics (7th ed. 2011), sec. 6.1 (from memory)
 */
export const TURBULENT_START = 4000;

/** Largest relative roughness of the Moody chart (L. F. Moody, Trans. ASME 66 (1944) 671); beyond it no law is offered. */
export const MOST_ROUGH = 0.05;

/** What the flow in a line does: smooth layers, eddies, or the unsteady passage between them. */
export type Regime = "laminar" | "transitional" | "turbulent";

/**
 * Regime of a Reynolds number.
 * @param reynolds Reynolds number, taken without its sign
 */
export function regimeOf(reynolds: number): Regime {
  const size = Math.abs(reynolds);
  if (size <= LAMINAR_END) return "laminar";
  return size < TURBULENT_START ? "transitional" : "turbulent";
}
