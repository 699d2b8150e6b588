import { type QuantityKind, type UnitSystem, unitOf } from "./units.js";

/** Digits an input is shown with: as many as anybody states. */
const DIGITS = 5;

/**
 * A quantity as a box to type in holds it: all the digits it was stated with, to five digits.
 *
 * @param value SI
 * @example
 * exactQuantity(0.0127, "bore", "us") // "0.5 in"
 */
export function exactQuantity(value: number, kind: QuantityKind, system: UnitSystem): string {
  const { symbol, size, zero = 0 } = unitOf(kind, system);
  // Rounded to a billionth of the largest term first: 15 °C is 288.15 K less 273.15 K, short of 15 by a rounding.
  const grain = 1e-9 * Math.max(1, Math.abs(zero / size));
  const shown = zero === 0 ? value / size : Math.round((value / size - zero / size) / grain) * grain;
  const text = String(Number(shown.toPrecision(DIGITS)));
  return symbol === "" ? text : `${text} ${symbol}`;
}
