import type { UnitSystem } from "@thirstline/study";
import {
  type Check,
  type Input,
  type Origin,
  type Step,
  shownFormula,
  shownLetter,
  shownWithValues,
} from "@thirstline/study/working";
import { hung } from "./hung.js";
import { inputLetter, originText } from "./originText.js";
import { bothTexts, siText } from "./siText.js";
import { widthOf, wrap } from "./wrap.js";

const LETTER = 8;

/** One step as lines: how it was reached, and what it was reached from. */
export function stepText(step: Step, units: UnitSystem): string[] {
  const { origin } = step;
  const result = hung("  ", `${step.name} = ${bothTexts(step, units)}`);
  switch (origin.by) {
    case "formula":
      return formulaLines(step, origin, units);
    case "search":
      return [
        ...result,
        ...hung("  ", sentence(origin.words)),
        ...origin.checks.flatMap((one) => checkLines(one, units)),
      ];
    case "draws":
      return [
        ...result,
        ...hung("  ", sentence(origin.words)),
        ...origin.varying.flatMap((one) => hung("    varies: ", one)),
      ];
    case "words":
      return [
        ...result,
        ...hung("  ", sentence(origin.words)),
        ...origin.from.flatMap((one) => inputLines("", one, units)),
      ];
    default:
      return [...result, ...hung("  ", originText(step))];
  }
}

function formulaLines(
  step: Step,
  { formula, inputs }: Extract<Origin, { by: "formula" }>,
  units: UnitSystem,
): string[] {
  const head = `  ${shownLetter(formula.result.letter)} = `;
  const below = `${" ".repeat(widthOf(head) - 2)}= `;
  return [
    ...wrap(formula.name),
    "",
    ...hung(head, shownFormula(formula)),
    ...hung(below, shownWithValues(formula, inputs, siText)),
    ...hung(below, bothTexts(step, units)),
    "",
    ...inputs.flatMap((input) => lettersOf(input, units)),
    "",
    ...hung("  Holds for: ", `${formula.holds}.`),
    ...hung("  Accuracy:  ", `${formula.accuracy}.`),
    ...hung("  Source:    ", `${formula.source}.`),
  ];
}

function lettersOf({ letter, steps, list }: Input, units: UnitSystem): string[] {
  return steps.flatMap((one, at) => inputLines(inputLetter(letter, list, at), one, units));
}

function inputLines(letter: string, step: Step, units: UnitSystem): string[] {
  const indent = " ".repeat(LETTER + 2);
  return [
    ...hung(`  ${letter.padEnd(LETTER - 1)} `, `${step.name}, ${bothTexts(step, units)}`),
    ...hung(`${indent}  `, originText(step)),
  ];
}

function checkLines({ words, left, relation, right }: Check, units: UnitSystem): string[] {
  const sign = { "=": "=", "<=": "≤", ">=": "≥" }[relation];
  return ["", ...hung("  ", sentence(words)), ...inputLines("", left, units), ...inputLines(sign, right, units)];
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
