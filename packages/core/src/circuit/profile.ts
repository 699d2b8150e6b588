import type { FuelState } from "../fuel/index.js";
import { type Regime, regimeOf } from "../parts/friction/index.js";
import type { Part } from "../parts/Part.js";
import type { BankStop, PartStop, Stop } from "./compile.js";

/** One part at a flow. */
export interface PartProfile {
  readonly kind: "part";
  readonly part: Part;
  /** where it stands: indexes into items and branches, outermost first */
  readonly path: readonly number[];
  /** m3/s */
  readonly flow: number;
  /** Pa, head included; negative where the path falls by more than friction costs; null where the part holds back */
  readonly drop: number | null;
  /** Reynolds number in its bore; null in a part without one */
  readonly reynolds: number | null;
  /** null in a part without a bore */
  readonly regime: Regime | null;
  /** mean velocity in its bore, m/s; null in a part without one */
  readonly velocity: number | null;
}

/** One bank at a flow. */
export interface BankProfile {
  readonly kind: "bank";
  readonly path: readonly number[];
  /** of all branches together, m3/s */
  readonly flow: number;
  /** Pa, the same along every branch that flows; null where all are shut */
  readonly drop: number | null;
  readonly branches: readonly (readonly ProfileEntry[])[];
}

/** What stands along a path at a flow, in order. */
export type ProfileEntry = PartProfile | BankProfile;

/** Every part of a compiled circuit at a flow, in the order the fuel meets them. */
export function profileOf(stops: readonly Stop[], fuel: FuelState, flow: number): ProfileEntry[] {
  return stops.map((stop) => (stop.kind === "bank" ? bankProfile(stop, fuel, flow) : partProfile(stop, fuel, flow)));
}

function bankProfile({ path, bank, head, branches }: BankStop, fuel: FuelState, flow: number): BankProfile {
  const flows = bank.flows(flow);
  const drop = finiteOrNull(head + bank.drop);
  return {
    kind: "bank",
    path,
    flow,
    drop,
    branches: branches.map((branch, at) => profileOf(branch, fuel, flows[at] ?? 0)),
  };
}

function partProfile({ part, path, run, holdsBack }: PartStop, fuel: FuelState, flow: number): PartProfile {
  const bore = boreOf(part);
  const throat = part.kind === "orifice" ? part.diameter : bore;
  const reynolds = throat === null ? null : (4 * Math.abs(flow)) / (Math.PI * throat * fuel.kinematicViscosity);
  return {
    kind: "part",
    part,
    path,
    flow,
    drop: holdsBack && flow === 0 ? null : finiteOrNull(run.at(flow)),
    reynolds,
    regime: reynolds === null || bore === null ? null : regimeOf(reynolds),
    velocity: bore === null ? null : flow / ((Math.PI / 4) * bore * bore),
  };
}

/** Bore in which the fuel leaves a part, m; null where none is stated. */
export function boreOf(part: Part): number | null {
  switch (part.kind) {
    case "line":
    case "fitting":
      return part.bore;
    case "filter":
    case "rise":
    case "valve":
    case "orifice":
    case "strainer":
      return null;
  }
}

function finiteOrNull(drop: number): number | null {
  return Number.isFinite(drop) ? drop : null;
}
