import type { BankProfile, PartProfile, ProfileEntry } from "../circuit/index.js";
import { boreOf } from "../circuit/profile.js";
import type { FuelState } from "../fuel/index.js";

/** A part, and the absolute pressure behind it. */
export interface PartDescent {
  readonly kind: "part";
  readonly profile: PartProfile;
  /** behind the part, as a gauge reads it at its own height, Pa absolute; null where nothing passes */
  readonly pressure: number | null;
  /** the same with the kinetic part, Pa absolute */
  readonly total: number | null;
}

/** A bank, its branches, and the absolute pressure where they have joined. */
export interface BankDescent {
  readonly kind: "bank";
  readonly profile: BankProfile;
  readonly branches: readonly (readonly DescentEntry[])[];
  readonly pressure: number | null;
  readonly total: number | null;
}

/** The pressure along a path, part by part. */
export type DescentEntry = PartDescent | BankDescent;

/** A low point of a descent. */
export interface LowPoint {
  /** static, Pa absolute */
  readonly pressure: number;
  /** the part behind which it stands; null at a pick-up or a joint */
  readonly after: PartProfile | null;
}

/** Where a descent starts or ends: total pressure, Pa absolute, and the last bore met, m; null where not known. */
export interface DescentEnd {
  readonly total: number | null;
  readonly bore: number | null;
}

/** Kinetic factor of laminar flow, taken everywhere: the safe side, and it keeps ceilings monotone. */
export const KINETIC_FACTOR = 2;

/**
 * Kinetic pressure of a flow, Pa: 2 density velocity^2 / 2 in the bore it runs in; 0 where no bore is known.
 *
 * @see White, Fluid Mechanics (7th ed. 2011), section 6.9, for the kinetic factor 2 of laminar flow (from memory)
 */
export function kineticPressure(flow: number, bore: number | null, fuel: FuelState): number {
  return kineticTerm(bore, fuel) * flow * flow;
}

/** The same over the square of the flow, Pa s2/m6. */
export function kineticTerm(bore: number | null, fuel: FuelState): number {
  if (bore === null) return 0;
  const area = (Math.PI / 4) * bore * bore;
  return (KINETIC_FACTOR * fuel.density) / (2 * area * area);
}

/** The absolute pressure along a path whose parts' drops are known, and where it ends. */
export function descend(
  entries: readonly ProfileEntry[],
  start: DescentEnd,
  fuel: FuelState,
): { readonly entries: DescentEntry[]; readonly end: DescentEnd } {
  let { total, bore } = start;
  const described = entries.map((profile): DescentEntry => {
    const before = { total, bore };
    total = before.total === null || profile.drop === null ? null : before.total - profile.drop;
    if (profile.kind === "bank") {
      const branches = profile.branches.map((branch) => descend(branch, before, fuel).entries);
      return { kind: "bank", profile, branches, total, pressure: staticOf(total, profile.flow, bore, fuel) };
    }
    bore = boreOf(profile.part) ?? bore;
    return { kind: "part", profile, total, pressure: staticOf(total, profile.flow, bore, fuel) };
  });
  return { entries: described, end: { total, bore } };
}

function staticOf(total: number | null, flow: number, bore: number | null, fuel: FuelState): number | null {
  return total === null ? null : total - kineticPressure(flow, bore, fuel);
}

/** The lowest pressure of a descent and the part behind which it stands; null when nothing passes anywhere. */
export function lowestOf(entries: readonly DescentEntry[]): LowPoint | null {
  let lowest: LowPoint | null = null;
  const consider = (point: LowPoint | null) => {
    if (point && (lowest === null || point.pressure < lowest.pressure)) lowest = point;
  };
  for (const entry of entries) {
    if (entry.pressure !== null) {
      consider({ pressure: entry.pressure, after: entry.kind === "part" ? entry.profile : null });
    }
    if (entry.kind === "bank") entry.branches.map(lowestOf).forEach(consider);
  }
  return lowest;
}
