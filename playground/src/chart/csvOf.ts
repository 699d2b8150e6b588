import type { ChartData } from "./columnsOf.js";

/** The chart's figures as comma-separated lines, in the units shown, named in the first line. */
export function csvOf({ demand, lines, xSymbol, ySymbol, title }: ChartData): string {
  const head = [`demand (${xSymbol})`, ...lines.map(({ label }) => `${title.toLowerCase()}, ${label} (${ySymbol})`)];
  const rows = demand.map((one, at) => [one, ...lines.map(({ values }) => values[at] ?? null)]);
  return [head.map(cell).join(","), ...rows.map((row) => row.map(figureCell).join(","))].join("\r\n");
}

function figureCell(value: number | null): string {
  return value === null ? "" : String(Number(value.toPrecision(6)));
}

/** Quoted where it holds a comma or a quote; a name from a file must not be taken for a formula. */
function cell(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
