import { formula } from "../Formula.js";

const balance = "mass balance of a stirred tank, e.g. O. Levenspiel, Chemical Reaction Engineering; from memory";
const steady = "the steady balance: a tank turns over in hours, elements fill in hundreds of them";

/** Solids of one size in the tank. */
export const tankSolids = formula({
  id: "tank-balance",
  name: "Solids of one size in the tank: what is delivered, thinned by what returns clean",
  text: "c_d * x / (x + (1 - x) * (1 - P) + z * (1 - S))",
  symbols: {
    c_d: ["solids of that size in the delivered fuel", "kg/m3", "solids"],
    x: ["burn over demand", "1", "ratio"],
    P: ["share of that size left at the end of the path", "1", "ratio"],
    z: ["what relief sends back to the tank over demand", "1", "ratio"],
    S: ["share of that size left at the pump", "1", "ratio"],
  },
  result: ["c", "solids of that size in the tank", "kg/m3", "solids"],
  holds: steady,
  accuracy: "nothing is taken to settle in the tank, the safe side for the filters",
  source: balance,
});

/** Solids of all sizes. */
export const solidsSum = formula({
  id: "solids",
  name: "Solids of all sizes",
  text: "sum(c)",
  symbols: { c: ["solids of one size", "kg/m3", "solids"] },
  result: ["c", "solids", "kg/m3", "solids"],
  holds: "always",
  accuracy: "that of the sizes",
  source: "definition",
});

/** Solids left at a place. */
export const solidsLeft = formula({
  id: "solids-left",
  name: "Solids left at a place on the way",
  text: "sum(c * p)",
  symbols: {
    c: ["solids of one size in the tank", "kg/m3", "solids"],
    p: ["share of that size left there", "1", "ratio"],
  },
  result: ["c", "solids", "kg/m3", "solids"],
  holds: "elements that catch as they did on test dust",
  accuracy: "that betas from test dust carry over to field dirt is an assumption",
  source: balance,
});

/** Particles of a size and up at a place. */
export const countLeft = formula({
  id: "count-left",
  name: "Particles of a size and up at a place on the way",
  text: "sum(n * s * p)",
  symbols: {
    n: ["particles of one size in the delivered fuel", "1/m3"],
    s: ["share of that size in the tank", "1", "ratio"],
    p: ["share of that left there", "1", "ratio"],
  },
  result: ["N", "particles of that size and up", "1/m3"],
  holds: "elements that catch as they did on test dust",
  accuracy: "that betas from test dust carry over to field dirt is an assumption",
  source: balance,
});

/** Share of one size in the tank over that delivered. */
export const tankShare = formula({
  id: "tank-share",
  name: "Share of one size in the tank over that delivered",
  text: "x / (x + (1 - x) * (1 - P) + z * (1 - S))",
  symbols: {
    x: ["burn over demand", "1", "ratio"],
    P: ["share of that size left at the end of the path", "1", "ratio"],
    z: ["what relief sends back to the tank over demand", "1", "ratio"],
    S: ["share of that size left at the pump", "1", "ratio"],
  },
  result: ["s", "share of that size in the tank", "1", "ratio"],
  holds: steady,
  accuracy: "nothing is taken to settle in the tank, the safe side for the filters",
  source: balance,
});

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
