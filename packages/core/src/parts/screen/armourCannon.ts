import { type Cloth, clothGeometry } from "./clothGeometry.js";
import type { ScreenFluid, ScreenTerms } from "./ScreenFluid.js";

/**
 * Pressure drop of a plain woven wire screen, by Armour and Cannon's law: a porous sheet two wires thick.
 * The only one of the three with a true creeping limit, so the first choice for slow, viscous fuel. Odd in velocity.
 *
 * Holds for Re 0.1 to 1000 (Re = rho u / (mu a^2 w), a the wire surface per volume, w the opening), porosity 0.35 to 0.76,
 * openings 5 to 550 um. Screen laws differ by a factor of about 2.5: quote a band, see `screenLaws`.
 *
 * @param cloth aperture and wire diameter, m
 * @param fluid density, kg/m3, and kinematic viscosity, m2/s
 * @param faceVelocity volume flow over the whole face of the screen, m/s
 * @returns drop, Pa
 * @throws InputError naming `aperture` or `wire`
 * @see W. J. Armour and J. N. Cannon, AIChE J. 14 (1968) 415
 * @example
 * armourCannon({ aperture: 150e-6, wire: 100e-6 }, { density: 835, kinematicViscosity: 3e-6 }, 0.01) // 18.182152372684286, Pa
 */
export function armourCannon(cloth: Cloth, fluid: ScreenFluid, faceVelocity: number): number {
  const { viscous, inertial } = armourCannonTerms(cloth, fluid);
  return (viscous + inertial * Math.abs(faceVelocity)) * faceVelocity;
}

/** The law's two terms: drop = viscous * velocity + inertial * velocity |velocity|; Pa s/m and Pa s2/m2. */
export function armourCannonTerms(cloth: Cloth, fluid: ScreenFluid): ScreenTerms {
  const { porosity, surface, thickness } = clothGeometry(cloth);
  // f = 8.61 / Re + 0.52, multiplied out so that a standing fluid gives 0 instead of 0/0.
  const perVelocity = (fluid.density * thickness) / porosity ** 2;
  return {
    viscous: 8.61 * fluid.kinematicViscosity * surface ** 2 * perVelocity,
    inertial: (0.52 / cloth.aperture) * perVelocity,
  };
}
