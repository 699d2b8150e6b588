import type { GaugeReading } from "@thirstline/spec/system";
import type { RatioTable } from "./RatioTable.js";

/** One reading of one gauge, with what the model makes of it. */
export interface Instant {
  readonly reading: GaugeReading;
  /** running time since the run began, s */
  readonly time: number;
  /** what was read, Pa, so turned that soil makes it grow: a vacuum, or less feed pressure */
  readonly read: number;
  /** the same by the model, Pa */
  readonly table: RatioTable;
  /** K, noted or taken */
  readonly temperature: number;
  /** how far gauge, demand and temperature may be off: one standard deviation, Pa, of the share, of the viscosity's logarithm */
  readonly noise: { readonly gauge: number; readonly demand: number; readonly viscosity: number };
}

/** Readings of one side since its elements were new, or since the first reading. */
export interface Run {
  readonly instants: readonly Instant[];
  /** what is known of the soil at time 0: none, so much (resistance over clean of the lead), or nothing */
  readonly start: Start;
}

/** What is known of the soil at the beginning of a run. */
export type Start =
  | { readonly known: true; readonly ratio: number; readonly by: "change in the readings" | "last change" | "stated" }
  | { readonly known: false };
