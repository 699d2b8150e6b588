import { formula } from "../Formula.js";

const between = (unit: "1" | "s") =>
  ({
    text: "a + (b - a) * (q - u) / (v - u)",
    symbols: {
      a: ["the draw before", unit],
      b: ["the draw after", unit],
      q: ["share of the weight that lies below", "1", "ratio"],
      u: ["share that lies below the middle of the draw before", "1", "ratio"],
      v: ["share that lies below the middle of the draw after", "1", "ratio"],
    },
    holds: "draws sorted by size, each with its weight; straight between the middles of their weights",
    accuracy: "that of some hundred draws a law",
    source: "importance sampling: T. Kloek and H. K. van Dijk, Econometrica 46 (1978) 1, from memory",
  }) as const;

/** A quantile of draws. */
export const ratioQuantile = formula({
  id: "gauge-ratio-quantile",
  name: "What a share of the drawn resistances stays below",
  result: ["r", "resistance over clean", "1"],
  ...between("1"),
});
export const timeQuantile = formula({
  id: "gauge-time-quantile",
  name: "What a share of the drawn times left stays below",
  result: ["t", "running time left", "s"],
  ...between("s"),
});
