import { quantity, type UnitSystem, unitOf } from "@thirstline/study";
import type { Step } from "@thirstline/study/working";

/** Digits a value is put into a formula with. */
const DIGITS = 6;

/** A value in SI as it is put into a formula: six digits at most, and its unit. */
export function siText(value: number, unit: string): string {
  const rounded = Number(value.toPrecision(DIGITS));
  const size = Math.abs(rounded);
  const plain = size === 0 || (size >= 1e-3 && size < 1e7);
  const text = plain ? String(rounded) : rounded.toExponential().replace("e+", "e");
  return unit === "1" ? text : `${text} ${unit}`;
}

/** A value as the reader's units have it. */
export function readerText({ value, unit, kind }: Step, units: UnitSystem): string {
  return kind === null || kind === "plain" ? siText(value, unit) : quantity(value, kind, units);
}

/** A value in SI, and beside it as the reader's units have it where that says more. */
export function bothTexts(step: Step, units: UnitSystem): string {
  const { value, unit, kind } = step;
  const si = siText(value, unit);
  const same =
    kind === null || kind === "plain" || (unitOf(kind, units).size === 1 && unitOf(kind, units).zero === undefined);
  return same ? si : `${si} = ${quantity(value, kind, units)}`;
}
