export type { GaugeReading } from "./GaugeReading.js";
export type { ReadingsResult } from "./ReadingsResult.js";
export { readReadings } from "./readReadings.js";
export { typedReadings } from "./typedReadings.js";
