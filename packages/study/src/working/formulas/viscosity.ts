import { formula } from "../Formula.js";

const source = "ASTM D341-20, section 5";
const holds = "petroleum liquids from 0.21 to 2e7 mm²/s without wax";
const checkedBy = ["fuels/exact-d341", "fuels/d341-predictions", "fuels/third-temperature"];
const accuracy = "a third temperature is found within about 7 % over 60 K";
const unit = { nu_1: ["one mm²/s, which the law counts in", "m2/s"] } as const;
const letters = { nu: ["kinematic viscosity", "m2/s"], ...unit } as const;

/** The number Z of a viscosity. */
export const d341Z = formula({
  id: "d341-z",
  name: "ASTM D341: the number Z of a viscosity",
  text: "nu / nu_1 + 0.7 + exp(-1.47 - 1.84 * nu / nu_1 - 0.51 * (nu / nu_1)^2)",
  symbols: letters,
  result: ["Z", "number Z", "1"],
  holds,
  accuracy: "exact",
  source,
  checkedBy,
});

/** Slope of the line through two measured viscosities. */
export const d341Slope = formula({
  id: "d341-slope",
  name: "ASTM D341: slope of the line through two viscosities",
  text: "(log10(log10(Z_1)) - log10(log10(Z_2))) / log10(T_2 / T_1)",
  symbols: {
    Z_1: ["number Z of the first point", "1"],
    Z_2: ["number Z of the second point", "1"],
    T_2: ["temperature of the second point", "K"],
    T_1: ["temperature of the first point", "K"],
  },
  result: ["b", "slope of the viscosity line", "1"],
  holds,
  accuracy,
  source,
  checkedBy: ["fuels/d341-fits b"],
});

/** Start of the line of a slope through a point. */
export const d341Start = formula({
  id: "d341-start",
  name: "ASTM D341: start of the line through a viscosity",
  text: "log10(log10(Z_1)) + b * log10(T_1 / T_0)",
  symbols: {
    Z_1: ["number Z of the point", "1"],
    b: ["slope of the viscosity line", "1"],
    T_1: ["temperature of the point", "K"],
    T_0: ["one kelvin, which the law counts in", "K"],
  },
  result: ["a", "start of the viscosity line", "1"],
  holds,
  accuracy,
  source,
  checkedBy: ["fuels/d341-fits a"],
});

/** The number Z at a temperature. */
export const d341Line = formula({
  id: "d341-line",
  name: "ASTM D341: number Z at a temperature",
  text: "10^(10^(a - b * log10(T / T_0)))",
  symbols: {
    a: ["start of the viscosity line", "1"],
    b: ["slope of the viscosity line", "1"],
    T: ["temperature of the fuel", "K"],
    T_0: ["one kelvin, which the law counts in", "K"],
  },
  result: ["Z", "number Z", "1"],
  holds,
  accuracy,
  source,
  checkedBy,
});

/** Grunberg and Nissan's rule for a blend. */
export const grunbergNissan = formula({
  id: "blend-grunberg-nissan",
  name: "Grunberg–Nissan rule: viscosity of a blend",
  text: "nu_1 * exp(sum(x * log(nu / nu_1)))",
  symbols: { ...unit, x: ["share by volume", "1", "ratio"], nu: ["viscosity of the part", "m2/s"] },
  result: ["nu", "kinematic viscosity of the fuel", "m2/s"],
  holds: "liquids that mix fully and do not associate; an estimate with alcohol or thick oil",
  accuracy: "within 2 % of measured biodiesel blends",
  source: "L. Grunberg and A. H. Nissan, Nature 164 (1949) 799",
  checkedBy: ["fuels/blend-viscosity measured", "fuels/exact-mixing"],
});
