import { shown } from "../shown.js";
import { type KindName, kinds } from "../units/kinds.js";
import { type QuantityResult, quantity } from "../units/quantity.js";
import { rangeOf } from "../units/range.js";
import type { CsvRow } from "./csvRows.js";
import type { HeadColumn, Table, TableForm } from "./readTable.js";
import type { TableFault } from "./TableFault.js";

/** Reads cells of a table by the name of their column, and gathers what is wrong with them. */
export interface CellReader<Name extends string> {
  /** a cell's text, "" where it is empty or there is no such column */
  readonly text: (row: CsvRow, name: Name) => string;
  /** a cell's quantity in SI; undefined where it is empty, or at fault, which is then told */
  readonly quantity: (row: CsvRow, name: Name) => number | undefined;
  readonly fault: (row: CsvRow, name: Name | null, code: string, message: string) => void;
}

/** Texts remembered at most. */
const MOST_KNOWN = 1000;

const plainNumber = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;

/**
 * A reader of cells. A number alone takes the unit of its head, by one multiplication, since a log has a hundred thousand
 * of them; a cell with a unit of its own keeps it.
 *
 * @param faults where faults go
 */
export function cellReader<Name extends string>(
  { columns }: Table<Name>,
  form: TableForm<Name>,
  faults: TableFault[],
): CellReader<Name> {
  const places = new Map(columns.map(({ name }, place) => [name, place]));
  const text = (row: CsvRow, name: Name) => row.cells[places.get(name) ?? -1] ?? "";
  const fault: CellReader<Name>["fault"] = (row, name, code, message) => {
    const place = name === null ? undefined : places.get(name);
    const at = (place === undefined ? undefined : row.starts[place]) ?? row.starts[0] ?? 0;
    const received = place === undefined ? null : (row.cells[place] ?? null);
    faults.push({ at, path: name ?? "", code, received, message });
  };
  // Cells of a table repeat each other, and a unit takes its time to read.
  const known = new Map<string, QuantityResult>();
  const readOnce = (text: string, kind: KindName): QuantityResult => {
    const key = `${kind} ${text}`;
    const read = known.get(key) ?? quantity(text, kind);
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(key, read);
    return read;
  };
  const inUnit = (cell: string, { unit, size }: HeadColumn<Name>, kind: KindName) => {
    if (!plainNumber.test(cell)) return readOnce(cell, kind);
    if (size === null) return readOnce(`${cell} ${unit}`.trim(), kind);
    const { least, most } = rangeOf(kinds[kind]);
    const value = Number(cell) * size;
    return value >= least && value <= most ? { value } : readOnce(`${cell} ${unit}`, kind);
  };
  return {
    text,
    fault,
    quantity: (row, name) => {
      const cell = text(row, name);
      const column = columns[places.get(name) ?? -1];
      const kind: KindName | "text" | "share" = form.columns[name];
      if (cell === "" || column === undefined) return undefined;
      if (kind === "text" || kind === "share") throw new TypeError(`${shown(name)} holds no quantity`);
      const read = inUnit(cell, column, kind);
      if ("value" in read) return read.value;
      fault(row, name, read.fault.code, read.fault.message);
      return undefined;
    },
  };
}
