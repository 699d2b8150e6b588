import { addPart, type Setting, Terms } from "../parts/law/index.js";
import { FREE_FALL } from "../parts/rise.js";
import { Bank } from "./Bank.js";
import type { Circuit, Parallel } from "./Circuit.js";
import { netRise } from "./netRise.js";
import { Run } from "./Run.js";

/** A circuit folded into a run, and the bank behind each of its parallels. */
export interface Compiled {
  readonly run: Run;
  readonly banks: ReadonlyMap<Parallel, Bank>;
}

/** Folds a circuit under one fuel state. */
export function compile(circuit: Circuit, setting: Setting): Compiled {
  const banks = new Map<Parallel, Bank>();
  const terms = new Terms();
  add(circuit, setting, terms, banks);
  return { run: new Run(terms), banks };
}

function add(circuit: Circuit, setting: Setting, terms: Terms, banks: Map<Parallel, Bank>): void {
  switch (circuit.kind) {
    case "series":
      for (const item of circuit.items) add(item, setting, terms, banks);
      break;
    case "parallel":
      addBank(circuit, setting, terms, banks);
      break;
    default:
      addPart(circuit, setting, terms);
  }
}

function addBank(bank: Parallel, setting: Setting, terms: Terms, banks: Map<Parallel, Bank>): void {
  const runs = bank.branches.map((branch) => {
    const inside = new Terms();
    add(branch, setting, inside, banks);
    return new Run(inside);
  });
  const law = new Bank(runs);
  banks.set(bank, law);
  terms.banks.push(law);
  terms.constant += setting.fuel.density * FREE_FALL * netRise(bank);
  terms.shut ||= law.shut;
}
