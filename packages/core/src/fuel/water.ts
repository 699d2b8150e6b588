import { requireBetween } from "../require.js";
import { icePoint } from "./units.js";

/** Water at one temperature. */
export interface Water {
  /** kg/m3 */
  readonly density: number;
  /** Pa s */
  readonly dynamicViscosity: number;
  /** m2/s */
  readonly kinematicViscosity: number;
}

/**
 * Liquid water at 0.1 MPa: what settles in a bowl, and what many a flow test is run on.
 *
 * Density within 1e-6 (stated by its authors), viscosity within 1 % (stated; 0.17 % near 20 degC), both from 0 to 40 degC.
 *
 * @param given temperature, K, from 273.15 to 313.15
 * @throws InputError outside 273.15 to 313.15 K
 * @see IAPWS SR6-08(2011), viscosity at 0.1 MPa (from memory)
 * @see M. Tanaka and others, Metrologia 38 (2001) 301, density (from memory)
 * @example
 * water({ temperature: 293.15 }).kinematicViscosity // 1.0034e-6
 */
export function water(given: { readonly temperature: number }): Water {
  requireBetween("water", "temperature", given.temperature, { from: icePoint, to: 313.15 }, "K");
  const celsius = given.temperature - icePoint;
  const density =
    999.97495 * (1 - ((celsius - 3.983035) ** 2 * (celsius + 301.797)) / (522528.9 * (celsius + 69.34881)));
  const reduced = given.temperature / 300;
  const micropascalSeconds =
    280.68 * reduced ** -1.9 + 511.45 * reduced ** -7.7 + 61.131 * reduced ** -19.6 + 0.45903 * reduced ** -40;
  const dynamicViscosity = micropascalSeconds * 1e-6;
  return { density, dynamicViscosity, kinematicViscosity: dynamicViscosity / density };
}
