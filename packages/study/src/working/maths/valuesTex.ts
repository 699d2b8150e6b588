import type { Formula } from "../Formula.js";
import type { Input } from "../Step.js";
import { textOf } from "./evaluate.js";
import { letterTex, texOf } from "./formulaTex.js";
import { parseFormula } from "./parseFormula.js";

/**
 * A formula for a typesetter with values in place of its letters, without its result: what a letter goes over is written
 * out term by term.
 *
 * @param shown a value, SI, and its unit in TeX's mathematical notation
 * @example
 * valuesTex(reynolds, inputs, (value) => String(value)) // "\\frac{4 \\, \\left|(3e-05)\\right|}{\\pi \\, (0.008) \\, (6e-07)}"
 */
export function valuesTex(
  formula: Formula,
  inputs: readonly Input[],
  shown: (value: number, unit: string) => string,
): string {
  // In a plain sum or choice a value and its unit need no brackets to stay together.
  const alone = !/[*/^]/.test(formula.text);
  const values = new Map(
    inputs.flatMap(({ letter, steps, list }) =>
      steps.map(({ value, unit }, at) => {
        const text = shown(value, unit);
        return [list ? `${letter}_${at + 1}` : letter, alone && value >= 0 ? text : `\\left(${text}\\right)`] as const;
      }),
    ),
  );
  return texOf(parseFormula(textOf(formula, inputs)), 0, (letter) => values.get(letter) ?? letterTex(letter));
}
