import { type Cloth, clothGeometry } from "./clothGeometry.js";
import type { ScreenFluid, ScreenTerms } from "./ScreenFluid.js";

/**
 * Pressure drop of a plain woven wire screen, by Ehrhardt's law: a loss factor on the face velocity.
 * Usually the middle one of the three laws. Odd in velocity.
 *
 * Holds for about Re 0.5 to 1000, Re = u d / (b nu) with wire d and open area b.
 * Screen laws differ by a factor of about 2.5: quote a band, see `screenLaws`.
 *
 * @param cloth aperture and wire diameter, m
 * @param fluid density, kg/m3, and kinematic viscosity, m2/s
 * @param faceVelocity volume flow over the whole face of the screen, m/s
 * @returns drop, Pa
 * @throws InputError naming `aperture` or `wire`
 * @see G. Ehrhardt, Int. Chem. Eng. 23 (1983) 455
 * @example
 * ehrhardt({ aperture: 150e-6, wire: 100e-6 }, { density: 835, kinematicViscosity: 3e-6 }, 0.01) // 11.059111111111113, Pa
 */
export function ehrhardt(cloth: Cloth, fluid: ScreenFluid, faceVelocity: number): number {
  const { viscous, inertial } = ehrhardtTerms(cloth, fluid);
  return (viscous + inertial * Math.abs(faceVelocity)) * faceVelocity;
}

/** The law's two terms: drop = viscous * velocity + inertial * velocity |velocity|; Pa s/m and Pa s2/m2. */
export function ehrhardtTerms(cloth: Cloth, fluid: ScreenFluid): ScreenTerms {
  const { openArea } = clothGeometry(cloth);
  // K = (0.72 + 49 / Re)(1 - b) / b^2, multiplied out so that a standing fluid gives 0 instead of 0/0.
  const perHead = (fluid.density * (1 - openArea)) / (2 * openArea ** 2);
  return { viscous: ((49 * openArea * fluid.kinematicViscosity) / cloth.wire) * perHead, inertial: 0.72 * perHead };
}
