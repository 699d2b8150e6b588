import type { HeadColumn } from "../table/readTable.js";
import type { LogEntry } from "./LogEntry.js";
import type { LogColumn } from "./logForm.js";
import { eventText } from "./readEvent.js";

/** The head of a log that is begun. */
export const newLogHead = "machine,date,hours (h),distance (km),gauge (kPa),event,note";

/** What figures are written in where a column's head has no unit, with their size in SI. */
const ownUnit = {
  hours: { symbol: "h", size: 3600 },
  distance: { symbol: "km", size: 1000 },
  gauge: { symbol: "kPa", size: 1000 },
} as const;

/**
 * Entries as lines of a log, in its own columns and units. A log of other columns takes what it has room for; what it has
 * no column for is named, since nothing that was said may be lost.
 *
 * @param columns the log's own
 * @param separator what stands between its cells
 */
export function logLines(
  entries: readonly LogEntry[],
  columns: readonly HeadColumn<LogColumn>[],
  separator: string,
): { readonly lines: readonly string[] } | { readonly noColumn: readonly LogColumn[] } {
  const has = new Set(columns.map(({ name }) => name));
  const told = entries.flatMap((entry) =>
    (["hours", "distance", "gauge", "note"] as const).filter((name) => entry[name] !== undefined),
  );
  const done = entries.some(({ event }) => event.kind !== "reading") ? (["event"] as const) : [];
  const noColumn = [...new Set<LogColumn>([...told, ...done])].filter((name) => !has.has(name));
  if (noColumn.length > 0) return { noColumn };
  return { lines: entries.map((entry) => columns.map((column) => cell(entry, column, separator)).join(separator)) };
}

function cell(entry: LogEntry, { name, size }: HeadColumn<LogColumn>, separator: string): string {
  if (name === "event") return quoted(eventText(entry.event), separator);
  if (name === "machine" || name === "date" || name === "note") return quoted(entry[name] ?? "", separator);
  const value = entry[name];
  if (value === undefined) return "";
  const own = ownUnit[name];
  return size === null ? `${shortest(value / own.size)} ${own.symbol}` : shortest(value / size);
}

/** Without the rounding that a change of unit brings. */
function shortest(value: number): string {
  return String(Number(value.toPrecision(12)));
}

/** A text as a cell: in quotes when it holds what would end one, or begins as one does. */
function quoted(text: string, separator: string): string {
  return text.includes(separator) || /["\n\r]/.test(text) || text !== text.trim()
    ? `"${text.replaceAll('"', '""')}"`
    : text;
}
