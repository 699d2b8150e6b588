import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;

/** Pressure at the injection pump. */
export const feedPressure = formula({
  id: "feed-pressure",
  name: "Feed pressure: what the pump gives less what both sides cost",
  text: "p - V - sum(d) - p_k",
  symbols: {
    p: ["pressure rise of the pump", "Pa"],
    V: ["vacuum at its inlet", "Pa", "vacuum"],
    d: ["what each part of the delivery costs", "Pa"],
    p_k: ["pressure of the fuel's motion at the end", "Pa"],
  },
  result: ["p_f", "feed pressure, gauge", "Pa"],
  holds: "steady flow",
  accuracy: "that of its terms",
  source: "the energy equation along a path, as in F. M. White, Fluid Mechanics (7th ed. 2011)",
});

/** Pressure at the pump's outlet, where no delivery is stated. */
export const feedAtPump = formula({
  id: "feed-at-pump",
  name: "Feed pressure where no delivery side is stated",
  text: "p - V",
  symbols: { p: ["pressure rise of the pump", "Pa"], V: ["vacuum at its inlet", "Pa", "vacuum"] },
  result: ["p_f", "feed pressure, gauge", "Pa"],
  holds: "a delivery side that costs nothing",
  ...exact,
});

/** Pressure at the engine with no pump. */
export const gravityFeed = formula({
  id: "gravity-feed",
  name: "Pressure at the engine with no pump",
  text: "-V",
  symbols: { V: ["vacuum at the engine, negative where the fuel stands above it", "Pa", "vacuum"] },
  result: ["p_f", "feed pressure, gauge", "Pa"],
  holds: "a tank that stands above",
  ...exact,
});

/** Rise a limit asks of a pump. */
export const neededRise = formula({
  id: "needed-rise",
  name: "Rise asked of a pump by the feed pressure",
  text: "p_l + sum(d) + p_k + V",
  symbols: {
    p_l: ["least feed pressure", "Pa"],
    d: ["what each part of the delivery costs", "Pa"],
    p_k: ["pressure of the fuel's motion at the end", "Pa"],
    V: ["vacuum at its inlet", "Pa", "vacuum"],
  },
  result: ["p", "rise asked of the pump", "Pa"],
  holds: "steady flow",
  ...exact,
});

/** The same where no delivery is stated. */
export const neededAtPump = formula({
  id: "needed-at-pump",
  name: "Rise asked of a pump where no delivery side is stated",
  text: "p_l + V",
  symbols: { p_l: ["least feed pressure", "Pa"], V: ["vacuum at its inlet", "Pa", "vacuum"] },
  result: ["p", "rise asked of the pump", "Pa"],
  holds: "a delivery side that costs nothing",
  ...exact,
});
