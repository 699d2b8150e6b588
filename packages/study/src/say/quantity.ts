import { type QuantityKind, type UnitSystem, unitOf } from "./units.js";

/**
 * A figure as people read it: three significant digits at most, the unit after it, "none" for what does not exist.
 *
 * @param value SI
 * @param kind what it is
 * @param system which units
 * @example
 * quantity(20300, "vacuum", "us") // "6.0 inHg"
 */
export function quantity(value: number, kind: QuantityKind, system: UnitSystem): string {
  const { symbol } = unitOf(kind, system);
  const text = figure(value, kind, system);
  return symbol === "" || !Number.isFinite(value) ? text : `${text} ${symbol}`;
}

/** The figure alone, in the unit `unitOf` names. */
export function figure(value: number, kind: QuantityKind, system: UnitSystem): string {
  if (value === Infinity && (kind === "flow" || kind === "ratio")) return "no limit";
  if (!Number.isFinite(value)) return "none";
  const { size, zero = 0 } = unitOf(kind, system);
  return rounded(value / size - zero / size, kind);
}

function rounded(shown: number, kind: QuantityKind): string {
  const decimals = decimalsOf(Math.abs(shown), kind);
  const text = shown.toFixed(decimals);
  return Number(text) === 0 ? text.replace("-", "") : text;
}

/** As many decimals as leave three digits, no more than the kind is known to. */
function decimalsOf(size: number, kind: QuantityKind): number {
  if (kind === "ratio" || kind === "altitude" || kind === "distance") return 0;
  if (kind === "running time" || kind === "volume" || kind === "small volume") return size < 9.95 ? 1 : 0;
  if (kind === "temperature") return Math.abs(size - Math.round(size)) < 0.05 ? 0 : 1;
  if (size >= 99.95) return 0;
  if (size >= 9.995 || kind === "vacuum" || kind === "pressure" || kind === "absolute pressure") return 1;
  return 2;
}
