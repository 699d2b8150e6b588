import { cellReader } from "../table/cellReader.js";
import type { CsvRow } from "../table/csvRows.js";
import { decodeTable } from "../table/decodeTable.js";
import { placeFaults, positionsIn } from "../table/placeFaults.js";
import { readTable } from "../table/readTable.js";
import type { TableFault } from "../table/TableFault.js";
import { backwardAt, type Latest, latest } from "./backwardAt.js";
import { entryOf } from "./entryOf.js";
import type { GaugeReading } from "./GaugeReading.js";
import type { ReadingsResult } from "./ReadingsResult.js";
import { type ReadingColumn, readingsForm } from "./readingsForm.js";

const { bounds } = readingsForm;

/**
 * Reads a machine's gauge readings: a table (CSV) with one reading a row, in order of time, under heads such as
 * `hours (h),vacuum (inHg),feed pressure (kPa),load (%),temperature (degC),tank level (m),changed,note`. Every fault comes
 * at once, with its line, its column and what would be right; a bad table yields no reading.
 *
 * A quantity has its unit in its column's head or in its cell. Needed are hours or a date, and vacuum or feed pressure; a row
 * without either may still say that elements were changed.
 *
 * @param given the file's text, or its bytes, which must be UTF-8; at most 4 MB and 20,000 readings
 * @param options file: what faults call it
 * @returns readings in SI, at least one, or the faults; it never throws
 * @example
 * readReadings("hours (h),vacuum (kPa),load (%)\n11450,14,100\n", { file: "log.csv" })
 */
export function readReadings(given: string | Uint8Array, { file }: { readonly file: string }): ReadingsResult {
  const decoded = decodeTable(given, file, bounds, "leave out the oldest readings");
  if ("fault" in decoded) return { faults: [decoded.fault] };
  const { text } = decoded;
  const table = readTable(text, readingsForm);
  const faults: TableFault[] = [...table.faults];
  const has = (name: ReadingColumn) => table.columns.some((column) => column.name === name);
  if (faults.length === 0) faults.push(...missingColumns(has, table.rows));
  // With a bad head every row would be at fault for it again.
  if (faults.length > 0) return { faults: placeFaults(faults, text, file, bounds) };
  const cells = cellReader(table, readingsForm, faults);
  const position = positionsIn(text);
  const readings: GaugeReading[] = [];
  let above: Latest = {};
  for (const row of table.rows) {
    if (faults.length > bounds.faults) break;
    const before = faults.length;
    const entry = entryOf(row, cells, table.columns);
    const { line } = position(row.starts[0] ?? 0);
    const one = { row: readings.length + 1, line, ...entry };
    if (faults.length > before) continue;
    const late = backwardAt(above, one);
    above = latest(above, one);
    if (late) cells.fault(row, late.column, late.code, late.message);
    readings.push(one);
  }
  return faults.length > 0 ? { faults: placeFaults(faults, text, file, bounds) } : { readings };
}

function missingColumns(has: (name: ReadingColumn) => boolean, rows: readonly CsvRow[]): TableFault[] {
  const fault = (code: string, message: string) => ({ at: 0, path: "", code, received: null, message });
  return [
    ...(has("hours") || has("date")
      ? []
      : [fault("missing column", 'no column "hours (h)" or "date"; the first row names the columns')]),
    ...(has("vacuum") || has("feed pressure")
      ? []
      : [
          fault("missing column", 'no column "vacuum (kPa)" or "feed pressure (kPa)"; the first row names the columns'),
        ]),
    ...(rows.length > 0 ? [] : [fault("too few", "no reading under the heads")]),
  ];
}
