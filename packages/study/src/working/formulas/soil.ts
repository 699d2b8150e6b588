// What filters catch.
export * from "./catching.js";
export * from "./passing.js";
export * from "./tankBalance.js";
