import { InputError } from "../InputError.js";
import { requireMoreThan } from "../require.js";
import { lineBetween, type ViscosityPoint } from "./d341Line.js";
import { type DensityLaw, type DensityPoint, densityAt } from "./densityAt.js";
import type { Fuel, FuelProperty, TemperatureRange } from "./Fuel.js";
import { type ViscosityLaw, viscosityAt } from "./viscosityAt.js";
import { volumeCorrection } from "./volumeCorrection.js";

/** What was measured of a fuel; the rest is taken from the fuel it is like. */
export interface MeasuredFuel {
  readonly name?: string;
  /** One point or more; with one, the slope of the like fuel carries it to other temperatures. */
  readonly viscosity?: readonly ViscosityPoint[];
  /** One point or more; with one, it expands as the like fuel does. */
  readonly density?: readonly DensityPoint[];
  /** K */
  readonly cloudPoint?: number;
  /** K */
  readonly coldFilterPluggingPoint?: number;
  /** Reid vapour pressure, Pa, of the fuel as it is, ethanol and all. */
  readonly reid?: number;
}

/**
 * A fuel like another, with measured values of its own in place of the representative ones.
 *
 * Inside the range of the like fuel, and wherever viscosity was measured, the figures count as backed by data; beyond
 * the measured points a caution says so, for there a D341 line from two points may miss by about 7 % in 20 K.
 *
 * @param like the fuel it resembles
 * @param measured what is known of it
 * @throws InputError for points no fuel could have, or an empty list
 * @see ASTM D341-20
 * @example
 * fuelLike(fuels.dieselWinter, { viscosity: [{ temperature: 313.15, kinematicViscosity: 2.6e-6 }], cloudPoint: 257.15 })
 */
export function fuelLike(like: Fuel, measured: MeasuredFuel): Fuel {
  const { viscosity, density, cloudPoint, coldFilterPluggingPoint, reid } = measured;
  if (cloudPoint !== undefined) requireMoreThan("fuelLike", "cloudPoint", cloudPoint, 0, "K");
  if (coldFilterPluggingPoint !== undefined) {
    requireMoreThan("fuelLike", "coldFilterPluggingPoint", coldFilterPluggingPoint, 0, "K");
  }
  if (reid !== undefined) requireMoreThan("fuelLike", "reid", reid, 0, "Pa");
  const known = new Set<FuelProperty>();
  if (viscosity !== undefined) known.add("viscosity");
  if (density !== undefined) known.add("density");
  if (cloudPoint !== undefined) known.add("cloud point");
  if (reid !== undefined) known.add("vapour pressure");
  // A plugging point belongs to the fuel it was measured on: with a new cloud point the old one no longer counts.
  const { coldFilterPluggingPoint: ofLike, ...rest } = like;
  const plugging = coldFilterPluggingPoint ?? (cloudPoint === undefined ? ofLike : undefined);
  return {
    ...rest,
    name: measured.name ?? like.name,
    ...(viscosity === undefined ? {} : { viscosity: viscosityOf(like, viscosity), ...rangeOf(like.range, viscosity) }),
    ...(density === undefined ? {} : { density: densityOf(like.density, density) }),
    ...(cloudPoint === undefined ? {} : { cloudPoint }),
    ...(plugging === undefined ? {} : { coldFilterPluggingPoint: plugging }),
    ...(reid === undefined ? {} : { vapourPressure: { kind: "Reid", reid, slope: 3 } }),
    status: "measured",
    estimated: like.estimated.filter((property) => !known.has(property)),
    sources: [...like.sources, `stated by the user: ${[...known].join(", ") || "nothing"}; the rest as ${like.name}`],
  };
}

function viscosityOf(like: Fuel, points: readonly ViscosityPoint[]): ViscosityLaw {
  const [first] = points;
  if (first === undefined) throw new InputError("fuelLike", "viscosity", "one point or more", points);
  const own: ViscosityLaw =
    points.length > 1 ? { kind: "points", points } : { kind: "points", points, slope: slopeOf(like, first) };
  // Taken once here, so that impossible points are refused now and not at the first temperature asked for.
  viscosityAt(own, first.temperature);
  return own;
}

/** Slope b of a fuel's D341 line about a point; over 20 K, for a blend's line bends slightly. */
function slopeOf(like: Fuel, { temperature }: ViscosityPoint): number {
  requireMoreThan("fuelLike", "viscosity[0].temperature", temperature, 10, "K");
  const at = (kelvin: number) => ({ temperature: kelvin, kinematicViscosity: viscosityAt(like.viscosity, kelvin) });
  return lineBetween(at(temperature - 10), at(temperature + 10)).b;
}

function rangeOf(range: TemperatureRange, points: readonly ViscosityPoint[]): Pick<Fuel, "range" | "measured"> {
  const temperatures = points.map(({ temperature }) => temperature);
  const measured = { from: Math.min(...temperatures), to: Math.max(...temperatures) };
  const both = { from: Math.min(range.from, measured.from), to: Math.max(range.to, measured.to) };
  // One point has a published slope behind it; it is not "beyond" anything.
  return points.length > 1 ? { range: both, measured } : { range: both };
}

function densityOf(like: DensityLaw, points: readonly DensityPoint[]): DensityLaw {
  const [first] = points;
  if (first === undefined) throw new InputError("fuelLike", "density", "one point or more", points);
  const { temperature, density } = first;
  if (points.length > 1) {
    densityAt({ kind: "points", points }, temperature); // refuses impossible points now
    return { kind: "points", points };
  }
  requireMoreThan("fuelLike", "density[0].temperature", temperature, 10, "K");
  requireMoreThan("fuelLike", "density[0].density", density, 0, "kg/m3");
  if (like.kind === "volume correction") {
    // Density at 15 degC whose corrected value is the measured one; each round gains two figures or more.
    let densityAt15 = density;
    for (let round = 0; round < 30; round++) densityAt15 = density / volumeCorrection({ densityAt15, temperature });
    return { kind: "volume correction", densityAt15 };
  }
  const slope = (densityAt(like, temperature + 10) - densityAt(like, temperature - 10)) / 20;
  return { kind: "linear", temperature, density, slope: (slope * density) / densityAt(like, temperature) };
}
