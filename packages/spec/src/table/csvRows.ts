import type { TableBounds } from "./TableBounds.js";
import type { TableFault } from "./TableFault.js";

/** One row: its cells, and where each begins in the text. */
export interface CsvRow {
  readonly cells: readonly string[];
  readonly starts: readonly number[];
}

/**
 * The rows of a comma-separated text (RFC 4180): cells in double quotes may hold separators, line ends and doubled quotes.
 * Empty lines, and lines beginning with # before the first row, are passed over. Strict: a quote in the middle of a plain
 * cell, or text after a closing quote, is a fault and not a guess.
 *
 * @param text of the file
 * @param separator the one character between cells
 * @param bounds how many rows, and faults, there may be
 */
export function csvRows(
  text: string,
  separator: string,
  bounds: TableBounds,
): { rows: CsvRow[]; faults: TableFault[] } {
  const rows: CsvRow[] = [];
  const faults: TableFault[] = [];
  let at = 0;
  while (at < text.length && faults.length <= bounds.faults) {
    if (rows.length === 0 && text[at] === "#") {
      at = afterLine(text, at);
      continue;
    }
    const row = rowAt(text, at, separator, faults);
    at = row.end;
    if (row.cells.length === 1 && row.cells[0] === "") continue;
    if (rows.length > bounds.rows) {
      return { rows, faults: [...faults, plainFault(row.starts[0] ?? 0, "too many", bounds.tooMany)] };
    }
    rows.push({ cells: row.cells, starts: row.starts });
  }
  return { rows, faults };
}

function plainFault(at: number, code: string, message: string): TableFault {
  return { at, path: "", code, received: null, message };
}

function rowAt(text: string, from: number, separator: string, faults: TableFault[]) {
  const cells: string[] = [];
  const starts: number[] = [];
  let at = from;
  for (;;) {
    starts.push(at);
    const cell = text[at] === '"' ? quotedCell(text, at, separator, faults) : plainCell(text, at, separator, faults);
    cells.push(cell.text);
    at = cell.end;
    if (text[at] !== separator) return { cells, starts, end: afterLine(text, at) };
    at += 1;
  }
}

function plainCell(text: string, from: number, separator: string, faults: TableFault[]) {
  let end = from;
  while (end < text.length && text[end] !== separator && text[end] !== "\n" && text[end] !== "\r") end += 1;
  const cell = text.slice(from, end);
  // An inch sign after a figure is common; a quote that opens in the middle is a slip that swallows what follows.
  if (cell.includes('"') && !/\d"+$/.test(cell.trim())) {
    const message = 'a quotation mark in the middle of a cell; put the whole cell in quotes and double the mark: ""';
    faults.push(plainFault(from, "stray quote", message));
  }
  return { text: cell.trim(), end };
}

function quotedCell(text: string, from: number, separator: string, faults: TableFault[]) {
  let at = from + 1;
  let cell = "";
  for (;;) {
    const close = text.indexOf('"', at);
    if (close === -1) {
      faults.push(plainFault(from, "open quote", "the quotation mark that opens here is never closed"));
      return { text: cell, end: text.length };
    }
    cell += text.slice(at, close);
    if (text[close + 1] !== '"') {
      at = close + 1;
      break;
    }
    cell += '"';
    at = close + 2;
  }
  while (text[at] === " ") at += 1;
  if (at < text.length && text[at] !== separator && text[at] !== "\n" && text[at] !== "\r") {
    faults.push(plainFault(at, "after quote", "text after a closing quotation mark; put the whole cell in quotes"));
    at = plainCell(text, at, separator, []).end;
  }
  return { text: cell.trim(), end: at };
}

function afterLine(text: string, from: number): number {
  const end = text.indexOf("\n", from);
  return end === -1 ? text.length : end + 1;
}
