import type { ChartData } from "./ChartData.js";

/** The table behind a drawing: what can be read aloud, copied and saved. */
export interface Columns {
  /** each with its unit in brackets */
  readonly head: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

/** The figures of a chart: its x and every line, bands with both their ends. */
export function columnsOf({ title, x, y, lines }: ChartData): Columns {
  const head = lines.flatMap(({ label, band }) => {
    const name = (more: string) => `${title.toLowerCase()}, ${label}${more} (${y.symbol})`;
    return band ? [name(""), name(", at least"), name(", at most")] : [name("")];
  });
  const rows = x.values.map((at, place) => [
    at,
    ...lines.flatMap(({ values, band }) => {
      const figures = band ? [values[place], band.low[place], band.high[place]] : [values[place]];
      return figures.map((one) => one ?? null);
    }),
  ]);
  return { head: [`${x.label.toLowerCase()} (${x.symbol})`, ...head], rows };
}
