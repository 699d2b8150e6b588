import { formula } from "../Formula.js";

const result = ["p_v", "vapour pressure of the fuel", "Pa", "absolute pressure"] as const;
const T = ["temperature of the fuel", "K"] as const;

/** True vapour pressure of petrol from its Reid vapour pressure. */
export const petrolVapour = formula({
  id: "petrol-vapour-pressure",
  name: "Vapour pressure of petrol from its Reid vapour pressure",
  text:
    "p_1 * exp((0.7553 - 413 / (T / T_r - 0.07)) * sqrt(S) * log10(p_R / p_1) " +
    "- (1.854 - 1042 / (T / T_r - 0.07)) * sqrt(S) + (2416 / (T / T_r - 0.07) - 2.013) * log10(p_R / p_1) " +
    "- 8742 / (T / T_r - 0.07) + 15.64)",
  symbols: {
    p_1: ["one pound-force per square inch", "Pa"],
    T,
    T_r: ["one degree Rankine", "K"],
    S: ["slope of the distillation curve, °F per %", "1"],
    p_R: ["Reid vapour pressure", "Pa"],
  },
  result,
  holds: "petrol from -18 to 60 °C",
  accuracy: "within 2.5 % of the printed table from 40 to 100 °F",
  source: "US EPA AP-42, chapter 7.1, figure 7.1-14b; from memory",
  checkedBy: ["fuels/petrol-vapour-pressure printed", "fuels/exact-petrol-vapour-pressure"],
});

/** Reid vapour pressure with ethanol. */
export const raisedReid = formula({
  id: "reid-with-ethanol",
  name: "Reid vapour pressure of petrol with ethanol",
  text: "p_R + r",
  symbols: { p_R: ["Reid vapour pressure of the petrol", "Pa"], r: ["how far ethanol lifts it", "Pa"] },
  result: ["p_R", "Reid vapour pressure", "Pa"],
  holds: "up to 10 % ethanol; above, the last value of the table is held, which is the safe side",
  accuracy: "an allowance, not a measurement",
  source: "Directive 98/70/EC, Annex III; US EPA 1 psi waiver",
  checkedBy: ["fuels/ethanol-waiver"],
});

/** How far ethanol lifts it, between two rows of the table. */
export const ethanolLift = formula({
  id: "ethanol-lift",
  name: "Lift of the Reid vapour pressure by ethanol, between two rows of the table",
  text: "r_1 + (r_2 - r_1) * (100 * x - n)",
  symbols: {
    r_1: ["lift in the row below", "Pa"],
    r_2: ["lift in the row above", "Pa"],
    x: ["share of ethanol in the petrol, held at 10 %", "1", "ratio"],
    n: ["per cent of the row below", "1"],
  },
  result: ["r", "how far ethanol lifts it", "Pa"],
  holds: "up to 10 % ethanol",
  accuracy: "an allowance, not a measurement",
  source: "Directive 98/70/EC, Annex III",
  checkedBy: ["fuels/ethanol-waiver"],
});

/** Vapour pressure by two constants. */
export const twoConstantVapour = formula({
  id: "vapour-two-constants",
  name: "Vapour pressure by two constants",
  text: "p_0 * exp(A - B / T)",
  symbols: {
    p_0: ["one pascal, which the law counts in", "Pa", "absolute pressure"],
    A: ["first constant", "1"],
    B: ["second constant", "K", "plain"],
    T,
  },
  result,
  holds: "distillates from 5 to 40 °C; carried on beyond",
  accuracy: "within 5.3 % of the printed table",
  source: "US EPA AP-42, chapter 7.1, table 7.1-2; from memory",
  checkedBy: ["fuels/distillate-vapour-pressure printed"],
});

/** The most volatile part's vapour pressure. */
export const highestVapour = formula({
  id: "vapour-highest",
  name: "Vapour pressure of a blend: its most volatile part's",
  text: "max(p)",
  symbols: { p: ["vapour pressure of each part", "Pa", "absolute pressure"] },
  result,
  holds: "any blend: no ideal mixture exceeds its most volatile part",
  accuracy: "on the safe side",
  source: "definition",
});

/** Gas that a fuel holds in solution. */
export const ostwald = formula({
  id: "ostwald",
  name: "Air dissolved in a petroleum fuel",
  text: "7.70 * 0.300 * exp(0.639 * (700 * T_0 - T) / T * log(3.333 * L_0)) * (0.980 - rho_15 / rho_1)",
  symbols: {
    T_0: ["one kelvin, which the law counts in", "K"],
    T,
    L_0: ["coefficient of air", "1"],
    rho_15: ["density at 15 °C", "kg/m3"],
    rho_1: ["one kilogram per litre, which the law counts in", "kg/m3"],
  },
  result: ["L", "volume of air in a volume of fuel", "1"],
  holds: "petroleum fuels of 630 to 900 kg/m³, 228 to 423 K",
  accuracy: "not stated; no measured table was found to check it on",
  source: "ASTM D2779-92(2020); from memory",
  checkedBy: ["fuels/dissolved-air", "fuels/exact-dissolved-air"],
});

/** Air that comes out under suction. */
export const freedAir = formula({
  id: "freed-air",
  name: "Henry's law: air freed under suction",
  text: "L * max(0 * p_a, V) / (p_a - V)",
  symbols: {
    L: ["volume of air in a volume of fuel", "1"],
    V: ["vacuum", "Pa", "vacuum"],
    p_a: ["air pressure", "Pa", "absolute pressure"],
  },
  result: ["s", "gas over fuel by volume", "1", "ratio"],
  holds: "saturated fuel; release takes time, so this is the most",
  accuracy: "that of the solubility",
  source: "Henry's law; ASTM D2779-92(2020)",
  checkedBy: ["fuels/freed-air"],
});
