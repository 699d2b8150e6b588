// Filters.
export * from "./filterDrops.js";
export * from "./filterTests.js";
