// Demand and pumps.
export * from "./burn.js";
export * from "./feed.js";
export * from "./pumped.js";
export * from "./pumpRise.js";
