import type { FuelState } from "../../fuel/index.js";

/** What a screen law needs of the fuel: density, kg/m3, and kinematic viscosity, m2/s. */
export type ScreenFluid = Pick<FuelState, "density" | "kinematicViscosity">;

/** A screen law of two terms: drop = viscous * velocity + inertial * velocity |velocity|; Pa s/m and Pa s2/m2. */
export interface ScreenTerms {
  readonly viscous: number;
  readonly inertial: number;
}
