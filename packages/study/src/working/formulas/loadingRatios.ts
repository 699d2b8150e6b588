import { formula } from "../Formula.js";

const hermia = "J. Hermia, Trans. IChemE 60 (1982) 183";
const bolton = "G. Bolton, D. LaCasse and R. Kuriyel, J. Membrane Sci. 277 (2006) 75";
const m = ["soil on the element", "kg"] as const;
const r = ["r", "resistance over the clean one", "1"] as const;
const accuracy = "one capacity test cannot tell which law it is; the laws agree at the test and differ beyond it";
const checkedBy = ["soil/loading-laws-ratio", "soil/exact-loading-ratio"];
const constants = {
  cake: ["constant of a growing cake", "1/kg"],
  intermediate: ["constant of pores closed, some particles on others", "1/kg"],
  standard: ["constant of pores that narrow", "1/kg"],
  complete: ["constant of pores closed one by one", "1/kg"],
} as const;
const rest = { holds: "soil below where the medium is plugged", accuracy, checkedBy } as const;
const A = (name: keyof typeof constants) => constants[name];

/** Resistance ratio of each law at a load of soil. */
export const ratios = {
  cake: formula({
    id: "loading-cake",
    name: "Cake law",
    text: "1 + K * m",
    symbols: { K: constants.cake, m },
    result: r,
    source: hermia,
    ...rest,
  }),
  intermediate: formula({
    id: "loading-intermediate",
    name: "Intermediate blocking law",
    text: "exp(K * m)",
    symbols: { K: constants.intermediate, m },
    result: r,
    source: hermia,
    ...rest,
  }),
  standard: formula({
    id: "loading-standard",
    name: "Standard blocking law",
    text: "(1 - K * m / 2)^(-2)",
    symbols: { K: constants.standard, m },
    result: r,
    source: hermia,
    ...rest,
  }),
  complete: formula({
    id: "loading-complete",
    name: "Complete blocking law",
    text: "1 / (1 - K * m)",
    symbols: { K: constants.complete, m },
    result: r,
    source: hermia,
    ...rest,
  }),
} as const;

/** Resistance ratio of each pair of laws at a load of soil. */
export const pairRatios = {
  "cake-complete": formula({
    id: "loading-cake-complete",
    name: "Cake and complete blocking together",
    text: "(1 - A / B * log(1 - B * m)) / (1 - B * m)",
    symbols: { A: A("cake"), B: A("complete"), m },
    result: r,
    source: bolton,
    ...rest,
  }),
  "cake-intermediate": formula({
    id: "loading-cake-intermediate",
    name: "Cake and intermediate blocking together",
    text: "(1 + A / B * (exp(B * m) - 1)) * exp(B * m)",
    symbols: { A: A("cake"), B: A("intermediate"), m },
    result: r,
    source: bolton,
    ...rest,
  }),
  "complete-standard": formula({
    id: "loading-complete-standard",
    name: "Complete and standard blocking together",
    text: "(1 + A / (2 * B) * log(1 - B * m))^(-2) / (1 - B * m)",
    symbols: { A: A("standard"), B: A("complete"), m },
    result: r,
    source: bolton,
    ...rest,
  }),
  "intermediate-standard": formula({
    id: "loading-intermediate-standard",
    name: "Intermediate and standard blocking together",
    text: "(1 - A / (2 * B) * (exp(B * m) - 1))^(-2) * exp(B * m)",
    symbols: { A: A("standard"), B: A("intermediate"), m },
    result: r,
    source: bolton,
    ...rest,
  }),
  "cake-standard": formula({
    id: "loading-cake-standard",
    name: "Cake and standard blocking together",
    text: "A * m + (1 - B * m / 2)^(-2)",
    symbols: { A: A("cake"), B: A("standard"), m },
    result: r,
    source: bolton,
    ...rest,
  }),
} as const;
