import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;
const practice = { accuracy: "a choice, not a law", source: "common practice, no source" } as const;

/** What a change buys. */
export const ceilingGained = formula({
  id: "ceiling-gained",
  name: "Supply ceiling gained by a change",
  text: "Q_2 / Q_1 - 1",
  symbols: { Q_2: ["ceiling with the change", "m3/s"], Q_1: ["ceiling without it", "m3/s"] },
  result: ["g", "ceiling gained", "1", "ratio"],
  holds: "each at the temperature where least is in hand",
  ...exact,
});

/** How far clean elements are over their limit. */
export const overClean = formula({
  id: "over-clean-limit",
  name: "Vacuum of clean elements over the clean limit",
  text: "max(V) - V_l",
  symbols: { V: ["vacuum at each temperature", "Pa", "vacuum"], V_l: ["clean limit", "Pa", "vacuum"] },
  result: ["V_o", "vacuum over the clean limit", "Pa", "vacuum"],
  holds: "at the bad end of what is known",
  ...exact,
});

/** What several changes cost. */
export const changesCost = formula({
  id: "changes-cost",
  name: "Stated cost of several changes",
  text: "sum(c)",
  symbols: { c: ["stated cost of a change", "stated currency"] },
  result: ["C", "cost", "stated currency"],
  holds: "changes that cost the same together as apart",
  ...exact,
});

/** A run made shorter. */
export const shorterRun = formula({
  id: "shorter-run",
  name: "Length tried for a shorter run",
  text: "x * L",
  symbols: { x: ["share of it that stays", "1", "ratio"], L: ["length of the run", "m"] },
  result: ["L_s", "length tried", "m"],
  holds: "where nothing says how much shorter it can be",
  ...practice,
});

/** A bore beyond those of hose as sold. */
export const widerBore = formula({
  id: "wider-bore",
  name: "Bore tried beyond the list of hoses",
  text: "x * D",
  symbols: { x: ["how much wider", "1"], D: ["bore now", "m", "bore"] },
  result: ["D_w", "bore tried", "m", "bore"],
  holds: "where no larger hose is listed",
  ...practice,
});

/** A tank kept half full. */
export const fullerTank = formula({
  id: "fuller-tank",
  name: "Depth tried for a fuller tank: half of a full one",
  text: "h / 2",
  symbols: { h: ["depth of the full tank", "m"] },
  result: ["h_t", "depth tried", "m"],
  holds: "a tank that is run lower than half full",
  ...practice,
});

/** How many arrangements there are. */
export const arrangementsCount = formula({
  id: "arrangements",
  name: "How many arrangements there are",
  text: "b * sum((e * p)^k)",
  symbols: {
    b: ["how many bores", "1"],
    e: ["how many elements the catalogue has", "1"],
    p: ["most side by side", "1"],
    k: ["how many stages", "1"],
  },
  result: ["N", "arrangements", "1"],
  holds: "any element in any stage, from one to the most side by side",
  ...exact,
});

/** How many are left. */
export const arrangementsLeft = formula({
  id: "arrangements-left",
  name: "Arrangements that meet every limit: all but those that fail",
  text: "N - sum(f)",
  symbols: { N: ["all arrangements", "1"], f: ["how many fail by each thing", "1"] },
  result: ["n", "arrangements that pass", "1"],
  holds: "every arrangement is counted once, by the first thing it fails by",
  ...exact,
});

/** A temperature between two that are searched at. */
export const evenTemperature = formula({
  id: "even-temperature",
  name: "Temperature in even steps from the coldest to the warmest",
  text: "T_1 + (T_2 - T_1) * i / n",
  symbols: {
    T_1: ["coldest", "K"],
    T_2: ["warmest", "K"],
    i: ["place of the step, from 0", "1"],
    n: ["how many steps, of 5 K at most", "1"],
  },
  result: ["T", "temperature", "K"],
  holds: "what binds between the steps lies within a step",
  ...practice,
});

/** Elements of all stages. */
export const elementsInAll = formula({
  id: "elements-in-all",
  name: "Elements of all stages together",
  text: "sum(n)",
  symbols: { n: ["elements of a stage", "1"] },
  result: ["n", "elements", "1"],
  holds: "always",
  ...exact,
});

/** Elements changed in a year. */
export const elementsChanged = formula({
  id: "elements-changed",
  name: "Elements changed in a year",
  text: "n * c",
  symbols: { n: ["elements", "1"], c: ["changes in a year", "1"] },
  result: ["N", "elements changed in a year", "1"],
  holds: "all changed together",
  ...exact,
});
