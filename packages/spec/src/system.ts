export { type Built, type BuiltTank, build } from "./build/build.js";
export { withDraw } from "./build/withDraw.js";
export type { CatalogueElement } from "./catalogue/CatalogueElement.js";
export type { LogEntry, LogEvent } from "./log/LogEntry.js";
export type { ShelfPart, Stakes, YardMachine } from "./log/YardMachine.js";
export type { GaugeReading } from "./readings/GaugeReading.js";
export type * from "./system/index.js";
