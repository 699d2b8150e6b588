import { type Check, type FigureListed, formulaTex, proofOf, type Step, type Working } from "@thirstline/study/working";
import { figure } from "./figure.js";

/** Which question a figure is of, and what of its answer; nothing where it is one of `check`, `curve` or `life`. */
export interface WhyOf {
  readonly of?: string;
  readonly subject?: string;
}

/** A working for programs: every figure in SI with its unit, every step with what it rests on, so many steps down. */
export function whyJson({ figure: name, system, step }: Working, depth: number, of: WhyOf = {}) {
  const { formulas, checks, largest } = proofOf({ step });
  return {
    question: "why",
    ...of,
    system,
    figure: name,
    step: stepJson(step, depth),
    proof: { formulas: count(formulas), checks: count(checks), largest: count(largest) },
  };
}

/** Every figure that can be asked for; those that take long without a value. */
export function whyListJson(system: string, list: readonly FigureListed[], of: WhyOf = {}) {
  return {
    question: "why",
    ...of,
    system,
    figures: list.map(({ name, group, step }) => ({
      name,
      group,
      figure: step && figure(step.value, step.unit, "not known"),
    })),
  };
}

function count(value: number) {
  return figure(value, "1", "not known");
}

function stepJson(step: Step, depth: number): object {
  const { name, value, unit, origin, part } = step;
  const own = {
    name,
    figure: figure(value, unit, "not known"),
    ...(part === undefined ? {} : { part: part.join(".") }),
  };
  if (depth === 0) return { ...own, by: origin.by };
  const below = (one: Step) => stepJson(one, depth - 1);
  switch (origin.by) {
    case "formula": {
      const { formula, inputs } = origin;
      return {
        ...own,
        by: origin.by,
        formula: {
          id: formula.id,
          name: formula.name,
          text: formula.text,
          tex: formulaTex(formula),
          holds: formula.holds,
          accuracy: formula.accuracy,
          source: formula.source,
        },
        inputs: inputs.map(({ letter, steps }) => ({
          letter,
          meaning: formula.symbols[letter]?.meaning ?? letter,
          steps: steps.map(below),
        })),
      };
    }
    case "search":
      return {
        ...own,
        by: origin.by,
        words: origin.words,
        checks: origin.checks.map((one) => checkJson(one, depth - 1)),
      };
    case "words":
      return { ...own, by: origin.by, words: origin.words, from: origin.from.map(below) };
    case "draws":
      return { ...own, by: origin.by, words: origin.words, varying: origin.varying };
    default:
      return { ...own, ...origin };
  }
}

function checkJson({ words, left, relation, right }: Check, depth: number) {
  return { words, left: stepJson(left, depth), relation, right: stepJson(right, depth) };
}
