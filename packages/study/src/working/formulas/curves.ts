import { formula } from "../Formula.js";

/** Where a curve ends. */
export const curveEnd = formula({
  id: "curve-end",
  name: "Where a curve ends: a bit beyond what is to be seen",
  text: "b * max(Q)",
  symbols: { b: ["how far beyond", "1"], Q: ["demand, and the ceilings that are near", "m3/s"] },
  result: ["Q_e", "end of the curve", "m3/s"],
  holds: "ceilings within four times the demand",
  accuracy: "a choice, not a law",
  source: "common practice, no source",
});

/** A point of a curve. */
export const curvePoint = formula({
  id: "curve-point",
  name: "Demand at a point of a curve",
  text: "Q_e * i / n",
  symbols: {
    Q_e: ["end of the curve", "m3/s"],
    i: ["place of the point, from 0", "1"],
    n: ["steps of the curve", "1"],
  },
  result: ["Q", "demand at the point", "m3/s"],
  holds: "points evenly apart",
  accuracy: "exact",
  source: "definition",
});
