import type { Formula } from "../Formula.js";
import type { Input } from "../Step.js";
import { expanded, type ListSizes } from "./expanded.js";
import { maths, type UnitValue } from "./mathjs.js";
import { parseFormula } from "./parseFormula.js";
import { unitText } from "./unitText.js";

/** A formula's text with what it goes over written out. */
export function textOf(formula: Formula, inputs: readonly Input[]): string {
  const sizes: ListSizes = Object.fromEntries(
    inputs.filter(({ list }) => list).map(({ letter, steps }) => [letter, steps.length]),
  );
  return expanded(formula.text, sizes);
}

/** What a formula comes to, SI, in plain numbers. */
export function evaluatePlain(formula: Formula, inputs: readonly Input[]): number {
  const scope = scopeOf(inputs, (value) => value);
  return Number(parseFormula(textOf(formula, inputs)).compile().evaluate(scope));
}

/**
 * What a formula comes to, SI, with every value carried with its unit.
 *
 * @throws Error where units do not go together, or the result has another unit than the formula states
 */
export function evaluateWithUnits(formula: Formula, inputs: readonly Input[]): number {
  const scope = scopeOf(inputs, (value, unit) => (isPure(unit) ? value : new maths.Unit(value, unitText(unit))));
  const found = parseFormula(textOf(formula, inputs)).compile().evaluate(scope);
  const { unit } = formula.result;
  if (typeof found === "number") {
    if (isPure(unit)) return found;
    throw new Error(`${formula.id} comes to a pure number, not to ${unit}`);
  }
  if (isPure(unit)) throw new Error(`${formula.id} comes to ${String(found)}, not to a pure number`);
  return (found as UnitValue).toNumber(unitText(unit));
}

function scopeOf(inputs: readonly Input[], put: (value: number, unit: string) => unknown): Map<string, unknown> {
  return new Map(
    inputs.flatMap(({ letter, steps, list }) =>
      steps.map(({ value, unit }, at) => [list ? `${letter}_${at + 1}` : letter, put(value, unit)] as const),
    ),
  );
}

/** Running time over time is a pure number to the parser, whatever an answer calls it. */
function isPure(unit: string): boolean {
  return unit === "1" || unit === "s/s";
}
