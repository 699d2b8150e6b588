import { addPart, type Setting, Terms } from "../parts/law/index.js";
import type { Part } from "../parts/Part.js";
import { FREE_FALL } from "../parts/rise.js";
import { Bank } from "./Bank.js";
import type { Circuit, Parallel } from "./Circuit.js";
import { netRise } from "./netRise.js";
import { Run } from "./Run.js";

/** A part of a folded circuit, by itself. */
export interface PartStop {
  readonly kind: "part";
  readonly part: Part;
  /** where it stands: indexes into items and branches, outermost first */
  readonly path: readonly number[];
  readonly run: Run;
  /** whether nothing passes it backwards, or at all */
  readonly holdsBack: boolean;
}

/** A bank of a folded circuit, by itself. */
export interface BankStop {
  readonly kind: "bank";
  readonly path: readonly number[];
  readonly bank: Bank;
  /** static head of every branch, Pa */
  readonly head: number;
  readonly branches: readonly (readonly Stop[])[];
}

/** What the fuel meets on its way, one after another. */
export type Stop = PartStop | BankStop;

/** A circuit under one fuel state: folded into a run for its total, and stop by stop for what happens on the way. */
export interface Compiled {
  readonly run: Run;
  /** what the run folds, for whoever puts more behind it */
  readonly terms: Terms;
  readonly stops: readonly Stop[];
}

/**
 * Sets the resistance over clean of the named filters in a compiled circuit; the others go back to their own. Cheaper by
 * far than folding again, for whoever follows elements as they fill.
 */
export function restrict(
  { run, stops }: Pick<Compiled, "run" | "stops">,
  restrictions: ReadonlyMap<string, number>,
): void {
  run.restrict(restrictions);
  restrictStops(stops, restrictions);
}

function restrictStops(stops: readonly Stop[], restrictions: ReadonlyMap<string, number>): void {
  for (const stop of stops) {
    if (stop.kind === "part") stop.run.restrict(restrictions);
    else for (const branch of stop.branches) restrictStops(branch, restrictions);
  }
}

/** Folds a circuit under one fuel state. */
export function compile(circuit: Circuit, setting: Setting): Compiled {
  const terms = new Terms();
  const stops = add(circuit, setting, terms, []);
  return { run: new Run(terms), terms, stops };
}

function add(circuit: Circuit, setting: Setting, terms: Terms, path: readonly number[]): Stop[] {
  switch (circuit.kind) {
    case "series":
      return circuit.items.flatMap((item, at) => add(item, setting, terms, [...path, at]));
    case "parallel":
      return [addBank(circuit, setting, terms, path)];
    default: {
      const own = new Terms();
      addPart(circuit, setting, own);
      terms.add(own);
      return [{ kind: "part", part: circuit, path, run: new Run(own), holdsBack: own.shut || own.oneWay }];
    }
  }
}

function addBank(circuit: Parallel, setting: Setting, terms: Terms, path: readonly number[]): BankStop {
  const inside = circuit.branches.map(() => new Terms());
  const branches = circuit.branches.map((branch, at) => add(branch, setting, inside[at] as Terms, [...path, at]));
  const bank = new Bank(inside.map((branch) => new Run(branch)));
  const head = setting.fuel.density * FREE_FALL * netRise(circuit);
  terms.banks.push(bank);
  terms.constant += head;
  terms.shut ||= bank.shut;
  terms.oneWay ||= bank.oneWay;
  return { kind: "bank", path, bank, head, branches };
}
