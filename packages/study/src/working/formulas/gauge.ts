// Readings of a gauge.

export * from "./gaugeDraws.js";
export * from "./gaugeErrors.js";
export * from "./gaugeEvidence.js";
export * from "./gaugeFit.js";
export * from "./gaugeGrowth.js";
export * from "./gaugeLawTable.js";
export * from "./gaugeModel.js";
export * from "./gaugeScatter.js";
export * from "./gaugeShares.js";
export * from "./gaugeTerms.js";
export * from "./gaugeTimes.js";
export * from "./gaugeTold.js";
