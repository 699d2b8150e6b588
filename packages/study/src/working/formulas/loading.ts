// How filters plug.
export * from "./loadingFits.js";
export * from "./loadingRatios.js";
