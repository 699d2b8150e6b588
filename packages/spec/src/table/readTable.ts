import { nearest } from "../nearest.js";
import { shown } from "../shown.js";
import { type KindName, kinds } from "../units/kinds.js";
import { quantity } from "../units/quantity.js";
import { type CsvRow, csvRows } from "./csvRows.js";
import { separatorOf } from "./separatorOf.js";
import { splitHead } from "./splitHead.js";
import type { TableBounds } from "./TableBounds.js";
import type { TableFault } from "./TableFault.js";

/** What a table is made of. */
export interface TableForm<Name extends string> {
  /** as a sentence names it: "a log" */
  readonly what: string;
  /** every column there may be, and the kind of quantity its cells hold; "share" for per cent, "text" for neither */
  readonly columns: Readonly<Record<Name, KindName | "text" | "share">>;
  /** columns that must be there */
  readonly needed: readonly Name[];
  /** other words people use for a column */
  readonly synonyms: Readonly<Record<string, Name>>;
  readonly bounds: TableBounds;
}

/** A column as its head has it. */
export interface HeadColumn<Name extends string> {
  readonly name: Name;
  /** of cells that are numbers alone; "" where each cell has its own */
  readonly unit: string;
  /** SI units in one such unit; null where the head has no unit, or one with a zero of its own */
  readonly size: number | null;
}

/** A table with its rows under known heads; with a fault in its heads or its form it has no rows. */
export interface Table<Name extends string> {
  readonly columns: readonly HeadColumn<Name>[];
  readonly separator: string;
  readonly rows: readonly CsvRow[];
  readonly faults: readonly TableFault[];
}

/** Reads a table's heads and splits its rows into cells; a unit stands in its column's head, or in each cell. */
export function readTable<Name extends string>(text: string, form: TableForm<Name>): Table<Name> {
  const separator = separatorOf(text);
  const { rows, faults: broken } = csvRows(text, separator, form.bounds);
  const [head, ...body] = rows;
  if (!head) {
    const message = `nothing in the file; ${form.what} begins with a row of column heads such as ${form.needed.join(",")}`;
    const fault = { at: 0, path: "", code: "empty", received: null, message };
    return { columns: [], separator, rows: [], faults: [...broken, fault] };
  }
  const faults = [...broken];
  const columns = columnsOf(head, form, faults);
  if (faults.length > 0) return { columns, separator, rows: [], faults };
  return { columns, separator, rows: body, faults: [] };
}

function columnsOf<Name extends string>(
  { cells, starts }: CsvRow,
  form: TableForm<Name>,
  faults: TableFault[],
): HeadColumn<Name>[] {
  const columns: HeadColumn<Name>[] = [];
  const fault = (place: number, code: string, message: string) =>
    faults.push({ at: starts[place] ?? 0, path: "", code, received: cells[place] ?? null, message });
  if (cells.length > form.bounds.columns) {
    fault(form.bounds.columns, "too many", `more than ${form.bounds.columns} columns`);
    return [];
  }
  for (const [place, cell] of cells.entries()) {
    const column = columnOf(cell, form);
    if ("message" in column) fault(place, column.code, column.message);
    else if (columns.some(({ name }) => name === column.name)) {
      fault(place, "duplicate column", `${shown(column.name)} is a column already; keep one of the two`);
    } else columns.push(column);
  }
  const missing = form.needed.filter((name) => !columns.some((column) => column.name === name));
  if (faults.length === 0 && missing.length > 0) {
    const names = missing.map(shown).join(", ");
    fault(0, "missing column", `no column ${names}; the first row names the columns of ${form.what}`);
  }
  return columns;
}

function columnOf<Name extends string>(
  text: string,
  { what, columns, synonyms }: TableForm<Name>,
): HeadColumn<Name> | { readonly code: string; readonly message: string } {
  const { name, unit } = splitHead(text);
  const names = Object.keys(columns) as Name[];
  const known = names.find((one) => one === name);
  if (known === undefined) {
    const meant = Object.hasOwn(synonyms, name) ? synonyms[name] : nearest(name, names);
    const hint = meant === undefined ? `known are ${names.join(", ")}` : `write ${shown(meant)}`;
    const said = name === "" ? "a column without a name" : `${shown(text.trim())} is not a column of ${what}`;
    return { code: "unknown column", message: `${said}; ${hint}` };
  }
  const kind: KindName | "text" | "share" = columns[known];
  if (unit === "") return { name: known, unit, size: null };
  if (kind === "text") {
    return { code: "needless unit", message: `${shown(known)} has no unit; leave out the brackets` };
  }
  if (kind === "share") {
    if (unit === "%") return { name: known, unit, size: 0.01 };
    return { code: "unknown unit", message: `${shown(known)} is in per cent; write its head as "${known} (%)"` };
  }
  const one = quantity(`1 ${unit}`, kind);
  if ("fault" in one) return { code: one.fault.code, message: one.fault.message };
  return { name: known, unit, size: kinds[kind].measure === "a temperature" ? null : one.value };
}
