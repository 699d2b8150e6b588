import type { Columns } from "./Columns.js";

/** A table as comma-separated lines; figures to six digits, gaps empty. */
export function csvOf({ head, rows }: Columns): string {
  return [head, ...rows].map((row) => row.map(cell).join(",")).join("\r\n");
}

/** Quoted where it holds a comma or a quote; a name from a file must not be taken for a formula. */
function cell(value: string | number | null): string {
  if (value === null) return "";
  if (typeof value === "number") return String(Number(value.toPrecision(6)));
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
