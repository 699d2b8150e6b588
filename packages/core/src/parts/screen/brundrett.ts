import { type Cloth, clothGeometry } from "./clothGeometry.js";
import type { ScreenFluid } from "./ScreenFluid.js";

/**
 * Pressure drop of a plain woven wire screen, by Brundrett's law: one loss factor over eight decades of Reynolds number.
 * Usually the lowest of the three laws. Odd in velocity, and 0 without flow.
 *
 * Holds for Re 1e-4 to 1e4, Re = u d / nu with wire d. The logarithms are taken to base 10 (recalled so, not re-read).
 * Screen laws differ by a factor of about 2.5: quote a band, see `screenLaws`.
 *
 * @param cloth aperture and wire diameter, m
 * @param fluid density, kg/m3, and kinematic viscosity, m2/s
 * @param faceVelocity volume flow over the whole face of the screen, m/s
 * @returns drop, Pa
 * @throws InputError naming `aperture` or `wire`
 * @see E. Brundrett, J. Fluids Eng. 115 (1993) 239
 * @example
 * brundrett({ aperture: 150e-6, wire: 100e-6 }, { density: 835, kinematicViscosity: 3e-6 }, 0.01) // 7.22246834499647, Pa
 */
export function brundrett(cloth: Cloth, fluid: ScreenFluid, faceVelocity: number): number {
  const { openArea } = clothGeometry(cloth);
  return brundrettDrop({ wire: cloth.wire, openArea }, fluid, faceVelocity);
}

/** The same with the open area known, for a caller that asks many times. */
export function brundrettDrop(
  { wire, openArea }: { readonly wire: number; readonly openArea: number },
  fluid: ScreenFluid,
  faceVelocity: number,
): number {
  // Without flow the factor is infinite and its product with the velocity is 0.
  if (faceVelocity === 0) return 0;
  const reynolds = (Math.abs(faceVelocity) * wire) / fluid.kinematicViscosity;
  const solid = (1 - openArea ** 2) / openArea ** 2;
  const factor = (7.125 / reynolds + 0.88 / Math.log10(reynolds + 1.25) + 0.055 * Math.log10(reynolds)) * solid;
  return (factor * fluid.density * faceVelocity * Math.abs(faceVelocity)) / 2;
}
