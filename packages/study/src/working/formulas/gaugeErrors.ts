import { formula } from "../Formula.js";

const practice = { accuracy: "what is usual, no more", source: "common practice, no source" } as const;

/** How far the zero may be off. */
export const zeroSpread = formula({
  id: "gauge-zero-spread",
  name: "How far the zero of all readings may be off",
  text: "sqrt(a^2 + b^2)",
  symbols: {
    a: ["the gauge's own zero", "Pa"],
    b: ["what else is the same at every reading: an unknown level, or the pump's rise", "Pa"],
  },
  result: ["s", "standard deviation of the zero", "Pa"],
  holds: "errors that have nothing to do with each other",
  ...practice,
});

/** A level anywhere between full and low. */
export const levelSpread = formula({
  id: "gauge-level-spread",
  name: "What a level anywhere between full and low makes of all readings",
  text: "R / sqrt(12)",
  symbols: { R: ["vacuum from full to low", "Pa"] },
  result: ["b", "standard deviation", "Pa"],
  holds: "any level is as likely as any other",
  accuracy: "exact",
  source: "standard deviation of an even distribution",
});

/** What a tank's level makes of a vacuum. */
export const levelRange = formula({
  id: "gauge-level-range",
  name: "Vacuum from a full tank to a low one",
  text: "rho * g * (h - l)",
  symbols: {
    rho: ["density of the fuel", "kg/m3"],
    g: ["free fall", "m/s2"],
    h: ["fuel over the pick-up when full", "m"],
    l: ["fuel over the pick-up when low", "m"],
  },
  result: ["R", "vacuum from full to low", "Pa"],
  holds: "the first tank of the file",
  accuracy: "that of the depths",
  source: "hydrostatics",
});

/** What a relief valve's setting makes of all feed pressures. */
export const riseSpread = formula({
  id: "gauge-rise-spread",
  name: "What a pump's rise makes of all feed pressures",
  text: "x * p",
  symbols: { x: ["how far a relief valve is off", "1", "ratio"], p: ["rise of the pump by the file", "Pa"] },
  result: ["b", "standard deviation", "Pa"],
  holds: "one error for all readings alike",
  ...practice,
});
