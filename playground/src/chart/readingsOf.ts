import type { TemplateResult } from "lit";
import type { ChartData, ChartLine } from "./ChartData.js";
import { figureOf, figureWith } from "./figureOf.js";
import { type Reading, readingBetween } from "./Reading.js";

/** What is read: a line of the chart, at which end of its band, or the place itself. */
interface Read {
  readonly line: ChartLine | null;
  readonly end: "low" | "middle" | "high";
  /** place among the chart's figures; null for at rest */
  readonly at: number | null;
}

/** Makes a reading live. */
export type ReadingShown = (text: string, read: Read) => string | TemplateResult;

/** What a chart reads at a place among its figures, or at rest; clean first. A band is read at both ends at the pointer. */
export function readingsOf(
  { x, y, lines, dot }: ChartData,
  at: number | null,
  shown: ReadingShown = (text) => text,
): Reading[] {
  const there = at === null ? (dot?.x ?? null) : (x.values[at] ?? null);
  const live = (value: number | null | undefined, text: string, read: Omit<Read, "at">) =>
    value === null || value === undefined || !Number.isFinite(value) ? text : shown(text, { ...read, at });
  const read = lines.map((line): Reading => {
    const { look, label, values, atRest, band } = line;
    const value = at === null ? atRest : values[at];
    if (at === null || !band || value === null) {
      return { look, label, value: live(value, figureWith(value, y.symbol), { line, end: "middle" }) };
    }
    const [low, high] = [band.low[at], band.high[at]];
    const least = live(low, figureOf(low), { line, end: "low" });
    const most = live(high, figureWith(high, y.symbol), { line, end: "high" });
    return { look, label, value: readingBetween(least, most) };
  });
  const place = live(there, figureWith(there, x.symbol), { line: null, end: "middle" });
  return [{ look: null, label: x.label.toLowerCase(), value: place }, ...read.reverse()];
}
