import { decodeTable } from "../table/decodeTable.js";
import type { CatalogueResult } from "./CatalogueResult.js";
import { catalogueBounds } from "./catalogueBounds.js";
import { readCsv } from "./readCsv.js";
import { readYaml } from "./readYaml.js";

/**
 * Reads a catalogue of elements: a table with a head (comma, semicolon or tab between cells), or YAML or JSON. Every fault
 * comes at once, with its line, its column and what would be right; a bad catalogue yields no element.
 *
 * In a table a quantity has its unit in its cell, "2 kPa", or in its column's head, "drop (kPa)". In YAML an element is
 * written as a filter of a system file is, with thread, price and the like beside.
 *
 * @param given the file's text, or its bytes, which must be UTF-8
 * @param options file: what faults call it; its ending tells YAML from a table where the text does not
 * @returns the elements in SI, at least one, or the faults; it never throws
 * @see catalogueBounds for what a catalogue may hold at most
 * @example
 * readCatalogue("name,drop,flow,viscosity\nP10,2 kPa,200 L/h,2.5 mPa s", { file: "elements.csv" })
 */
export function readCatalogue(given: string | Uint8Array, { file }: { readonly file: string }): CatalogueResult {
  const what = `a catalogue of ${catalogueBounds.rows} elements needs less`;
  const decoded = decodeTable(given, file, catalogueBounds, what);
  if ("fault" in decoded) return { faults: [decoded.fault] };
  const { text } = decoded;
  const isYaml = /\.(ya?ml|json)$/i.test(file) || /^(\s*#[^\n]*\n)*\s*(\{|format *:|elements *:)/.test(text);
  return isYaml ? readYaml(text, file) : readCsv(text, file);
}
