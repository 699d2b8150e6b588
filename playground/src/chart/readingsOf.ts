import type { ChartData } from "./ChartData.js";
import { figureOf, figureWith } from "./figureOf.js";
import type { Reading } from "./Reading.js";

/** What a chart reads at a place among its figures, or at rest; clean first. A band is read at both ends at the pointer. */
export function readingsOf({ x, y, lines, dot }: ChartData, pointer: number | null): Reading[] {
  const there = pointer === null ? (dot?.x ?? null) : (x.values[pointer] ?? null);
  const read = lines.map(({ look, label, values, atRest, band }): Reading => {
    if (pointer === null) return { look, label, value: figureWith(atRest, y.symbol) };
    const spread = band && values[pointer] !== null;
    const value = spread
      ? `${figureOf(band.low[pointer])} to ${figureWith(band.high[pointer], y.symbol)}`
      : figureWith(values[pointer], y.symbol);
    return { look, label, value };
  });
  return [{ look: null, label: x.label.toLowerCase(), value: figureWith(there, x.symbol) }, ...read.reverse()];
}
