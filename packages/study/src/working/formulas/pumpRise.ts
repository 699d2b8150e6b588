import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;

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
