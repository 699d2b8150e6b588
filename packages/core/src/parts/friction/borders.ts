/**
 * Where the regimes of a round line begin and end, as Reynolds numbers.
 * White, Fluid Mechanics (7th ed. 2011), sec. 6.1 (from memory): the flow stays laminar to about 2300; the Moody chart
 * and the Colebrook–White equation begin at 4000.
 */
export const LAMINAR_END = 2300;
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
