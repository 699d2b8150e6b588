import { requireAtLeast, requireMoreThan } from "../require.js";
import { densityAt } from "./densityAt.js";
import type { Fuel } from "./Fuel.js";
import type { FuelCaution } from "./FuelCaution.js";
import { fuelCautions } from "./fuelCautions.js";
import { vapourPressureAt } from "./vapourPressureAt.js";
import { viscosityAt } from "./viscosityAt.js";

// The type and its maker share this file: two names that differ in case alone cannot lie side by side on every disk.

/** What the circuit needs to know of a fuel at one temperature. */
export interface FuelState {
  /** kg/m3 */
  readonly density: number;
  /** m2/s */
  readonly kinematicViscosity: number;
  /** Pa, absolute; 0 when none is known, with a caution. */
  readonly vapourPressure: number;
  /** K; left out when the figures were given outright without it. */
  readonly temperature?: number;
  readonly cautions: readonly FuelCaution[];
}

/** Figures of a fuel stated outright. */
export interface GivenFuel {
  /** kg/m3 */
  readonly density: number;
  /** m2/s */
  readonly kinematicViscosity: number;
  /** Pa, absolute; counts as 0 when left out, with a caution */
  readonly vapourPressure?: number;
  /** K; only carried along */
  readonly temperature?: number;
}

/**
 * What the circuit needs to know of a fuel at one temperature: from a fuel and a temperature, or from figures.
 *
 * Outside the fuel's range the figures are still given, with a caution that no data back them; below the cloud point
 * they are those of a liquid without wax, which is thinner than the real one.
 *
 * @param fuel one of `fuels`, `blend(…)`, `fuelLike(…)`; or density, kg/m3, kinematic viscosity, m2/s, and, if it
 *   matters, vapour pressure, Pa
 * @param at temperature, K
 * @throws InputError for a temperature, density or viscosity not above 0, NaN, or a fuel whose law fails there
 * @example
 * fuelState(fuels.kerosene, { temperature: 273.15 }).kinematicViscosity // 2.671e-6
 * fuelState({ density: 830, kinematicViscosity: 3e-6 }).vapourPressure // 0, with a caution
 */
export function fuelState(fuel: Fuel, at: { readonly temperature: number }): FuelState;
export function fuelState(given: GivenFuel): FuelState;
export function fuelState(fuel: Fuel | GivenFuel, at?: { readonly temperature: number }): FuelState {
  return "viscosity" in fuel ? stateAt(fuel, at?.temperature ?? Number.NaN) : stated(fuel);
}

function stateAt(fuel: Fuel, temperature: number): FuelState {
  requireMoreThan("fuelState", "temperature", temperature, 0, "K");
  return {
    density: densityAt(fuel.density, temperature),
    kinematicViscosity: viscosityAt(fuel.viscosity, temperature),
    vapourPressure: vapourPressureAt(fuel.vapourPressure, temperature),
    temperature,
    cautions: fuelCautions(fuel, temperature),
  };
}

function stated(given: GivenFuel): FuelState {
  const { density, kinematicViscosity, vapourPressure, temperature } = given;
  requireMoreThan("fuelState", "density", density, 0, "kg/m3");
  requireMoreThan("fuelState", "kinematicViscosity", kinematicViscosity, 0, "m2/s");
  if (vapourPressure !== undefined) requireAtLeast("fuelState", "vapourPressure", vapourPressure, 0, "Pa");
  if (temperature !== undefined) requireMoreThan("fuelState", "temperature", temperature, 0, "K");
  return {
    density,
    kinematicViscosity,
    vapourPressure: vapourPressure ?? 0,
    ...(temperature === undefined ? {} : { temperature }),
    cautions: vapourPressure === undefined ? [{ code: "no vapour pressure" }] : [],
  };
}
