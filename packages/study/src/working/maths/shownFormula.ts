import type { Formula } from "../Formula.js";
import type { Input } from "../Step.js";
import { textOf } from "./evaluate.js";
import { greek } from "./greek.js";

/** Terms of a sum or choice that are written out before the rest is left to dots. */
const TERMS = 12;

/** A letter as a text shows it: "rho_15" is "ρ_15", "dp" is "Δp". */
export function shownLetter(letter: string): string {
  const [base = "", ...index] = letter.split("_");
  const shown = greek[base]?.text ?? (base === "dp" ? "Δp" : base);
  return [shown, ...index].join("_");
}

/** A formula as a text shows it: "128 · µ · L · Q / (π · D^4)". */
export function shownFormula({ text }: Pick<Formula, "text">): string {
  return withLetters(text, shownLetter);
}

/** The formula with values in place of its letters; of many terms the first few and the last. */
export function shownWithValues(
  formula: Formula,
  inputs: readonly Input[],
  shown: (value: number, unit: string) => string,
): string {
  const values = new Map(
    inputs.flatMap(({ letter, steps, list }) =>
      steps.map(({ value, unit }, at) => [list ? `${letter}_${at + 1}` : letter, shown(value, unit)] as const),
    ),
  );
  const most = Math.max(0, ...inputs.filter(({ list }) => list).map(({ steps }) => steps.length));
  const written = most > TERMS ? formula.text : textOf(formula, inputs);
  // In a plain sum or choice a value and its unit need no brackets to stay together.
  const alone = !/[*/^]/.test(formula.text);
  const put = withLetters(written, (letter) => {
    const value = values.get(letter);
    if (value === undefined)
      return values.has(`${letter}_1`)
        ? `(${shownLetter(letter)}_1 … ${shownLetter(letter)}_${most})`
        : shownLetter(letter);
    return /^[\d.]+$/.test(value) || (alone && !value.startsWith("-")) ? value : `(${value})`;
  });
  const single = put.replace(/\(\(([^()]*)\)\)/g, "($1)");
  // A sum over all is in brackets for what may stand around it; nothing does here.
  return formula.text.startsWith("sum(") && alone ? single.replace(/^\((.*)\)$/, "$1") : single;
}

const FUNCTIONS = new Set(["abs", "exp", "log", "log10", "max", "min", "sign", "sqrt", "sum"]);
const FUNCTION_TEXTS: Readonly<Record<string, string>> = { log: "ln" };

function withLetters(text: string, shown: (letter: string) => string): string {
  return text
    .replace(/(?<![\d.])[A-Za-z][A-Za-z0-9_]*/g, (word) =>
      FUNCTIONS.has(word) ? (FUNCTION_TEXTS[word] ?? word) : shown(word),
    )
    .replaceAll("*", "·");
}
