import type { FuelState } from "../../fuel/index.js";

/** What a screen law needs of the fuel: density, kg/m3, and kinematic viscosity, m2/s. */
export type ScreenFluid = Pick<FuelState, "density" | "kinematicViscosity">;
