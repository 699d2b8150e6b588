import { formula } from "../Formula.js";

const source = "API Standard 2540 / ASTM D1250-80, table 54B; constants from memory";
const accuracy = "measured diesels and jet fuels agree with it within 0.3 %";
const holds = "petroleum products of 610 to 1164 kg/m³, made for -18 to 95 °C";
const checkedBy = ["fuels/volume-correction", "fuels/exact-volume-correction", "fuels/density-measured"];
const d15 = ["density at 15 °C", "kg/m3"] as const;

/** Density by the published volume correction. */
export const correctedDensity = formula({
  id: "volume-correction",
  name: "Density of a petroleum product at a temperature",
  text: "rho_15 * exp(-a * (T - T_15) * (1 + 0.8 * a * (T - T_15)))",
  symbols: {
    rho_15: d15,
    a: ["expansion at 15 °C", "1/K"],
    T: ["temperature of the fuel", "K"],
    T_15: ["15 °C", "K"],
  },
  result: ["rho", "density of the fuel", "kg/m3"],
  holds,
  accuracy,
  source,
  checkedBy,
});

/** Expansion of a product group: two constants, as the table gives them. */
export const expansion = formula({
  id: "expansion-two-constants",
  name: "Expansion of a product group from its density",
  text: "K_0 / rho_15^2 + K_1 / rho_15",
  symbols: {
    K_0: ["first constant of the group", "kg2/(m6 K)"],
    K_1: ["second constant of the group", "kg/(m3 K)"],
    rho_15: d15,
  },
  result: ["a", "expansion at 15 °C", "1/K"],
  holds,
  accuracy,
  source,
  checkedBy,
});

/** Expansion between petrol and jet fuel. */
export const transitionExpansion = formula({
  id: "expansion-transition",
  name: "Expansion between petrol and jet fuel from the density",
  text: "A + K_0 / rho_15^2",
  symbols: { A: ["constant of the group", "1/K"], K_0: ["constant over density squared", "kg2/(m6 K)"], rho_15: d15 },
  result: ["a", "expansion at 15 °C", "1/K"],
  holds: "770.5 to 788 kg/m³",
  accuracy,
  source,
  checkedBy,
});

/** A straight line in temperature. */
export const linearDensity = formula({
  id: "density-line",
  name: "Density by a straight line over temperature",
  text: "rho_1 + s * (T - T_1)",
  symbols: {
    rho_1: ["density at a known temperature", "kg/m3"],
    s: ["slope of density over temperature", "kg/(m3 K)"],
    T: ["temperature of the fuel", "K"],
    T_1: ["the known temperature", "K"],
  },
  result: ["rho", "density of the fuel", "kg/m3"],
  holds: "near the temperatures it was measured at",
  accuracy: "that of its two figures; the line of a real fuel bends slightly",
  source: "definition",
  checkedBy: ["fuels/density-15 slope"],
});

/** Straight between two measured points, or carried on beyond them. */
export const densityBetween = formula({
  id: "density-between",
  name: "Density by a straight line through two measured points",
  text: "rho_1 + (T - T_1) / (T_2 - T_1) * (rho_2 - rho_1)",
  symbols: {
    rho_1: ["density at the colder point", "kg/m3"],
    T: ["temperature of the fuel", "K"],
    T_1: ["temperature of the colder point", "K"],
    T_2: ["temperature of the warmer point", "K"],
    rho_2: ["density at the warmer point", "kg/m3"],
  },
  result: ["rho", "density of the fuel", "kg/m3"],
  holds: "between the points, and near them",
  accuracy: "that of the points",
  source: "definition",
});

/** Masses and volumes of a blend's parts add up. */
export const mixedDensity = formula({
  id: "density-blend",
  name: "Density of a blend: masses and volumes add up",
  text: "sum(x * rho_15) / sum(x * rho_15 / rho)",
  symbols: {
    x: ["share by volume at 15 °C", "1", "ratio"],
    rho_15: ["density of the part at 15 °C", "kg/m3"],
    rho: ["density of the part at the temperature", "kg/m3"],
  },
  result: ["rho", "density of the fuel", "kg/m3"],
  holds: "fuels that mix without a change of volume",
  accuracy: "within 0.1 % of measured blends",
  source: "P. Benjumea and others, Fuel 87 (2008) 2069",
  checkedBy: ["fuels/blend-density"],
});
