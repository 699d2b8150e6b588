import { InputError } from "../InputError.js";
import { requireFinite, requireMoreThan } from "../require.js";
import type { ProductGroup } from "./ProductGroup.js";
import { requireShares } from "./requireShares.js";
import { fifteenCelsius } from "./units.js";
import { volumeCorrection } from "./volumeCorrection.js";

/** A measured density. */
export interface DensityPoint {
  /** K */
  readonly temperature: number;
  /** kg/m3 */
  readonly density: number;
}

/** How density follows temperature, as plain data. */
export type DensityLaw =
  /** Petroleum products: density at 15 degC, kg/m3, and the published volume correction. */
  | { readonly kind: "volume correction"; readonly densityAt15: number; readonly group?: ProductGroup }
  /** A straight line: density, kg/m3, at a temperature, K, and its slope, kg/m3 per K (below 0 for every fuel). */
  | {
      readonly kind: "linear";
      readonly temperature: number;
      readonly density: number;
      readonly slope: number;
    }
  /** Two measured points or more, in any order: straight between neighbours, the outer lines running on. */
  | { readonly kind: "points"; readonly points: readonly DensityPoint[] }
  /** A blend by volume at 15 degC: masses and volumes of the parts add up at every temperature. */
  | { readonly kind: "mixed"; readonly parts: readonly { readonly share: number; readonly law: DensityLaw }[] };

/**
 * Density by a law at a temperature.
 *
 * Measured diesels and jet fuels agree with the volume correction within 0.3 %; blends by volume within 0.1 %. Pressure
 * is left out: it adds less than 0.01 % per bar.
 *
 * @param law volume correction, straight line, measured points, or a mixture
 * @param temperature K
 * @returns density, kg/m3
 * @throws InputError for a temperature not above 0, a density not above 0, or points that are no law
 * @see API Standard 2540 / ASTM D1250-80, table 54B
 * @example
 * densityAt({ kind: "volume correction", densityAt15: 840 }, 313.15) // 822.173…
 */
export function densityAt(law: DensityLaw, temperature: number): number {
  requireMoreThan("densityAt", "temperature", temperature, 0, "K");
  const density = densityBy(law, temperature);
  if (!(density > 0)) {
    throw new InputError("densityAt", "temperature", "one at which the law gives a density above 0", temperature);
  }
  return density;
}

function densityBy(law: DensityLaw, temperature: number): number {
  switch (law.kind) {
    case "volume correction":
      return law.densityAt15 * volumeCorrection({ ...law, temperature });
    case "linear":
      requireMoreThan("densityAt", "law.temperature", law.temperature, 0, "K");
      requireMoreThan("densityAt", "law.density", law.density, 0, "kg/m3");
      requireFinite("densityAt", "law.slope", law.slope, "kg/m3 per K");
      return law.density + law.slope * (temperature - law.temperature);
    case "points":
      return between(law.points, temperature);
    case "mixed":
      return mixed(law.parts, temperature);
  }
}

function mixed(parts: readonly { readonly share: number; readonly law: DensityLaw }[], temperature: number): number {
  requireShares("densityAt", "parts", parts);
  let mass = 0;
  let volume = 0;
  for (const { share, law } of parts) {
    const massOfPart = share * densityAt(law, fifteenCelsius);
    mass += massOfPart;
    volume += massOfPart / densityAt(law, temperature);
  }
  return mass / volume;
}

function between(given: readonly DensityPoint[], temperature: number): number {
  const points = [...given].sort((left, right) => left.temperature - right.temperature);
  points.forEach((point, index) => {
    requireMoreThan("densityAt", `points[${index}].temperature`, point.temperature, 0, "K");
    requireMoreThan("densityAt", `points[${index}].density`, point.density, 0, "kg/m3");
    if (points[index - 1]?.temperature === point.temperature) {
      const other = `another than ${point.temperature} K`;
      throw new InputError("densityAt", `points[${index}].temperature`, other, point.temperature);
    }
  });
  const warmer = points.findIndex((point, index) => index > 0 && point.temperature >= temperature);
  const upper = warmer === -1 ? points.length - 1 : warmer;
  const [from, to] = [points[upper - 1], points[upper]];
  if (from === undefined || to === undefined) throw new InputError("densityAt", "points", "two points or more", given);
  const way = (temperature - from.temperature) / (to.temperature - from.temperature);
  return from.density + way * (to.density - from.density);
}
