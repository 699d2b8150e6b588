import { formula } from "../Formula.js";

const fitted = {
  accuracy: "that of the fit",
  source: "definition",
  holds: "soil that comes evenly in running time",
} as const;

/** Resistance at the beginning, where nothing is known of it. */
export const begunRatio = formula({
  id: "gauge-begun",
  name: "Resistance at the first reading, fitted by its logarithm",
  text: "1 + exp(b)",
  symbols: { b: ["logarithm of the resistance over clean, less 1", "1"] },
  result: ["r_0", "resistance over clean at the first reading", "1"],
  ...fitted,
});

/** Resistance at the end. */
export const endedRatio = formula({
  id: "gauge-ended",
  name: "Resistance at the last reading, fitted by the logarithm of its growth",
  text: "r_0 + exp(g)",
  symbols: { r_0: ["resistance over clean at the beginning", "1"], g: ["logarithm of what it grew by", "1"] },
  result: ["r_n", "resistance over clean at the last reading", "1"],
  ...fitted,
});

/** How fast soil comes. */
export const loadRate = formula({
  id: "gauge-load-rate",
  name: "Soil a second, as load, from the fit",
  text: "(b - a) / max(s, T - t)",
  symbols: {
    a: ["load at the beginning", "1"],
    b: ["load at the last reading", "1"],
    s: ["a second, the least there may lie between", "s"],
    T: ["running time at the last reading", "s"],
    t: ["running time at the beginning", "s"],
  },
  result: ["k", "load that comes in a second", "1/s"],
  ...fitted,
});

/** Load at a running time. */
export const loadAt = formula({
  id: "gauge-load-at",
  name: "Load at a running time",
  text: "a + k * (t - s)",
  symbols: {
    a: ["load at the beginning", "1"],
    k: ["load that comes in a second", "1/s"],
    t: ["running time", "s"],
    s: ["running time at the beginning", "s"],
  },
  result: ["l", "load", "1"],
  ...fitted,
});
