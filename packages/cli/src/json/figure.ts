/** A figure as programs get it: an SI value, or null and why there is none. */
export type JsonFigure =
  | { readonly value: number; readonly unit: string }
  | { readonly value: null; readonly unit: string; readonly reason: string };

/**
 * A figure with its unit.
 *
 * @param value SI; null, NaN and Infinity become null
 * @param unit SI unit; "1" for a pure number
 * @param reason why there is none, should there be none
 */
export function figure(value: number | null, unit: string, reason: string): JsonFigure {
  return value !== null && Number.isFinite(value) ? { value, unit } : { value: null, unit, reason };
}
