import { type CombinedLawName, lawConstants, type SingleLawName } from "@thirstline/core";
import { MOST, type Shape, STEPS } from "../../gauge/shapes.js";
import * as formulas from "../formulas/gauge.js";
import * as laws from "../formulas/gaugeLaws.js";
import { lettersOf } from "../life/lettersOf.js";
import type { Step } from "../Step.js";
import { fromSource, inWords, searched, worked } from "../worked.js";

const plain = (name: string, value: number) => ({ name, value, unit: "1", kind: "plain" }) as const;
const CHOICE = "common practice, no source";

const most = fromSource(CHOICE, plain("most resistance over clean that is followed", MOST));
const steps = fromSource(CHOICE, plain("steps of the table", STEPS));
const h = worked(formulas.lawStep, { M: most, n: steps });
const four = inWords("a load of 1 is so chosen", plain("resistance over clean at a load of 1", 4));
const one = inWords("a load of 1 is so chosen", plain("load", 1));

/** Nodes of tables, by their place. */
const kept = new WeakMap<Shape, Map<number, Step>>();

/** Load at which a law comes to a resistance, as its table has it. */
export function loadStep(shape: Shape, r: Step): Step {
  if (!(r.value > 1)) return inWords("a clean element carries none", plain("load", 0), [r]);
  const k = Math.min(STEPS - 1, Math.floor(Math.log(Math.min(MOST, r.value)) / h.value));
  if (r.value > MOST) return inWords("the end of the table", plain("load", shape.load(r.value)), [r]);
  return worked(formulas.loadBetween, { h, k: numbered(k), a: node(shape, k), b: node(shape, k + 1), r });
}

/** Resistance over clean at a load, as the table has it. */
export function ratioStep(shape: Shape, l: Step, name = "resistance over clean"): Step {
  if (!(l.value > 0)) return inWords("no soil is on it yet", plain(name, 1), [l]);
  const value = shape.ratio(l.value);
  if (value >= MOST) return inWords("the end of the table", plain(name, MOST), [l]);
  let k = Math.min(STEPS - 1, Math.floor(Math.log(value) / h.value));
  if (node(shape, k).value > l.value) k--;
  return worked(formulas.ratioBetween, { h, k: numbered(k), a: node(shape, k), b: node(shape, k + 1), l }, { name });
}

function numbered(value: number): Step {
  return inWords("counted: the step of the table just below", plain("number of the step", value));
}

/** Load at a step of the table: what the law itself says. */
function node(shape: Shape, at: number): Step {
  const nodes = kept.get(shape) ?? new Map<number, Step>();
  kept.set(shape, nodes);
  const known = nodes.get(at);
  if (known) return known;
  const right = worked(formulas.lawNode, { h, k: inWords("counted", plain("number of the step", at)) });
  const shown = plain(`load at step ${at} of the table`, shape.load(Math.exp(at * (Math.log(MOST) / STEPS))));
  const left = ratioByLaw(shape, inWords("as found", shown));
  const made = searched("the load at which the law itself comes to the resistance of that step", shown, [
    { words: "at that load the law comes to that resistance", left, relation: "=", right },
  ]);
  nodes.set(at, made);
  return made;
}

function ratioByLaw({ law, mix }: Shape, m: Step): Step {
  if (law === "none") return inWords("no growth", plain("resistance over clean", 1), [m]);
  const [first, second] = lawConstants[law];
  if (second === undefined && first !== undefined) {
    return worked(laws.loadRatios[first], { K: full(first), m });
  }
  const x = inWords("one of the mixes tried", plain("part of the second constant", mix ?? 0));
  const constant = (which: SingleLawName) =>
    worked(which === second ? laws.secondOfMix : laws.firstOfMix, { x, K: full(which) });
  const [A, B] = lettersOf(law as CombinedLawName);
  return worked(laws.loadPairRatios[law as CombinedLawName], { A: constant(A), B: constant(B), m });
}

function full(which: SingleLawName): Step {
  return worked(laws.fullConstants[which], { r: four, m: one });
}
