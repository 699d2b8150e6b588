// Duty and changes.
export * from "./burnt.js";
export * from "./changeRules.js";
export * from "./meters.js";
export * from "./years.js";
