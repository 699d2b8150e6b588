import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;

/** What an engine burns, from its power. */
export const burnByPower = formula({
  id: "burn-by-power",
  name: "Burn of an engine from its power",
  text: "P * b / rho",
  symbols: {
    P: ["power", "W"],
    b: ["specific consumption", "kg/J"],
    rho: ["density of the fuel", "kg/m3"],
  },
  result: ["Q_b", "burn", "m3/s"],
  holds: "at that power; specific consumption rises at part load",
  ...exact,
});

/** Burn and return together. */
export const demandSum = formula({
  id: "demand",
  name: "Demand: burn and return together",
  text: "Q_b + Q_r",
  symbols: { Q_b: ["burn", "m3/s"], Q_r: ["return", "m3/s"] },
  result: ["Q", "demand", "m3/s"],
  holds: "always",
  ...exact,
});

/** A share of the demand when another is asked for. */
export const scaledFlow = formula({
  id: "scaled-demand",
  name: "Burn or return at another demand, in proportion",
  text: "q * Q_a / Q_f",
  symbols: {
    q: ["burn or return by the file", "m3/s"],
    Q_a: ["demand asked for", "m3/s"],
    Q_f: ["demand by the file", "m3/s"],
  },
  result: ["q_a", "burn or return", "m3/s"],
  holds: "burn and return scale together",
  accuracy: "a choice, not a law",
  source: "common practice, no source",
});

/** How a pump's slip grows with its rise. */
export const slipPerRise = formula({
  id: "slip-per-rise",
  name: "Slip of a pump per pressure rise",
  text: "q / p * mu_t / mu",
  symbols: {
    q: ["slip as measured", "m3/s"],
    p: ["pressure rise it was measured at", "Pa"],
    mu_t: ["dynamic viscosity it was measured at", "Pa s"],
    mu: ["dynamic viscosity of the fuel", "Pa s"],
  },
  result: ["k", "slip per pressure rise", "m3/(Pa s)"],
  holds: "laminar flow through the pump's gaps",
  accuracy: "that of the measurement",
  source: "W. E. Wilson (1946), as in D. McCloy and H. R. Martin, Control of Fluid Power",
  checkedBy: ["pumps/wilson", "pumps/flat-gap-slip"],
});

/** Rise that slip leaves of a pump's spare flow. */
export const riseOfSpare = formula({
  id: "rise-of-spare",
  name: "Rise at which a pump's slip takes all it has to spare",
  text: "(Q_p - Q) / k",
  symbols: {
    Q_p: ["swept flow of the pump", "m3/s"],
    Q: ["demand", "m3/s"],
    k: ["slip per pressure rise", "m3/(Pa s)"],
  },
  result: ["p", "pressure rise of the pump", "Pa"],
  holds: "a pump whose relief stays shut",
  accuracy: "that of the slip",
  source: "W. E. Wilson (1946), as in D. McCloy and H. R. Martin, Control of Fluid Power",
});

/** Rise of a pump whose relief opens to the tank. */
export const riseToTankRelief = formula({
  id: "rise-to-tank-relief",
  name: "Rise of a pump whose relief opens to the tank",
  text: "p_r + V",
  symbols: { p_r: ["gauge pressure at which relief opens", "Pa"], V: ["vacuum at its inlet", "Pa", "vacuum"] },
  result: ["p", "pressure rise of the pump", "Pa"],
  holds: "relief open",
  ...exact,
});

/** The smaller of two rises. */
export const lesserRise = formula({
  id: "lesser-rise",
  name: "Rise of a pump: relief or slip, whichever is less",
  text: "min(p)",
  symbols: { p: ["rise each allows", "Pa"] },
  result: ["p", "pressure rise of the pump", "Pa"],
  holds: "a fixed-displacement pump",
  ...exact,
});

/** Rise on a pump curve. */
export const riseOnCurve = formula({
  id: "rise-on-curve",
  name: "Rise on a pump's curve, straight between two points",
  text: "p_1 + (p_2 - p_1) * (Q - Q_1) / (Q_2 - Q_1)",
  symbols: {
    p_1: ["rise at the point before", "Pa"],
    p_2: ["rise at the point behind", "Pa"],
    Q: ["demand", "m3/s"],
    Q_1: ["flow of the point before", "m3/s"],
    Q_2: ["flow of the point behind", "m3/s"],
  },
  result: ["p", "pressure rise of the pump", "Pa"],
  holds: "between two points of the curve",
  accuracy: "that of the curve",
  source: "definition",
});

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

/** What a pump with slip moves against a rise. */
export const movedWithSlip = formula({
  id: "moved-with-slip",
  name: "What a pump with slip moves",
  text: "Q_p - k * max(0 * p, p)",
  symbols: {
    Q_p: ["swept flow of the pump", "m3/s"],
    k: ["slip per pressure rise", "m3/(Pa s)"],
    p: ["pressure rise of the pump", "Pa"],
  },
  result: ["Q_m", "what the pump moves", "m3/s"],
  holds: "laminar flow through the pump's gaps",
  accuracy: "that of the slip",
  source: "W. E. Wilson (1946), as in D. McCloy and H. R. Martin, Control of Fluid Power",
  checkedBy: ["pumps/wilson"],
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

/** The least of two rises. */
export const heldRise = formula({
  id: "held-rise",
  name: "Rise a pump works against: what is asked of it, held by its relief",
  text: "min(p)",
  symbols: { p: ["rise asked, and rise with relief open", "Pa"] },
  result: ["p", "pressure rise of the pump", "Pa"],
  holds: "a fixed-displacement pump",
  ...exact,
});

/** What a pulse pump moves against a vacuum. */
export const pulseFlow = formula({
  id: "pulse-flow",
  name: "What a pulse pump moves against a vacuum",
  text: "Q_p * (1 - max(0 * V, V) / S)",
  symbols: {
    Q_p: ["most it moves", "m3/s"],
    V: ["vacuum at its inlet", "Pa", "vacuum"],
    S: ["most vacuum it pulls", "Pa", "vacuum"],
  },
  result: ["Q_m", "what the pump moves", "m3/s"],
  holds: "straight between its two stated ends",
  accuracy: "not known",
  source: "common practice, no source",
});
