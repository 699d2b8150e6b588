import type { Band } from "@thirstline/study";
import { figure, type JsonFigure } from "./figure.js";

/** A band with its unit; where there is none at all, a figure that says why. */
export function band(given: Band | null, unit: string, reason: string) {
  if (given === null) return figure(null, unit, reason);
  const end = (value: number): JsonFigure => figure(value, unit, reason);
  return { low: end(given.low), middle: end(given.middle), high: end(given.high) };
}
