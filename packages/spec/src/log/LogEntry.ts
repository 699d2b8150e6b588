import type { CsvRow } from "../table/csvRows.js";

/** What a row of a log tells besides its figures. */
export type LogEvent =
  /** the meters and the gauge were read */
  | { readonly kind: "reading" }
  /** an element was changed; null for all of them */
  | { readonly kind: "changed"; readonly element: string | null }
  /** a new meter was put in; the row has what it shows */
  | { readonly kind: "new hour meter" }
  | { readonly kind: "new distance meter" }
  /** only the row's note tells something */
  | { readonly kind: "note" };

/** One row of a log, in SI; what is left out was not read. */
export interface LogEntry {
  readonly machine: string;
  /** the day, as "2026-11-25" */
  readonly date: string;
  /** what the hour meter showed, s */
  readonly hours?: number;
  /** what the distance meter showed, m */
  readonly distance?: number;
  /** vacuum at the pump's inlet, at full demand, Pa */
  readonly gauge?: number;
  readonly event: LogEvent;
  readonly note?: string;
}

/** An entry with the row it was read from, for what is checked over all rows. */
export interface PlacedEntry {
  readonly entry: LogEntry;
  readonly row: CsvRow;
}
