import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect } from "vitest";
import { figure } from "./accuracyFigure.mjs";

// How a published table is read, measured and reported. One module measures for the gate and for the printed report:
//
//   const table = readTable("fuels/d341-round-trip.csv");            // under references/
//   const error = measure(table.rows, (row) => f(row.number("t_k")), "v_mm2_s");
//   report("fuels/d341-round-trip", table, error);                   // reports/accuracy/fuels.d341-round-trip.json
//   expect(table.rows).toHaveLength(5);                              // a table cut short must not pass
//   expect(error.max, error.worst).toBeLessThanOrEqual(2e-15);       // on failure prints row, got, expected

const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");

/** What the page says of every table. */
const PAGE = "playground/src/working/accuracy.json";
const onPage: readonly { name: string; figures: number; largest: string; as: string }[] = JSON.parse(
  readFileSync(join(root, PAGE), "utf8"),
);

/** One line of a table. Ask for a cell by column name; an unknown column or a number that is none is an error. */
export class Row {
  /** Line in the file, from 1. */
  readonly line: number;
  readonly #file: string;
  readonly #cells: ReadonlyMap<string, string>;

  constructor(file: string, line: number, cells: ReadonlyMap<string, string>) {
    this.#file = file;
    this.line = line;
    this.#cells = cells;
  }

  /** The cell as written, "" when empty. */
  text(column: string): string {
    const cell = this.#cells.get(column);
    if (cell === undefined) throw new Error(`${this.#file}:${this.line} has no column "${column}"`);
    return cell;
  }

  /** The cell as a number. */
  number(column: string): number {
    const cell = this.text(column);
    const value = Number(cell);
    if (cell === "" || Number.isNaN(value))
      throw new Error(`${this.#file}:${this.line} ${column} is no number: "${cell}"`);
    return value;
  }

  /** Whether the cell holds anything. */
  has(column: string): boolean {
    return this.text(column) !== "";
  }

  /** Half a unit of the last printed digit: what rounding alone allows. "2.31" gives 0.005, "1.50e-3" gives 5e-6. */
  halfStep(column: string): number {
    this.number(column);
    const [mantissa = "", exponent = "0"] = this.text(column).toLowerCase().split("e");
    const decimals = mantissa.split(".")[1]?.length ?? 0;
    return Number(`0.5e${Number(exponent) - decimals}`);
  }

  toString(): string {
    return `${this.#file}:${this.line} ${[...this.#cells].map(([column, cell]) => `${column}=${cell}`).join(" ")}`;
  }
}

export interface Table {
  /** Path under references/. */
  readonly file: string;
  /** The comment lines `# kind: …`, `# source: …`; a repeated key joins its lines with a line break. */
  readonly header: Readonly<Record<string, string>>;
  readonly columns: readonly string[];
  readonly rows: readonly Row[];
}

const needed = ["kind", "source", "status", "obtained", "precision", "covers"];

/** Reads a table under references/. Cells may stand in double quotes; a row with too few or too many cells is an error. */
export function readTable(file: string): Table {
  const header: Record<string, string> = {};
  const rows: Row[] = [];
  let columns: string[] | undefined;
  const lines = readFileSync(join(root, "references", file), "utf8").split(/\r?\n/);
  lines.forEach((line, index) => {
    if (line.trim() === "") return;
    if (line.startsWith("#")) {
      const [, key, value] = /^#\s*([a-z ]+?):\s*(.*)$/.exec(line) ?? [];
      if (key === undefined || value === undefined) throw new Error(`${file}:${index + 1} is no "# key: value" line`);
      header[key] = header[key] === undefined ? value : `${header[key]}\n${value}`;
      return;
    }
    const cells = cellsOf(line);
    if (columns === undefined) {
      columns = cells;
      return;
    }
    if (cells.length !== columns.length) {
      throw new Error(`${file}:${index + 1} has ${cells.length} cells for ${columns.length} columns`);
    }
    rows.push(new Row(file, index + 1, new Map(columns.map((column, i) => [column, cells[i] ?? ""]))));
  });
  for (const key of needed) if (header[key] === undefined) throw new Error(`${file} lacks the header line "# ${key}:"`);
  return { file, header, columns: columns ?? [], rows };
}

function cellsOf(line: string): string[] {
  // A comma, then a cell: either quoted (a doubled quote stands for one) or up to the next comma.
  return [...`,${line}`.matchAll(/,(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, quoted, plain]) =>
    quoted === undefined ? (plain ?? "").trim() : quoted.replaceAll('""', '"'),
  );
}

export interface Measured {
  /** How the error is counted; see `measure`. */
  readonly as: ErrorKind;
  readonly n: number;
  readonly mean: number;
  /** The error that nine rows in ten do not exceed (nearest rank). */
  readonly p90: number;
  readonly max: number;
  /** Every row's, rising: what several tables together are judged by. */
  readonly errors: readonly number[];
  /** The row with the largest error, with what came and what was due: the message for a failing check. */
  readonly worst: string;
}

/**
 * "relative": |got − expected| over |expected|. "absolute": the plain difference, in the table's unit.
 * "half steps": the difference in half units of the last printed digit, so at most 1 means "agrees as printed";
 * for this one `expected` must be a column name.
 */
export type ErrorKind = "relative" | "absolute" | "half steps";

/** Measures every row, drops none; NaN counts as an infinite error. `expected` is a column name or a function of the row. */
export function measure(
  rows: readonly Row[],
  got: (row: Row) => number,
  expected: string | ((row: Row) => number),
  as: ErrorKind = "relative",
): Measured {
  if (rows.length === 0) throw new Error("measure needs at least one row");
  const results = rows.map((row) => {
    const value = got(row);
    const due = typeof expected === "string" ? row.number(expected) : expected(row);
    const error = errorOf(row, value, due, expected, as);
    return { error: Number.isNaN(error) ? Infinity : error, value, due, row };
  });
  const sorted = [...results].sort((left, right) => left.error - right.error);
  const last = sorted[sorted.length - 1];
  const ninth = sorted[Math.ceil(0.9 * sorted.length) - 1];
  if (last === undefined || ninth === undefined) throw new Error("measure needs at least one row");
  return {
    as,
    n: results.length,
    mean: results.reduce((sum, { error }) => sum + error, 0) / results.length,
    p90: ninth.error,
    max: last.error,
    errors: sorted.map(({ error }) => error),
    worst: `${last.row}: got ${last.value}, expected ${last.due}, ${as} error ${last.error}`,
  };
}

function errorOf(row: Row, got: number, due: number, expected: unknown, as: ErrorKind): number {
  if (got === due) return 0;
  const difference = Math.abs(got - due);
  if (as === "absolute") return difference;
  // A relative error against 0 is Infinity, as it should be: only an exact 0 agrees with 0.
  if (as === "relative") return difference / Math.abs(due);
  if (typeof expected !== "string") throw new Error('"half steps" needs the name of the printed column');
  return difference / row.halfStep(expected);
}

/**
 * Leaves what was measured in reports/accuracy/, one file a name, for the printed report. Names are like "fuels/d341-fits".
 * What the page says of it must be what was measured.
 */
export function report(name: string, table: Table, measured: Measured): void {
  const folder = join(root, "reports", "accuracy");
  mkdirSync(folder, { recursive: true });
  const { kind, status } = table.header;
  const entry = { name, table: table.file, kind, status, ...measured };
  writeFileSync(join(folder, `${name.replaceAll(/[/ ]/g, ".")}.json`), `${JSON.stringify(entry, undefined, 2)}\n`);
  const said = onPage.find((one) => one.name === name);
  expect
    .soft(said && [said.figures, said.largest, said.as], `${PAGE}: run node tests/support/accuracy.mjs --page`)
    .toEqual([measured.n, figure(measured.max), measured.as]);
}
