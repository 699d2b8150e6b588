import { formula } from "../Formula.js";

const balance = "mass balance of a stirred tank, e.g. O. Levenspiel, Chemical Reaction Engineering; from memory";

/** How fast a filter catches soil. */
export const catchRate = formula({
  id: "catch-rate",
  name: "How fast a filter catches soil",
  text: "Q * sum(c * p * E)",
  symbols: {
    Q: ["flow through it", "m3/s"],
    c: ["solids of one size in the tank", "kg/m3", "solids"],
    p: ["share of that size that reaches it", "1", "ratio"],
    E: ["share of that size it catches", "1", "ratio"],
  },
  result: ["g", "soil caught in a time", "kg/s"],
  holds: "an element that catches as it did on test dust",
  accuracy: "that betas from test dust carry over to field dirt is an assumption",
  source: balance,
});

/** The mean over the loads of a season. */
export const overLoads = formula({
  id: "mean-over-loads",
  name: "Mean over the loads of a season",
  text: "sum(x * g)",
  symbols: {
    x: ["share of the running time", "1", "ratio"],
    g: ["soil or water caught in a time at that load", "kg/s"],
  },
  result: ["g", "mean of what is caught in a time", "kg/s"],
  holds: "loads mixed finely within a season",
  accuracy: "that of its terms",
  source: "definition",
});

/** Efficiency of one size from betas at its edges. */
export const fractional = formula({
  id: "efficiency-from-betas",
  name: "Share of one size caught, from the betas at its edges",
  text: "(1 - (N_1 / b_1 - N_2 / b_2) / (N_1 - N_2)) * (1 - k)",
  symbols: {
    N_1: ["test dust of the lower edge and up", "1/m3"],
    b_1: ["beta at the lower edge", "1"],
    N_2: ["test dust of the upper edge and up", "1/m3"],
    b_2: ["beta at the upper edge", "1"],
    k: ["share that slips past the seal", "1", "ratio"],
  },
  result: ["E", "share of that size it catches", "1", "ratio"],
  holds: "the test dust; held at 0 where a bin would have to gain particles",
  accuracy: "that of the betas",
  source: "ISO 16889:2022 and ISO 19438:2023: beta is a ratio of all particles from a size up",
  checkedBy: ["soil/beta-line", "soil/beta-efficiency"],
});

/** Share of the solids that no count carries. */
export const beyondCounts = formula({
  id: "beyond-counts",
  name: "Share of the solids beyond the counted sizes",
  text: "sum(c) / C",
  symbols: {
    c: ["solids of one size beyond the counts", "kg/m3", "solids"],
    C: ["solids of all sizes", "kg/m3", "solids"],
  },
  result: ["s", "share beyond the counted sizes", "1", "ratio"],
  holds: "sizes below the smallest and above the largest counted",
  accuracy: "as uncertain as carrying the outer counts on is",
  source: "definition",
});

/** Beta that the shares caught come to on the test dust. */
export const betaHeld = formula({
  id: "beta-held",
  name: "Beta that the shares caught come to on the test dust",
  text: "sum(n) / sum(n * (1 - E))",
  symbols: { n: ["test dust of one size", "1/m3"], E: ["share of that size caught", "1", "ratio"] },
  result: ["b", "beta on the test dust", "1"],
  holds: "particles of the size and up",
  accuracy: "that of the betas",
  source: "ISO 16889:2022",
  checkedBy: ["soil/beta-efficiency"],
});
