import { formula } from "../Formula.js";

const balance = "mass balance of a stirred tank, e.g. O. Levenspiel, Chemical Reaction Engineering; from memory";

/** Share of a size that passes a filter, one after another. */
export const passedInSeries = formula({
  id: "passed-in-series",
  name: "Share of one size that passes a filter",
  text: "p * (1 - E)",
  symbols: { p: ["share that reaches it", "1", "ratio"], E: ["share of that size it catches", "1", "ratio"] },
  result: ["p", "share that is left", "1", "ratio"],
  holds: "an element that catches as it did on test dust",
  accuracy: "that of the betas",
  source: "ISO 16889:2022",
  checkedBy: ["soil/beta-efficiency"],
});

/** Branches each clean their part of the flow. */
export const passedSideBySide = formula({
  id: "passed-side-by-side",
  name: "Share of one size behind branches side by side",
  text: "sum(q * p)",
  symbols: { q: ["branch's share of the flow", "1", "ratio"], p: ["share left behind the branch", "1", "ratio"] },
  result: ["p", "share that is left", "1", "ratio"],
  holds: "branches that mix well where they meet",
  accuracy: "that of the split",
  source: balance,
});

/** One flow over another. */
export const flowRatio = formula({
  id: "flow-ratio",
  name: "One flow over another",
  text: "q / Q",
  symbols: { q: ["flow", "m3/s"], Q: ["demand, or the whole flow", "m3/s"] },
  result: ["x", "share of the flow", "1", "ratio"],
  holds: "always",
  accuracy: "exact",
  source: "definition",
});

/** What relief sends back over the demand. */
export const reliefRatio = formula({
  id: "relief-ratio",
  name: "What relief sends back to the tank, over demand",
  text: "q / Q - 1",
  symbols: { q: ["suction flow", "m3/s"], Q: ["demand", "m3/s"] },
  result: ["z", "what relief sends back over demand", "1", "ratio"],
  holds: "always",
  accuracy: "exact",
  source: "definition",
});
