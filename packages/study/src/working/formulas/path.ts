import { formula } from "../Formula.js";

const exact = { accuracy: "that of its terms", source: "definition" } as const;
const balance = "the energy equation along a path, as in F. M. White, Fluid Mechanics (7th ed. 2011)";

/** Vacuum at the end of the suction path. */
export const vacuumSum = formula({
  id: "vacuum",
  name: "Vacuum: what everything from the tank on costs",
  text: "sum(d)",
  symbols: { d: ["what it costs; negative where it helps", "Pa"] },
  result: ["V", "vacuum", "Pa", "vacuum"],
  holds: "steady flow; a gauge at the end of the path reads it",
  accuracy: "that of its terms",
  source: balance,
});

/** Pressures one after another along a path. */
export const dropSum = formula({
  id: "drops-in-series",
  name: "Drops one after another add up",
  text: "sum(d)",
  symbols: { d: ["drop of one part", "Pa"] },
  result: ["dp", "drop of all of them", "Pa"],
  holds: "parts one after another that share a flow",
  ...exact,
});

/** Flows side by side. */
export const flowSum = formula({
  id: "flows-side-by-side",
  name: "Flows side by side add up",
  text: "sum(Q)",
  symbols: { Q: ["flow of one branch", "m3/s"] },
  result: ["Q", "flow of all branches", "m3/s"],
  holds: "branches that leave one point and meet at another",
  ...exact,
});

/** What the tank gives: its vent's vacuum, less the fuel standing over the pick-up. */
export const tankCost = formula({
  id: "tank",
  name: "What a tank costs: its vent's vacuum less the fuel's own head",
  text: "p_h - rho * g * h",
  symbols: {
    p_h: ["vacuum its vent holds", "Pa", "vacuum"],
    rho: ["density of the fuel", "kg/m3"],
    g: ["acceleration of free fall", "m/s2"],
    h: ["fuel over the pick-up", "m"],
  },
  result: ["d", "what the tank costs; negative where it helps", "Pa"],
  holds: "a tank at rest",
  ...exact,
});

/** Pressure behind something that costs. */
export const pressureAfter = formula({
  id: "pressure-behind",
  name: "Pressure behind a part, as a gauge at its own height reads it",
  text: "p - sum(d) - p_k",
  symbols: {
    p: ["pressure where the path begins", "Pa", "absolute pressure"],
    d: ["what each part on the way costs", "Pa"],
    p_k: ["pressure of the fuel's motion there", "Pa"],
  },
  result: ["p", "pressure behind it", "Pa", "absolute pressure"],
  holds: "steady flow",
  accuracy: "that of its terms",
  source: balance,
});

/** Air pressure less what has been spent. */
export const pressureOfVacuum = formula({
  id: "absolute-of-vacuum",
  name: "Absolute pressure of a vacuum",
  text: "p_a - V",
  symbols: { p_a: ["air pressure", "Pa", "absolute pressure"], V: ["vacuum, or what has been spent", "Pa", "vacuum"] },
  result: ["p", "absolute pressure", "Pa", "absolute pressure"],
  holds: "always",
  ...exact,
});

/** Pressure at the pump's outlet. */
export const outletPressure = formula({
  id: "outlet-pressure",
  name: "Pressure at the pump's outlet",
  text: "p_a - V + p",
  symbols: {
    p_a: ["air pressure", "Pa", "absolute pressure"],
    V: ["vacuum at the pump's inlet", "Pa", "vacuum"],
    p: ["pressure rise of the pump", "Pa"],
  },
  result: ["p_o", "pressure at the pump's outlet", "Pa", "absolute pressure"],
  holds: "steady flow",
  ...exact,
});

/** Least of several pressures. */
export const lowestPressure = formula({
  id: "lowest-pressure",
  name: "Lowest pressure anywhere on the way",
  text: "min(p)",
  symbols: { p: ["pressure at one place", "Pa", "absolute pressure"] },
  result: ["p_m", "lowest pressure", "Pa", "absolute pressure"],
  holds: "steady flow",
  ...exact,
});

/** Share of what a side costs. */
export const costShare = formula({
  id: "cost-share",
  name: "Share of all that costs on its side of the pump",
  text: "max(0 * d, d) / sum(c)",
  symbols: { d: ["what it costs", "Pa"], c: ["what each part that costs does cost", "Pa"] },
  result: ["s", "share of all that costs", "1", "ratio"],
  holds: "what helps has no share",
  ...exact,
});

/** The lower of two ends. */
export const lowerEnd = formula({
  id: "lower-end",
  name: "Low end of a figure known as a band",
  text: "min(p)",
  symbols: { p: ["figure at each end of what is known", "Pa"] },
  result: ["p_l", "low end", "Pa"],
  holds: "always",
  ...exact,
});

/** The higher of two ends. */
export const higherEnd = formula({
  id: "higher-end",
  name: "High end of a figure known as a band",
  text: "max(p)",
  symbols: { p: ["figure at each end of what is known", "Pa"] },
  result: ["p_h", "high end", "Pa"],
  holds: "always",
  ...exact,
});
