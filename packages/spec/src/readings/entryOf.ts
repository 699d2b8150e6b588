import { readDate } from "../schema/leaves/date.js";
import { shown } from "../shown.js";
import type { CellReader } from "../table/cellReader.js";
import type { CsvRow } from "../table/csvRows.js";
import type { HeadColumn } from "../table/readTable.js";
import type { GaugeReading } from "./GaugeReading.js";
import { loadOf } from "./loadOf.js";
import type { ReadingColumn } from "./readingsForm.js";

const yes = new Set(["yes", "y", "x", "1", "true", "changed", "new"]);
const no = new Set(["", "no", "n", "0", "false", "-"]);

/** One row as a reading; what is wrong with it goes to the reader's faults. */
export function entryOf(
  row: CsvRow,
  cells: CellReader<ReadingColumn>,
  columns: readonly HeadColumn<ReadingColumn>[],
): Omit<GaugeReading, "row" | "line"> {
  if (row.cells.slice(columns.length).some((cell) => cell !== "")) {
    const message = `a cell more than there are columns (${columns.length}); put a cell that holds a separator in quotes`;
    cells.fault(row, null, "too many cells", message);
  }
  const note = cells.text(row, "note");
  const figures = {
    hours: cells.quantity(row, "hours"),
    date: dateIn(row, cells),
    vacuum: cells.quantity(row, "vacuum"),
    feedPressure: cells.quantity(row, "feed pressure"),
    load: loadIn(row, cells, columns),
    flow: cells.quantity(row, "flow"),
    temperature: cells.quantity(row, "temperature"),
    depth: cells.quantity(row, "tank level"),
    note: note === "" ? undefined : note,
  };
  if (cells.text(row, "load") !== "" && cells.text(row, "flow") !== "") {
    cells.fault(row, "flow", "two at once", "a flow and a load; keep one of the two");
  }
  if (cells.text(row, "hours") === "" && cells.text(row, "date") === "") {
    cells.fault(row, "hours", "missing", "neither hours nor a date; write what the hour meter showed, or the day");
  }
  return { ...stated(figures), changed: changedIn(row, cells) || isChange(note) };
}

/** Whether a note says no more than that elements were changed. */
export function isChange(note: string): boolean {
  return /^(filters? |elements? )?(changed|renewed)( (all|filters?|elements?))?[.!]?$/i.test(note.trim());
}

/** Only what was noted. */
export function stated<Figures extends Record<string, number | string | undefined>>(figures: Figures) {
  return Object.fromEntries(Object.entries(figures).filter(([, value]) => value !== undefined)) as {
    [Key in keyof Figures]?: Exclude<Figures[Key], undefined>;
  };
}

function dateIn(row: CsvRow, cells: CellReader<ReadingColumn>): string | undefined {
  const text = cells.text(row, "date");
  if (text === "") return undefined;
  const read = readDate(text, "the day such as 2026-11-25");
  if ("value" in read) return read.value;
  cells.fault(row, "date", read.fault.code, read.fault.message);
  return undefined;
}

function loadIn(
  row: CsvRow,
  cells: CellReader<ReadingColumn>,
  columns: readonly HeadColumn<ReadingColumn>[],
): number | undefined {
  const text = cells.text(row, "load");
  if (text === "") return undefined;
  const read = loadOf(
    text,
    columns.some(({ name, unit }) => name === "load" && unit === "%"),
  );
  if ("value" in read) return read.value;
  cells.fault(row, "load", "not a load", read.message);
  return undefined;
}

function changedIn(row: CsvRow, cells: CellReader<ReadingColumn>): boolean {
  const text = cells.text(row, "changed").toLowerCase();
  if (yes.has(text)) return true;
  if (!no.has(text)) {
    const message = `${shown(text)} does not say whether elements were changed; write yes, or leave it empty`;
    cells.fault(row, "changed", "neither yes nor no", message);
  }
  return false;
}
