import type { Fault } from "../read/Fault.js";
import { type CellReader, cellReader } from "../table/cellReader.js";
import type { CsvRow } from "../table/csvRows.js";
import { decodeTable } from "../table/decodeTable.js";
import { placeFaults } from "../table/placeFaults.js";
import { readTable, type TableForm } from "../table/readTable.js";
import type { TableFault } from "../table/TableFault.js";
import { yardBounds } from "./logBounds.js";

/** Good rows of a yard's list, and everything that is wrong with the others. */
export interface YardResult<Row> {
  readonly rows: readonly Row[];
  readonly faults: readonly Fault[];
}

/**
 * Reads a list of a yard, row by row; a row at fault is left out, and its faults are told.
 *
 * @param rowOf reads one row; what it returns counts only where it told no fault
 */
export function readYard<Name extends string, Row>(
  given: string | Uint8Array,
  file: string,
  form: TableForm<Name>,
  rowOf: (row: CsvRow, cells: CellReader<Name>) => Row,
): YardResult<Row> {
  const decoded = decodeTable(given, file, yardBounds, `${form.what} of ${yardBounds.rows} rows needs less`);
  if ("fault" in decoded) return { rows: [], faults: [decoded.fault] };
  const { text } = decoded;
  const table = readTable(text, form);
  const faults: TableFault[] = [...table.faults];
  const cells = cellReader(table, form, faults);
  const rows: Row[] = [];
  for (const row of table.rows) {
    const before = faults.length;
    if (row.cells.slice(table.columns.length).some((cell) => cell !== "")) {
      const message = `a cell more than there are columns (${table.columns.length}); put a cell that holds a separator in quotes`;
      cells.fault(row, null, "too many cells", message);
    }
    const read = rowOf(row, cells);
    if (faults.length === before) rows.push(read);
  }
  return { rows, faults: placeFaults(faults, text, file, yardBounds) };
}
