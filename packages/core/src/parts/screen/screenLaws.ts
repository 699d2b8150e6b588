import { armourCannon } from "./armourCannon.js";
import { brundrett } from "./brundrett.js";
import { type Cloth, clothGeometry } from "./clothGeometry.js";
import { ehrhardt } from "./ehrhardt.js";
import type { ScreenFluid } from "./ScreenFluid.js";

/** The name of a screen law in `screenLaws`. */
export type ScreenLawName = "armourCannon" | "ehrhardt" | "brundrett";

/** A screen law with the range its source states, in its own Reynolds number. */
export interface ScreenLaw {
  /** Drop, Pa, of a cloth at a face velocity, m/s. */
  readonly drop: (cloth: Cloth, fluid: ScreenFluid, faceVelocity: number) => number;
  /** The law's own Reynolds number, no unit; never negative. */
  readonly reynolds: (cloth: Cloth, fluid: ScreenFluid, faceVelocity: number) => number;
  /** Reynolds numbers between which the source says the law holds. */
  readonly holds: { readonly from: number; readonly to: number };
}

/**
 * Three published laws for the drop of a plain woven screen, by name, each with its own Reynolds number and stated range.
 * They differ by a factor of about 2.5, so the lowest and the highest of them make the band to quote.
 *
 * Each holds where `holds` says; outside it the figure is an extrapolation, and whoever shows it says so.
 *
 * @throws InputError naming `aperture` or `wire`
 * @see each law for its source
 * @example
 * screenLaws.ehrhardt.holds // { from: 0.5, to: 1000 }
 */
export const screenLaws: Readonly<Record<ScreenLawName, ScreenLaw>> = {
  armourCannon: {
    drop: armourCannon,
    reynolds: (cloth, fluid, faceVelocity) =>
      Math.abs(faceVelocity) / (fluid.kinematicViscosity * clothGeometry(cloth).surface ** 2 * cloth.aperture),
    holds: { from: 0.1, to: 1000 },
  },
  ehrhardt: {
    drop: ehrhardt,
    reynolds: (cloth, fluid, faceVelocity) =>
      (Math.abs(faceVelocity) * cloth.wire) / (clothGeometry(cloth).openArea * fluid.kinematicViscosity),
    holds: { from: 0.5, to: 1000 },
  },
  brundrett: {
    drop: brundrett,
    reynolds: (cloth, fluid, faceVelocity) => (Math.abs(faceVelocity) * cloth.wire) / fluid.kinematicViscosity,
    holds: { from: 1e-4, to: 1e4 },
  },
};
