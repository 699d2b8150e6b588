import type { Fault } from "@thirstline/spec";
import type { GaugeReading, System } from "@thirstline/spec/system";
import type { CardAnswer, CardOptions, FleetAnswer, GaugeAnswer } from "@thirstline/study";
import type { LogNote } from "./fleet/LogNote.js";
import type { YardFile } from "./fleet/YardFile.js";
import type { Course } from "./gauge/Course.js";

/** What can be asked of the worker. */
export type Asked =
  | { readonly kind: "gauge"; readonly system: System; readonly readings: readonly GaugeReading[] }
  | { readonly kind: "fleet"; readonly files: readonly YardFile[]; readonly on: string; readonly within: number }
  | { readonly kind: "entry"; readonly files: readonly YardFile[]; readonly on: string; readonly note: LogNote }
  | { readonly kind: "card"; readonly system: System; readonly options: CardOptions };

/** What the worker tells. */
export type Told =
  | { readonly kind: "gauge"; readonly answer: GaugeAnswer; readonly courses: readonly Course[] }
  | { readonly kind: "fleet"; readonly answer: FleetAnswer; readonly faults: readonly Fault[] }
  /** the log with the entry in it, and the lines that were put in */
  | { readonly kind: "entry"; readonly log: YardFile; readonly written: readonly string[] }
  /** why the entry cannot follow what the log has */
  | { readonly kind: "not entered"; readonly why: readonly string[] }
  | { readonly kind: "card"; readonly answer: CardAnswer }
  /** it has no answer, in words */
  | { readonly kind: "refused"; readonly why: string };
