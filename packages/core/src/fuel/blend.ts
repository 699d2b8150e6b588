import { InputError } from "../InputError.js";
import { blendCloudPoint } from "./blendCloudPoint.js";
import { blendVapourPressure } from "./blendVapourPressure.js";
import type { Fuel, FuelFamily, FuelProperty, TemperatureRange } from "./Fuel.js";
import type { MixingRule } from "./mixViscosity.js";
import { requireShares } from "./requireShares.js";

/** A part of a blend: a fuel and its share by volume at 15 degC, 0 to 1. */
export interface BlendPart {
  readonly fuel: Fuel;
  readonly share: number;
}

/**
 * A fuel blended from two or more by volume.
 *
 * Density by volume and mass, within 0.1 % of measured blends. Viscosity by the Grunberg-Nissan rule unless another is
 * chosen, within 2 % of measured ones. Cloud point of diesel with biodiesel by volume, a first estimate; of other blends
 * not known. Vapour pressure: ethanol lifts petrol's by the European table; otherwise the most volatile part's.
 * A part above a tenth narrows the range to its own; a smaller one only adds a caution: wrong by 8 %, as ethanol is at
 * 50 degC, a tenth moves the blend by 0.8 %.
 *
 * @param parts fuels and volume shares, adding up to 1
 * @param options name, and rule for viscosity
 * @throws InputError for fewer than two parts, shares that do not add up to 1, or parts whose ranges do not meet
 * @see Benjumea and others, Fuel 87 (2008) 2069 (rules for diesel with biodiesel)
 * @example
 * blend([{ fuel: fuels.dieselWinter, share: 0.8 }, { fuel: fuels.biodieselSoy, share: 0.2 }]).name
 * // "80 % winter diesel + 20 % soy biodiesel"
 */
export function blend(
  parts: readonly BlendPart[],
  options: { readonly name?: string; readonly rule?: MixingRule } = {},
): Fuel {
  if (!(parts.length >= 2)) throw new InputError("blend", "parts", "two fuels or more", parts);
  requireShares("blend", "parts", parts);
  const present = parts.filter(({ share }) => share > 0);
  const composition = compositionOf(present);
  const rule = options.rule ?? "Grunberg-Nissan";
  const vapour = blendVapourPressure(present, composition);
  const cloud = blendCloudPoint(present);
  return {
    name: options.name ?? present.map(({ fuel, share }) => `${percent(share)} % ${fuel.name}`).join(" + "),
    composition,
    density: { kind: "mixed", parts: present.map(({ fuel, share }) => ({ share, law: fuel.density })) },
    viscosity: { kind: "mixed", rule, parts: present.map(({ fuel, share }) => ({ share, law: fuel.viscosity })) },
    vapourPressure: vapour.law,
    ...cloud,
    ...rangeOf(present),
    status: "estimate",
    estimated: estimatedOf(present, composition, vapour.estimated, cloud.cloudPoint !== undefined),
    sources: [
      ...new Set([...present.flatMap(({ fuel }) => fuel.sources), `viscosity of the blend: ${rule} rule, by volume`]),
    ],
  };
}

/** A part of a tenth or less does not narrow the range; the reason stands at `blend`. */
const isMinor = ({ share }: BlendPart): boolean => share <= 0.1 + 1e-9;

function rangeOf(parts: readonly BlendPart[]): Pick<Fuel, "range" | "minorParts"> {
  const major = parts.filter((part) => !isMinor(part));
  const range = common(major.length > 0 ? major : parts);
  const minor = parts.filter(isMinor).map(({ fuel, share }) => ({ name: fuel.name, share, range: fuel.range }));
  const inherited = parts.flatMap(({ fuel, share }) =>
    (fuel.minorParts ?? []).map((part) => ({ ...part, share: part.share * share })),
  );
  const minorParts = [...minor, ...inherited];
  return minorParts.length > 0 ? { range, minorParts } : { range };
}

function common(parts: readonly BlendPart[]): TemperatureRange {
  const from = Math.max(...parts.map(({ fuel }) => fuel.range.from));
  const to = Math.min(...parts.map(({ fuel }) => fuel.range.to));
  if (!(from <= to)) {
    const ranges = parts.map(({ fuel }) => `${fuel.name} ${fuel.range.from} to ${fuel.range.to} K`).join(", ");
    throw new InputError("blend", "parts", "fuels with a common range of temperature", ranges);
  }
  return { from, to };
}

function compositionOf(parts: readonly BlendPart[]): Partial<Record<FuelFamily, number>> {
  const composition: Partial<Record<FuelFamily, number>> = {};
  for (const { fuel, share } of parts) {
    for (const [family, own] of Object.entries(fuel.composition) as [FuelFamily, number][]) {
      composition[family] = (composition[family] ?? 0) + share * own;
    }
  }
  return composition;
}

function estimatedOf(
  parts: readonly BlendPart[],
  composition: Fuel["composition"],
  vapourPressure: boolean,
  cloudPoint: boolean,
): FuelProperty[] {
  const properties = new Set(parts.flatMap(({ fuel }) => fuel.estimated));
  // Density goes by share, so a small part's matters little; a thick small part still counts for viscosity.
  const major = parts.filter((part) => !isMinor(part));
  if (!major.some(({ fuel }) => fuel.estimated.includes("density"))) properties.delete("density");
  // The rule was tried on hydrocarbons and biodiesel; alcohol associates, and oil is ten times as thick or more.
  if (composition.ethanol !== undefined || composition.oil !== undefined) properties.add("viscosity");
  // What the parts' own estimates were is beside the point: the blend's are worked out anew.
  properties.delete("cloud point");
  properties.delete("vapour pressure");
  if (cloudPoint) properties.add("cloud point");
  if (vapourPressure) properties.add("vapour pressure");
  return [...properties];
}

function percent(share: number): number {
  return Number((share * 100).toPrecision(4));
}
