import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;

/** Vacuum limit of published guidance. */
export const guidanceLimit = formula({
  id: "guidance-limit",
  name: "Vacuum limit of published guidance",
  text: "n * p_1",
  symbols: { n: ["limit in inches of mercury", "1"], p_1: ["one conventional inch of mercury", "Pa"] },
  result: ["V_l", "vacuum limit", "Pa", "vacuum"],
  holds: "diesel lift pumps, where the machine's own manual gives none",
  accuracy: "guidance of one engine family",
  source: "US Army TM 5-3895-346-14 and TM 5-3810-300-24&P-3 item 11",
});

/** What is in hand. */
export const inHand = formula({
  id: "in-hand",
  name: "In hand: ceiling over demand, minus one",
  text: "Q_c / Q - 1",
  symbols: { Q_c: ["supply ceiling", "m3/s"], Q: ["demand, or the pump's own flow", "m3/s"] },
  result: ["i", "in hand", "1", "ratio"],
  holds: "always",
  ...exact,
});

/** The least of several. */
export const leastInHand = formula({
  id: "least-in-hand",
  name: "In hand: the least of what the limits leave",
  text: "min(i)",
  symbols: { i: ["in hand before each limit binds", "1", "ratio"] },
  result: ["i", "in hand", "1", "ratio"],
  holds: "always",
  ...exact,
});

/** The lowest of the limits' ceilings. */
export const lowestCeiling = formula({
  id: "supply-ceiling",
  name: "Supply ceiling: the least flow at which a limit is met",
  text: "min(Q)",
  symbols: { Q: ["largest demand each limit allows", "m3/s"] },
  result: ["Q_c", "supply ceiling", "m3/s"],
  holds: "always",
  ...exact,
});

/** The higher of several flows. */
export const highestCeiling = formula({
  id: "highest-flow",
  name: "The largest of several flows",
  text: "max(Q)",
  symbols: { Q: ["flow", "m3/s"] },
  result: ["Q_c", "flow", "m3/s"],
  holds: "always",
  ...exact,
});

/** The higher of several shares. */
export const mostInHand = formula({
  id: "most-in-hand",
  name: "The largest of several figures in hand",
  text: "max(i)",
  symbols: { i: ["in hand", "1", "ratio"] },
  result: ["i", "in hand", "1", "ratio"],
  holds: "always",
  ...exact,
});

/** Vacuum still free for soil. */
export const riseFree = formula({
  id: "rise-free",
  name: "Vacuum still free for soil",
  text: "V_l - V",
  symbols: { V_l: ["vacuum limit at change", "Pa", "vacuum"], V: ["vacuum with clean elements", "Pa", "vacuum"] },
  result: ["p", "rise still free", "Pa", "vacuum"],
  holds: "always",
  ...exact,
});

/** Pressure over the vapour pressure. */
export const vapourMargin = formula({
  id: "vapour-margin",
  name: "Pressure over the vapour pressure",
  text: "p - p_v",
  symbols: {
    p: ["lowest pressure on the way", "Pa", "absolute pressure"],
    p_v: ["vapour pressure of the fuel", "Pa", "absolute pressure"],
  },
  result: ["m", "vapour margin", "Pa"],
  holds: "always",
  ...exact,
});

/** Restriction at which an element shows a drop. */
export const restrictionAtDrop = formula({
  id: "restriction-at-drop",
  name: "Resistance over clean at which an element shows a drop",
  text: "1 + (p_t - d) / (mu * R * Q)",
  symbols: {
    p_t: ["terminal drop", "Pa"],
    d: ["drop of the clean element", "Pa"],
    mu: ["dynamic viscosity of the fuel", "Pa s"],
    R: ["resistance of the clean medium", "1/m3"],
    Q: ["flow through it", "m3/s"],
  },
  result: ["r", "resistance over the clean one", "1"],
  holds: "soil multiplies the linear term of the medium only",
  accuracy: "that of the terminal drop",
  source: "J. Bear, Dynamics of Fluids in Porous Media (1972): Darcy's law solved for the resistance",
});
