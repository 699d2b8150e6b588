import { formula } from "../Formula.js";

const r = ["resistance over the clean one", "1"] as const;
const table = {
  holds: "from clean to ten thousand times clean, in 600 even steps of the logarithm",
  accuracy: "that of a straight line between the steps: a part in thirty thousand of the resistance",
  source: "interpolation",
} as const;

/** The step of a law's table. */
export const lawStep = formula({
  id: "gauge-law-step",
  name: "Step of a law's table",
  text: "log(M) / n",
  symbols: { M: ["most resistance over clean in the table", "1"], n: ["steps of the table", "1"] },
  result: ["h", "step of the resistance's logarithm", "1"],
  ...table,
});

/** A resistance of the table. */
export const lawNode = formula({
  id: "gauge-law-node",
  name: "Resistance at a step of a law's table",
  text: "exp(h * k)",
  symbols: { h: ["step of the resistance's logarithm", "1"], k: ["number of the step", "1"] },
  result: ["r", "resistance over the clean one", "1"],
  ...table,
});

const ends = {
  h: ["step of the resistance's logarithm", "1"],
  k: ["number of the step below", "1"],
  a: ["load at the step below", "1"],
  b: ["load at the step above", "1"],
} as const;

/** Load at a resistance, by the table. */
export const loadBetween = formula({
  id: "gauge-load-between",
  name: "Load at a resistance, between two steps of a law's table",
  text: "a + (log(r) / h - k) * (b - a)",
  symbols: { ...ends, r },
  result: ["l", "load", "1"],
  ...table,
});

/** Resistance at a load, by the table. */
export const ratioBetween = formula({
  id: "gauge-ratio-between",
  name: "Resistance at a load, between two steps of a law's table",
  text: "exp(h * (k + (l - a) / (b - a)))",
  symbols: { ...ends, l: ["load", "1"] },
  result: ["r", "resistance over the clean one", "1"],
  ...table,
});
