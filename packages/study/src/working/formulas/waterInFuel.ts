import { formula } from "../Formula.js";

/** Water a fuel dissolves, by mass. */
export const solubility = formula({
  id: "water-solubility",
  name: "Water that a petroleum fuel dissolves",
  text: "10^(-(4200 * H + 1050) * (T_0 / T - 0.0016) + 2) / 100 * M_w / M",
  symbols: {
    H: ["mass ratio of hydrogen to carbon", "1"],
    T_0: ["one kelvin, which the law counts in", "K"],
    T: ["temperature of the fuel", "K"],
    M_w: ["molar mass of water", "kg/mol"],
    M: ["molar mass of the fuel", "kg/mol"],
  },
  result: ["X", "water over fuel by mass", "1"],
  holds: "hydrocarbons other than olefins, 233 to 373 K; biodiesel and ethanol take up far more",
  accuracy: "not stated; no measured table for diesel was found to check it on",
  source: "R. R. Hibbard and R. L. Schalla, NACA RM E52D24 (1952)",
  checkedBy: ["fuels/water-solubility"],
});

/** Water dissolved. */
export const dissolvedWater = formula({
  id: "water-dissolved",
  name: "Water dissolved: what the fuel can take, or all there is",
  text: "min(W, X * rho)",
  symbols: {
    W: ["water in the delivered fuel", "kg/m3", "solids"],
    X: ["water it dissolves, by mass", "1"],
    rho: ["density of the fuel", "kg/m3"],
  },
  result: ["w", "water dissolved", "kg/m3", "solids"],
  holds: "fuel given time to dissolve it",
  accuracy: "that of the solubility",
  source: "definition",
});

/** Water free. */
export const freeWater = formula({
  id: "water-free",
  name: "Free water: what is not dissolved",
  text: "W - w",
  symbols: { W: ["water in the delivered fuel", "kg/m3", "solids"], w: ["water dissolved", "kg/m3", "solids"] },
  result: ["f", "free water", "kg/m3", "solids"],
  holds: "always",
  accuracy: "that of the solubility",
  source: "definition",
});

/** How well a stage separates at another flow. */
export const separation = formula({
  id: "water-separation",
  name: "Share of the free water that a stage keeps at a flow",
  text: "1 - (1 - E_0)^(Q_0 / Q)",
  symbols: {
    E_0: ["share it keeps as stated", "1", "ratio"],
    Q_0: ["flow that was stated at", "m3/s"],
    Q: ["flow through it", "m3/s"],
  },
  result: ["E", "share of the free water it keeps", "1", "ratio"],
  holds: "the form of a well-mixed settler; that coalescing elements follow it is an assumption",
  accuracy: "not known",
  source: "W. Deutsch, Annalen der Physik 68 (1922) 335, for the form; from memory",
});

/** How fast a stage takes water out. */
export const waterRate = formula({
  id: "water-rate",
  name: "How fast a stage takes water out",
  text: "Q * f * s * p * E",
  symbols: {
    Q: ["flow through it", "m3/s"],
    f: ["free water in the delivered fuel", "kg/m3", "solids"],
    s: ["share of it in the tank", "1", "ratio"],
    p: ["share of that which reaches it", "1", "ratio"],
    E: ["share of the free water it keeps", "1", "ratio"],
  },
  result: ["g", "water kept in a time", "kg/s"],
  holds: "drops that stay mixed in the fuel",
  accuracy: "that of the separation",
  source: "definition",
});

/** Water that reaches the engine. */
export const carriedOn = formula({
  id: "water-carried-on",
  name: "Free water that reaches the engine",
  text: "f * sum(x * s * p)",
  symbols: {
    f: ["free water in the delivered fuel", "kg/m3", "solids"],
    x: ["share of the running time", "1", "ratio"],
    s: ["share of it in the tank at that load", "1", "ratio"],
    p: ["share of that left at the end of the path", "1", "ratio"],
  },
  result: ["f", "free water carried on", "kg/m3", "solids"],
  holds: "loads mixed finely within the season",
  accuracy: "that of the separation",
  source: "definition",
});

/** Running time until a bowl is full. */
export const drainEvery = formula({
  id: "drain-interval",
  name: "Running time until a bowl is full",
  text: "v * rho_w / g",
  symbols: {
    v: ["bowl up to where it must be drained", "m3"],
    rho_w: ["density of water", "kg/m3"],
    g: ["water kept in a time", "kg/s"],
  },
  result: ["t", "running time between drainings", "s"],
  holds: "the coldest season, when most water is free",
  accuracy: "that of the water",
  source: "definition",
});

/** Running time until an absorber is shut. */
export const shutAfter = formula({
  id: "absorber-shut",
  name: "Running time until water alone shuts an absorber",
  text: "2 / K / g",
  symbols: { K: ["constant of its swelling", "1/kg"], g: ["water kept in a time", "kg/s"] },
  result: ["t", "running time until it is shut", "s"],
  holds: "pores that narrow evenly, as in standard blocking",
  accuracy: "not known",
  source: "common practice, no source",
});
