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
