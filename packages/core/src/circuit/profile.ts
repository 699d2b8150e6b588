import { type Regime, regimeOf } from "../parts/friction/index.js";
import { addPart, type Setting, Terms } from "../parts/law/index.js";
import type { Part } from "../parts/Part.js";
import { FREE_FALL } from "../parts/rise.js";
import type { Bank } from "./Bank.js";
import type { Circuit, Parallel } from "./Circuit.js";
import type { Compiled } from "./compile.js";
import { netRise } from "./netRise.js";
import { Run } from "./Run.js";

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

/** Every part of a circuit at a flow, in the order the fuel meets them. */
export function profileOf(
  circuit: Circuit,
  compiled: Compiled,
  setting: Setting,
  flow: number,
  path: readonly number[] = [],
): ProfileEntry[] {
  switch (circuit.kind) {
    case "series":
      return circuit.items.flatMap((item, at) => profileOf(item, compiled, setting, flow, [...path, at]));
    case "parallel":
      return [bankProfile(circuit, compiled, setting, flow, path)];
    default:
      return [partProfile(circuit, setting, flow, path)];
  }
}

function bankProfile(
  circuit: Parallel,
  compiled: Compiled,
  setting: Setting,
  flow: number,
  path: readonly number[],
): BankProfile {
  const bank = compiled.banks.get(circuit) as Bank;
  const head = setting.fuel.density * FREE_FALL * netRise(circuit);
  const flows = bank.flows(flow);
  const branches = circuit.branches.map((branch, at) =>
    profileOf(branch, compiled, setting, flows[at] ?? 0, [...path, at]),
  );
  return { kind: "bank", path, flow, drop: finiteOrNull(head + bank.at(flow)), branches };
}

function partProfile(part: Part, setting: Setting, flow: number, path: readonly number[]): PartProfile {
  const terms = new Terms();
  addPart(part, setting, terms);
  const holdsBack = flow === 0 && (terms.shut || terms.oneWay);
  const drop = holdsBack ? null : finiteOrNull(new Run(terms).at(flow));
  const bore = boreOf(part);
  const throat = part.kind === "orifice" ? part.diameter : bore;
  const reynolds = throat === null ? null : (4 * Math.abs(flow)) / (Math.PI * throat * setting.fuel.kinematicViscosity);
  return {
    kind: "part",
    part,
    path,
    flow,
    drop,
    reynolds,
    regime: reynolds === null || bore === null ? null : regimeOf(reynolds),
    velocity: bore === null ? null : flow / ((Math.PI / 4) * bore * bore),
  };
}

/** Bore in which the fuel leaves a part, m; null where none is stated. */
function boreOf(part: Part): number | null {
  return part.kind === "line" || part.kind === "fitting" ? part.bore : null;
}

function finiteOrNull(drop: number): number | null {
  return Number.isFinite(drop) ? drop : null;
}
