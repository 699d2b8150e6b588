import { formula } from "../Formula.js";

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
