import type { Fuel, FuelFamily } from "./Fuel.js";

type Part = { readonly fuel: Fuel; readonly share: number };

/**
 * Cloud point of a blend, and the highest it can be.
 *
 * Diesel and biodiesel whose cloud points are known: by volume, a first estimate (Benjumea and others, Fuel 87 (2008)
 * 2069). Any other blend's is not known, but lies at or below the highest of its parts'.
 */
export function blendCloudPoint(parts: readonly Part[]): Pick<Fuel, "cloudPoint" | "cloudPointLimit"> {
  const limitOf = ({ cloudPoint, cloudPointLimit }: Fuel) => cloudPointLimit ?? cloudPoint;
  const limits = parts.flatMap(({ fuel }) => limitOf(fuel) ?? []);
  if (limits.length === 0) return {};
  if (!parts.every(({ fuel }) => ruleHoldsFor(fuel))) return { cloudPointLimit: Math.max(...limits) };
  const cloudPoint = byVolume(parts, ({ cloudPoint }) => cloudPoint);
  const cloudPointLimit = byVolume(parts, limitOf) ?? Math.max(...limits);
  return cloudPoint === undefined ? { cloudPointLimit } : { cloudPoint, cloudPointLimit };
}

function byVolume(parts: readonly Part[], read: (fuel: Fuel) => number | undefined): number | undefined {
  let sum = 0;
  for (const { fuel, share } of parts) {
    const value = read(fuel);
    if (value === undefined) return undefined;
    sum += share * value;
  }
  return sum;
}

function ruleHoldsFor(fuel: Fuel): boolean {
  const families = Object.keys(fuel.composition) as FuelFamily[];
  return families.every((family) => family === "diesel" || family === "biodiesel");
}
