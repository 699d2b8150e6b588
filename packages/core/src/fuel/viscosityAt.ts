import { InputError } from "../InputError.js";
import { requireFinite, requireMoreThan } from "../require.js";
import {
  type D341Line,
  interceptOf,
  lineBetween,
  requireThinnerWhenWarmer,
  requireViscosityPoint,
  type ViscosityPoint,
} from "./d341Line.js";
import { d341Viscosity } from "./d341Viscosity.js";
import { type MixingRule, mixViscosity } from "./mixViscosity.js";

/** How viscosity follows temperature, as plain data. */
export type ViscosityLaw =
  /** log10 log10 Z = a - b log10 T, T in K, Z from mm2/s, as published. */
  | { readonly kind: "D341"; readonly a: number; readonly b: number }
  /**
   * Measured points, in any order. One point needs the slope b of a like fuel; two give their D341 line; more are joined
   * by D341 lines, the outer ones running on.
   */
  | { readonly kind: "points"; readonly points: readonly ViscosityPoint[]; readonly slope?: number }
  /** A blend: the rule is applied to what the parts are at the temperature; shares by volume, adding up to 1. */
  | {
      readonly kind: "mixed";
      readonly rule: MixingRule;
      readonly parts: readonly { readonly share: number; readonly law: ViscosityLaw }[];
    };

/**
 * Kinematic viscosity by a law at a temperature, by ASTM D341 in full.
 *
 * D341 lines through two points of a fuel find a third within about 7 % over 60 K (narrow jet cuts within 0.2 to 7 %,
 * biodiesel within 3 %, except rapeseed, 11 % and more); see the accuracy tables. Wax below the cloud point thickens fuel beyond it.
 *
 * @param law D341 line, measured points, or a mixture
 * @param temperature K
 * @returns kinematic viscosity, m2/s
 * @throws InputError for a temperature not above 0, a point the equation cannot take, or a fuel that would not flow at all
 * @see ASTM D341-20, section 5
 * @example
 * viscosityAt({ kind: "D341", a: 9.495607, b: 4.011309 }, 273.15) // 2.671e-6, Jet A at 0 degC
 */
export function viscosityAt(law: ViscosityLaw, temperature: number): number {
  requireMoreThan("viscosityAt", "temperature", temperature, 0, "K");
  if (law.kind === "mixed") {
    const parts = law.parts.map((part) => ({
      share: part.share,
      kinematicViscosity: viscosityAt(part.law, temperature),
    }));
    return mixViscosity(parts, law.rule);
  }
  const line = law.kind === "points" ? lineOver(law.points, law.slope, temperature) : checked(law);
  const z = 10 ** (10 ** (line.a - line.b * Math.log10(temperature)));
  if (!(z < Infinity))
    throw new InputError("viscosityAt", "temperature", "one at which the fuel still flows", temperature);
  return d341Viscosity(z);
}

function checked(line: D341Line): D341Line {
  requireFinite("viscosityAt", "law.a", line.a);
  requireMoreThan("viscosityAt", "law.b", line.b, 0);
  return line;
}

function lineOver(given: readonly ViscosityPoint[], slope: number | undefined, temperature: number): D341Line {
  const points = [...given].sort((left, right) => left.temperature - right.temperature);
  points.forEach((point, index) => {
    requireViscosityPoint("viscosityAt", `points[${index}]`, point);
    const colder = points[index - 1];
    if (colder !== undefined) requireThinnerWhenWarmer("viscosityAt", `points[${index}]`, colder, point);
  });
  const [only] = points;
  if (only === undefined) throw new InputError("viscosityAt", "points", "one point or more", given);
  if (points.length === 1) {
    requireMoreThan("viscosityAt", "slope", slope ?? Number.NaN, 0);
    const b = slope ?? Number.NaN;
    return { a: interceptOf(only, b), b };
  }
  // The pair around the temperature; outside all points the nearest pair.
  const warmer = points.findIndex((point, index) => index > 0 && point.temperature >= temperature);
  const upper = warmer === -1 ? points.length - 1 : warmer;
  const [from, to] = [points[upper - 1], points[upper]];
  if (from === undefined || to === undefined)
    throw new InputError("viscosityAt", "points", "two points or more", given);
  return lineBetween(from, to);
}
