import type { RawFault } from "../read/RawFault.js";
import { shown } from "../shown.js";
import { type CsvRow, csvRows } from "../table/csvRows.js";
import { placeFaults } from "../table/placeFaults.js";
import { separatorOf } from "../table/separatorOf.js";
import type { TableFault } from "../table/TableFault.js";
import type { CatalogueElement } from "./CatalogueElement.js";
import type { CatalogueResult } from "./CatalogueResult.js";
import { catalogueBounds } from "./catalogueBounds.js";
import { type Column, columnHeads, columnOf } from "./columns.js";
import { dataOf } from "./dataOf.js";
import { readElement } from "./readElement.js";
import { sameName } from "./sameName.js";

/** Reads a catalogue that is a table. */
export function readCsv(text: string, file: string): CatalogueResult {
  const { rows, faults: broken } = csvRows(text, separatorOf(text), catalogueBounds);
  const [head, ...body] = rows;
  const placed: TableFault[] = [...broken];
  if (!head) {
    const message =
      "nothing in the file; a catalogue begins with a row of column heads such as name,drop,flow,viscosity";
    return { faults: [{ file, line: 1, column: 1, path: "", code: "empty", received: null, message }] };
  }
  const columns = columnsOf(head, placed);
  if (body.length === 0) {
    placed.push({ at: 0, path: "", code: "too few", received: null, message: "no element under the heads" });
  }
  // With a bad head or broken cells every row would be at fault for it again.
  const elements = placed.length > 0 ? [] : elementsOf(body, columns, placed);
  return placed.length > 0 ? { faults: placeFaults(placed, text, file, catalogueBounds) } : { elements };
}

function columnsOf({ cells, starts }: CsvRow, placed: TableFault[]): Column[] {
  const at = (place: number) => starts[place] ?? 0;
  const fault = (place: number, code: string, message: string) =>
    placed.push({ at: at(place), path: "", code, received: cells[place] ?? null, message });
  if (cells.length > catalogueBounds.columns) {
    fault(catalogueBounds.columns, "too many", `more than ${catalogueBounds.columns} columns`);
    return [];
  }
  const columns: Column[] = [];
  for (const [place, cell] of cells.entries()) {
    const column = columnOf(cell, columns.filter(({ path }) => path[0] === "betas").length);
    if ("message" in column) {
      fault(place, "unknown column", column.message);
      continue;
    }
    if (columns.some(({ head }) => head === column.head)) {
      fault(place, "duplicate column", `${shown(column.head)} is a column already; keep one of the two`);
    }
    columns.push(column);
  }
  if (placed.length === 0 && !columns.some(({ head }) => head === "name")) {
    fault(0, "missing column", `no column "name"; the first row names the columns, such as ${columnHeads.slice(0, 6)}`);
  }
  return columns;
}

function elementsOf(body: readonly CsvRow[], columns: readonly Column[], placed: TableFault[]): CatalogueElement[] {
  const names = new Set<string>();
  const elements: CatalogueElement[] = [];
  for (const row of body) {
    if (placed.length > catalogueBounds.faults) break;
    const extra = row.cells.findIndex((cell, place) => place >= columns.length && cell !== "");
    if (extra >= 0) {
      const message = `a cell more than there are columns (${columns.length}); put a cell that holds a separator in quotes`;
      placed.push({ at: row.starts[extra] ?? 0, path: "", code: "too many cells", received: null, message });
      continue;
    }
    const read = readElement(dataOf(row.cells, columns));
    if ("faults" in read) placed.push(...once(read.faults).map((fault) => placedIn(row, columns, fault)));
    else if (names.has(read.element.name)) {
      placed.push(placedIn(row, columns, { code: "same name", path: ["name"], message: sameName(read.element.name) }));
    } else {
      names.add(read.element.name);
      elements.push(read.element);
    }
  }
  return elements;
}

/** What a capacity test takes over from the flow test is told once, where it stands. */
function once(faults: readonly RawFault[]): RawFault[] {
  const ofTest = faults.filter(({ path }) => path[0] === "flow test").map(({ message }) => message);
  return faults.filter(({ path, message }) => path[0] !== "capacity test" || !ofTest.includes(message));
}

/** A fault at the cell its path comes from: of a block that lacks something, at the nearest cell of that block. */
function placedIn(row: CsvRow, columns: readonly Column[], fault: RawFault): TableFault {
  const path = fault.path.map(String);
  const shared = columns.map((column) => {
    const own = column.path.map(String);
    const length = own.findIndex((step, at) => step !== path[at]);
    return length === -1 ? own.length : length;
  });
  const best = Math.max(0, ...shared);
  const place = best === 0 ? columns.findIndex(({ head }) => head === "name") : shared.indexOf(best);
  const column = columns[place];
  const whole = column?.path.length === best && best === path.length;
  const what = whole ? (column?.head ?? "") : headOf(path);
  const received = whole ? (row.cells[place] ?? null) : null;
  return {
    at: row.starts[place] ?? row.starts[0] ?? 0,
    path: what,
    code: fault.code,
    received,
    message: fault.message,
  };
}

/** The head of a column that is not there, or the words of the path. */
function headOf(path: readonly string[]): string {
  const head = columnHeads.find((one) => {
    const column = columnOf(one, 0);
    return "path" in column && column.path.map(String).join() === path.join();
  });
  return head ?? path.filter((step) => !/^\d+$/.test(step)).join(" ");
}
