import { InputError } from "../InputError.js";
import { requireAtLeast, requireMoreThan } from "../require.js";
import { d341LeastViscosity, zOf } from "./d341Z.js";
import { mm2PerSecond } from "./units.js";

/** A measured viscosity. */
export interface ViscosityPoint {
  /** K */
  readonly temperature: number;
  /** m2/s */
  readonly kinematicViscosity: number;
}

/** The straight line log10 log10 Z = a - b log10 T of ASTM D341, T in K, Z from viscosity in mm2/s. */
export interface D341Line {
  readonly a: number;
  readonly b: number;
}

/**
 * The D341 line through two measured viscosities. The slope b hardly differs between fuels of a kind, so it carries
 * a single measured point to other temperatures.
 *
 * @param first temperature, K, and kinematic viscosity, m2/s
 * @param second another temperature; the warmer point must be the thinner
 * @returns a and b, no unit
 * @throws InputError for a viscosity below 0.21 mm2/s, equal temperatures, or a fuel that thickens when warmed
 * @see ASTM D341-20, section 5
 * @example
 * d341Line({ temperature: 253.15, kinematicViscosity: 4.5e-6 }, { temperature: 313.15, kinematicViscosity: 1.31e-6 })
 * // { a: 9.495606…, b: 4.011308… }, Jet A
 */
export function d341Line(first: ViscosityPoint, second: ViscosityPoint): D341Line {
  requireViscosityPoint("d341Line", "first", first);
  requireViscosityPoint("d341Line", "second", second);
  requireThinnerWhenWarmer("d341Line", "second", first, second);
  return lineBetween(first, second);
}

/** The line through two points already checked. */
export function lineBetween(first: ViscosityPoint, second: ViscosityPoint): D341Line {
  const b =
    (doubleLog(first.kinematicViscosity) - doubleLog(second.kinematicViscosity)) /
    Math.log10(second.temperature / first.temperature);
  return { a: interceptOf(first, b), b };
}

/** The a of the line of slope b through a point. */
export function interceptOf(point: ViscosityPoint, b: number): number {
  return doubleLog(point.kinematicViscosity) + b * Math.log10(point.temperature);
}

/** Refuses a point without a real temperature, or thinner than the equation holds. */
export function requireViscosityPoint(caller: string, path: string, point: ViscosityPoint): void {
  requireMoreThan(caller, `${path}.temperature`, point.temperature, 0, "K");
  requireAtLeast(caller, `${path}.kinematicViscosity`, point.kinematicViscosity, d341LeastViscosity, "m2/s");
}

/** Refuses two points at one temperature, and a warmer one that is not thinner. */
export function requireThinnerWhenWarmer(
  caller: string,
  path: string,
  first: ViscosityPoint,
  second: ViscosityPoint,
): void {
  if (first.temperature === second.temperature) {
    throw new InputError(caller, `${path}.temperature`, `another than ${first.temperature} K`, second.temperature);
  }
  const warming = second.temperature > first.temperature;
  const thinner = second.kinematicViscosity < first.kinematicViscosity;
  if (warming !== thinner || second.kinematicViscosity === first.kinematicViscosity) {
    const bound = `${warming ? "less" : "more"} than ${first.kinematicViscosity} m2/s, fuel being thinner when warmer`;
    throw new InputError(caller, `${path}.kinematicViscosity`, bound, second.kinematicViscosity);
  }
}

function doubleLog(kinematicViscosity: number): number {
  return Math.log10(Math.log10(zOf(kinematicViscosity / mm2PerSecond)));
}
