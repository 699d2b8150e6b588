import type { DensityLaw } from "./densityAt.js";
import type { VapourPressureLaw } from "./vapourPressureAt.js";
import type { ViscosityLaw } from "./viscosityAt.js";

/** What a fuel is made of; each is handled differently in blends. */
export type FuelFamily = "diesel" | "kerosene" | "biodiesel" | "paraffinic" | "petrol" | "ethanol" | "oil";

/** Temperatures, K, from and to; both belong to the range. */
export interface TemperatureRange {
  readonly from: number;
  readonly to: number;
}

/** A property of a fuel that may be a first estimate only. */
export type FuelProperty = "density" | "viscosity" | "vapour pressure" | "cloud point";

/** A part of a blend, too small to narrow the blend's range, with the range its own data back. */
export interface MinorPart {
  readonly name: string;
  /** Volume share at 15 degC, 0 to 1. */
  readonly share: number;
  readonly range: TemperatureRange;
}

/**
 * A fuel: how its density, viscosity and vapour pressure follow temperature, and how far data back that.
 *
 * Plain data throughout, so it can be kept as JSON and sent to a worker. `fuels` holds the representative ones,
 * `fuelLike` makes one from measured values, `blend` one from others; `fuelState` says what it is at a temperature.
 */
export interface Fuel {
  readonly name: string;
  /** Volume shares of the families; they add up to 1. */
  readonly composition: Readonly<Partial<Record<FuelFamily, number>>>;
  readonly density: DensityLaw;
  readonly viscosity: ViscosityLaw;
  readonly vapourPressure: VapourPressureLaw;
  /** Where wax begins to show on cooling, K; left out when not known. */
  readonly cloudPoint?: number;
  /**
   * Highest cloud point published for its kind, K: above it there is no wax, even where the fuel's own cloud point is
   * not known or only typical.
   */
  readonly cloudPointLimit?: number;
  /** Cold filter plugging point, K; left out when not known. */
  readonly coldFilterPluggingPoint?: number;
  /** Temperatures at which data back the fuel, K. */
  readonly range: TemperatureRange;
  /** Range of the viscosity points the fuel was measured at, K, where `range` reaches further than they do. */
  readonly measured?: TemperatureRange;
  /** Parts whose own data end inside `range`. */
  readonly minorParts?: readonly MinorPart[];
  /**
   * How sure: "measured" on one sample, "representative" of published ranges, or "estimate" (rules and assumed figures).
   */
  readonly status: "measured" | "representative" | "estimate";
  /** Which properties are first estimates. */
  readonly estimated: readonly FuelProperty[];
  /** Where each figure comes from, and how it was checked. */
  readonly sources: readonly string[];
}
