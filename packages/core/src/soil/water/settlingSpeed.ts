import { requireMoreThan } from "../../require.js";

/** Standard acceleration of free fall, m/s2, exact by definition. */
const FREE_FALL = 9.80665;

/** Up to here the speed is given; Oseen's correction then is 19 %. */
const LARGEST_REYNOLDS = 1;

/** How fast something settles; or that Stokes's law cannot say. */
export type Settling =
  | {
      readonly known: true;
      /** downwards, m/s; below 0 for what is lighter than the fuel and rises */
      readonly speed: number;
      readonly reynolds: number;
      /** share by which the law is too fast, to first order: 3/16 of the Reynolds number (Oseen) */
      readonly tooFastBy: number;
    }
  /** the drop is too large, or the fuel too thin, for creeping flow */
  | { readonly known: false; readonly reason: "Reynolds number above 1"; readonly reynolds: number };

/**
 * How fast a drop of water, or a grain, settles in still fuel (Stokes's law). Half the size settles a quarter as fast:
 * a drop of 100 um needs 44 minutes for a metre of diesel, one of 10 um three days.
 *
 * A rigid sphere alone in creeping flow; 2 % too fast at a Reynolds number of 0.1, and not given above 1. A clean drop
 * whose inside turns may be up to a half faster: `cleanDropFactor`.
 *
 * @param given size, m; density of drop or grain, kg/m3; the fuel's density, kg/m3, and kinematic viscosity, m2/s
 * @throws InputError for anything not above 0
 * @see G. G. Stokes, Trans. Cambridge Phil. Soc. 9 (1851) 8; C. W. Oseen, Ark. Mat. Astron. Fys. 6 (1910) no. 29 (from
 *   memory)
 * @example
 * settlingSpeed({ size: 1e-4, density: 998, fuel: { density: 825, kinematicViscosity: 3e-6 } }) // speed 3.808e-4
 */
export function settlingSpeed(given: {
  readonly size: number;
  readonly density: number;
  readonly fuel: { readonly density: number; readonly kinematicViscosity: number };
}): Settling {
  const { size, density, fuel } = given;
  requireMoreThan("settlingSpeed", "size", size, 0, "m");
  requireMoreThan("settlingSpeed", "density", density, 0, "kg/m3");
  requireMoreThan("settlingSpeed", "fuel.density", fuel.density, 0, "kg/m3");
  requireMoreThan("settlingSpeed", "fuel.kinematicViscosity", fuel.kinematicViscosity, 0, "m2/s");
  const speed = (FREE_FALL * size * size * (density - fuel.density)) / (18 * fuel.density * fuel.kinematicViscosity);
  const reynolds = (Math.abs(speed) * size) / fuel.kinematicViscosity;
  if (reynolds > LARGEST_REYNOLDS) return { known: false, reason: "Reynolds number above 1", reynolds };
  return { known: true, speed, reynolds, tooFastBy: (3 / 16) * reynolds };
}
