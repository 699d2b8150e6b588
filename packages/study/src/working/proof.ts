import { evaluateWithUnits } from "./maths/evaluate.js";
import type { Check, Step, Working } from "./Step.js";

/** A step, or a check of one, that does not come out. */
export interface Miss {
  readonly name: string;
  readonly why: string;
  /** relative; Infinity where units fail */
  readonly by: number;
}

/** What working everything out anew, units and all, came to. */
export interface Proof {
  /** how many formulas were evaluated, and how many checks of searches compared */
  readonly formulas: number;
  readonly checks: number;
  /** largest disagreement, relative */
  readonly largest: number;
  readonly misses: readonly Miss[];
}

/** Steps must agree with their formulas, and searches with their equations, this closely. */
export const AGREEMENT = 1e-9;

/**
 * Works every formula of a working out anew with mathjs, units and all, and compares with the figures the answer has; and
 * compares both sides of every equation a search must satisfy.
 */
export function proofOf({ step }: Pick<Working, "step">): Proof {
  const seen = new Set<Step>();
  const misses: Miss[] = [];
  const tally = { formulas: 0, checks: 0, largest: 0 };
  const note = (name: string, why: string, by: number, within = AGREEMENT): void => {
    if (within === AGREEMENT) tally.largest = Math.max(tally.largest, by);
    // Turned round, so that what is no number misses too.
    if (!(by <= within)) misses.push({ name, why, by });
  };
  const visit = (one: Step): void => {
    if (seen.has(one)) return;
    seen.add(one);
    const { origin } = one;
    if (origin.by === "formula") {
      tally.formulas++;
      note(one.name, origin.formula.id, missOf(one));
    }
    if (origin.by === "search") {
      for (const check of origin.checks) {
        tally.checks++;
        note(one.name, check.words, sidesMiss(check), check.within);
      }
    }
    for (const before of stepsBefore(one)) visit(before);
  };
  visit(step);
  return { ...tally, misses };
}

/** The steps a step rests on. */
export function stepsBefore({ origin }: Step): readonly Step[] {
  switch (origin.by) {
    case "formula":
      return origin.inputs.flatMap(({ steps }) => steps);
    case "words":
    case "draws":
      return origin.from;
    case "search":
      return origin.checks.flatMap(({ left, right }) => [left, right]);
    default:
      return [];
  }
}

/** How far a step lies from its formula, over the largest of what goes into it where it is a difference. */
function missOf(step: Step): number {
  if (step.origin.by !== "formula") return 0;
  const { formula, inputs } = step.origin;
  let found: number;
  try {
    found = evaluateWithUnits(formula, inputs);
  } catch {
    return Infinity;
  }
  if (found === step.value) return 0;
  const alike = inputs.flatMap(({ steps }) => steps.filter(({ unit }) => unit === step.unit));
  const scale = Math.max(Math.abs(step.value), step.scale ?? 0, ...alike.map(({ value }) => Math.abs(value)));
  return Math.abs(found - step.value) / (scale === 0 ? Number.MIN_VALUE : scale);
}

function sidesMiss({ left, relation, right, scale: own = 0 }: Check): number {
  const over = left.value - right.value;
  const scale = Math.max(Math.abs(left.value), Math.abs(right.value), own);
  if (over === 0 || (relation === "<=" && over <= 0) || (relation === ">=" && over >= 0)) return 0;
  return Math.abs(over) / scale;
}
