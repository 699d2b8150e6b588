// Fibre mats.
export * from "./fibreEnds.js";
export * from "./fibreLaws.js";
export * from "./spielmanGoren.js";
