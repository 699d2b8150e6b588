import type { Fault } from "../read/Fault.js";
import type { GaugeReading } from "./GaugeReading.js";

/** Readings in order, or everything that is wrong with them. */
export type ReadingsResult = { readonly readings: readonly GaugeReading[] } | { readonly faults: readonly Fault[] };
