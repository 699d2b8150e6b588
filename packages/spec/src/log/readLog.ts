import type { Fault } from "../read/Fault.js";
import { readDate } from "../schema/leaves/date.js";
import { type CellReader, cellReader } from "../table/cellReader.js";
import type { CsvRow } from "../table/csvRows.js";
import { decodeTable } from "../table/decodeTable.js";
import { placeFaults, positionsIn } from "../table/placeFaults.js";
import { type HeadColumn, readTable } from "../table/readTable.js";
import type { TableFault } from "../table/TableFault.js";
import { backwardFaults } from "./backwardFaults.js";
import type { LogEntry, PlacedEntry } from "./LogEntry.js";
import { logBounds } from "./logBounds.js";
import { type LogColumn, logForm } from "./logForm.js";
import { readEvent } from "./readEvent.js";

/** A log as read: its good rows, and everything that is wrong with the others. */
export interface LogResult {
  readonly entries: readonly LogEntry[];
  readonly faults: readonly Fault[];
  /** machines some row of which is at fault, each with the line of the first: of them nothing can be said */
  readonly doubtful: ReadonlyMap<string, number>;
  /** whether its rows can be told apart at all, so that one may be put after them */
  readonly sound: boolean;
  /** its columns and what stands between its cells; none for an empty log */
  readonly columns: readonly HeadColumn<LogColumn>[];
  readonly separator: string;
}

/**
 * Reads a yard's log: a table (CSV) of machine, date, hours, distance, gauge, event and note. Every fault comes at once,
 * with its line, its column and what would be right; good rows of other machines are read all the same.
 *
 * A last line that ends in its middle is a fault, as after a power cut; nothing of it is taken for granted.
 *
 * @param given the file's text, or its bytes, which must be UTF-8; an empty text is an empty log
 * @param options file: what faults call it
 * @returns rows in SI, in the log's order; it never throws
 * @example
 * readLog("machine,date,hours (h),gauge (kPa),event\nHeron,2026-11-25,11650,14,changed all\n", { file: "log.csv" })
 */
export function readLog(given: string | Uint8Array, { file }: { readonly file: string }): LogResult {
  const nothing = { entries: [], faults: [], doubtful: new Map(), columns: [], separator: "," };
  if (given.length === 0) return { ...nothing, sound: true };
  const decoded = decodeTable(given, file, logBounds, "put the oldest years into a file of their own");
  if ("fault" in decoded) return { ...nothing, faults: [decoded.fault], sound: false };
  const { text } = decoded;
  const table = readTable(text, logForm);
  const { columns, separator } = table;
  if (table.faults.length > 0) {
    return { ...nothing, faults: placeFaults(table.faults, text, file, logBounds), sound: false };
  }
  const faults: TableFault[] = [];
  const torn = tornFault(text, table.rows.at(-1), columns.length);
  const rows = torn === null ? table.rows : table.rows.slice(0, -1);
  const cells = cellReader(table, logForm, faults);
  const doubtful = new Map<string, number>();
  const placed: PlacedEntry[] = [];
  for (const row of rows) {
    const before = faults.length;
    // Past what is told, faults are no longer looked for, only whose rows these are.
    if (before > logBounds.faults) {
      doubt(doubtful, cells.text(row, "machine"), row.starts[0] ?? 0);
      continue;
    }
    const entry = entryOf(row, cells, columns.length);
    if (faults.length === before) placed.push({ entry, row });
    else doubt(doubtful, entry.machine, row.starts[0] ?? 0);
  }
  for (const { entry, row } of backwardFaults(placed, cells)) doubt(doubtful, entry.machine, row.starts[0] ?? 0);
  if (torn !== null) {
    faults.push(torn);
    doubt(doubtful, cells.text(table.rows.at(-1) as CsvRow, "machine"), torn.at);
  }
  const position = positionsIn(text);
  return {
    entries: placed.map(({ entry }) => entry),
    faults: placeFaults(faults, text, file, logBounds),
    doubtful: new Map([...doubtful].map(([machine, at]) => [machine, position(at).line])),
    sound: torn === null,
    columns,
    separator,
  };
}

function doubt(doubtful: Map<string, number>, machine: string, at: number): void {
  if (!doubtful.has(machine)) doubtful.set(machine, at);
}

/** A last line without a line end that has fewer cells than there are heads was cut off while it was written. */
function tornFault(text: string, last: CsvRow | undefined, columns: number): TableFault | null {
  if (last === undefined || /[\r\n]$/.test(text) || last.cells.length >= columns) return null;
  const message =
    "the last line ends in its middle, as when the power fails while it is written; complete it, or take it out";
  return { at: last.starts[0] ?? 0, path: "", code: "torn line", received: null, message };
}

function entryOf(row: CsvRow, cells: CellReader<LogColumn>, columns: number): LogEntry {
  const machine = cells.text(row, "machine");
  const written = cells.text(row, "date");
  if (row.cells.length > columns && row.cells.slice(columns).some((cell) => cell !== "")) {
    const message = `a cell more than there are columns (${columns}); put a cell that holds a separator in quotes`;
    cells.fault(row, null, "too many cells", message);
  }
  if (machine === "") cells.fault(row, "machine", "missing", "missing; write which machine it is");
  const date = readDate(written, "the day such as 2026-11-25");
  if ("fault" in date) cells.fault(row, "date", date.fault.code, date.fault.message);
  const event = readEvent(cells.text(row, "event"));
  if ("message" in event) cells.fault(row, "event", "unknown event", event.message);
  const hours = cells.quantity(row, "hours");
  const distance = cells.quantity(row, "distance");
  const gauge = cells.quantity(row, "gauge");
  const note = cells.text(row, "note");
  if ("kind" in event) {
    if (event.kind === "new hour meter" && hours === undefined && cells.text(row, "hours") === "") {
      cells.fault(row, "hours", "missing", "missing; write what the new hour meter shows");
    }
    if (event.kind === "new distance meter" && distance === undefined && cells.text(row, "distance") === "") {
      cells.fault(row, "distance", "missing", "missing; write what the new distance meter shows");
    }
  }
  return {
    machine,
    date: "value" in date ? date.value : written,
    event: "kind" in event ? event : { kind: "note" },
    ...(hours === undefined ? {} : { hours }),
    ...(distance === undefined ? {} : { distance }),
    ...(gauge === undefined ? {} : { gauge }),
    ...(note === "" ? {} : { note }),
  };
}
