import type { ShelfPart, Stakes, System } from "@thirstline/spec/system";
import type { FleetReason } from "./FleetAnswer.js";

/** What was known of the last change of all elements before the log begins: its day, and what the meters showed, s and m. */
export interface KnownChange {
  readonly date?: string;
  readonly hours?: number;
  readonly distance?: number;
}

/** A machine to be judged. */
export interface FleetMachine {
  /** no two share it; the log's rows go by it */
  readonly name: string;
  /** its system file, as the answer calls it */
  readonly file: string;
  /** null where the file is at fault */
  readonly system: System | null;
  readonly stakes: Stakes | null;
  readonly changed: KnownChange | null;
  /** why nothing can be said whatever the rest, such as a row of the log at fault */
  readonly barred?: FleetReason;
}

/** What a fleet is asked. */
export interface FleetOptions {
  /** today, as "2026-11-25" */
  readonly on: string;
  /** days looked ahead; 90 when left out */
  readonly within?: number;
  readonly shelf?: readonly ShelfPart[];
  /** how long the elements of a system last in each of many draws, s (see `lifeDraws`); null where nothing is drawn */
  readonly lives?: (system: System) => Float64Array | null;
}
