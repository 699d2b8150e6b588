import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;

/** What an engine burns, from its power. */
export const burnByPower = formula({
  id: "burn-by-power",
  name: "Burn of an engine from its power",
  text: "P * b / rho",
  symbols: {
    P: ["power", "W"],
    b: ["specific consumption", "kg/J"],
    rho: ["density of the fuel", "kg/m3"],
  },
  result: ["Q_b", "burn", "m3/s"],
  holds: "at that power; specific consumption rises at part load",
  ...exact,
});

/** Burn and return together. */
export const demandSum = formula({
  id: "demand",
  name: "Demand: burn and return together",
  text: "Q_b + Q_r",
  symbols: { Q_b: ["burn", "m3/s"], Q_r: ["return", "m3/s"] },
  result: ["Q", "demand", "m3/s"],
  holds: "always",
  ...exact,
});

/** A share of the demand when another is asked for. */
export const scaledFlow = formula({
  id: "scaled-demand",
  name: "Burn or return at another demand, in proportion",
  text: "q * Q_a / Q_f",
  symbols: {
    q: ["burn or return by the file", "m3/s"],
    Q_a: ["demand asked for", "m3/s"],
    Q_f: ["demand by the file", "m3/s"],
  },
  result: ["q_a", "burn or return", "m3/s"],
  holds: "burn and return scale together",
  accuracy: "a choice, not a law",
  source: "common practice, no source",
});
