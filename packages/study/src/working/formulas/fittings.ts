import { formula } from "../Formula.js";

const fuel = { rho: ["density of the fuel", "kg/m3"], v: ["mean velocity in its bore", "m/s"] } as const;

/** Drop of fittings by a constant loss. */
export const fittingDrop = formula({
  id: "fitting-k",
  name: "Drop of fittings by a loss coefficient",
  text: "n * K * rho * v * abs(v) / 2",
  symbols: { n: ["how many alike", "1"], K: ["loss of one, in velocity heads", "1"], ...fuel },
  result: ["dp", "drop of the fittings", "Pa"],
  holds: "turbulent flow; in laminar flow a fitting costs several times as much",
  accuracy: "some 10 to 25 % in turbulent flow (common practice, no source)",
  source: "F. M. White, Fluid Mechanics (7th ed. 2011), section 6.9",
  checkedBy: ["fittings/k-values"],
});

/** Drop of fittings by Hooper's two constants. */
export const twoKDrop = formula({
  id: "fitting-two-k",
  name: "Two-K method: drop of fittings in laminar and turbulent flow",
  text: "n * rho * v / 2 * (K_1 * nu / D + K_i * (1 + d_1 / D) * abs(v))",
  symbols: {
    n: ["how many alike", "1"],
    ...fuel,
    K_1: ["loss at Reynolds number 1", "1"],
    nu: ["kinematic viscosity of the fuel", "m2/s"],
    D: ["bore", "m", "bore"],
    K_i: ["loss of a large fitting at a high Reynolds number", "1"],
    d_1: ["one inch", "m", "bore"],
  },
  result: ["dp", "drop of the fittings", "Pa"],
  holds: "laminar and turbulent flow; K = K_1/Re + K_i (1 + 1 inch/bore), put in so that no flow costs nothing",
  accuracy: "not stated by its author",
  source: "W. B. Hooper, Chem. Eng. 88 (24 Aug 1981) 96; constants from memory",
  checkedBy: ["fittings/two-k-checks"],
});

/** Length of line that costs as much as fittings. */
export const equivalentLength = formula({
  id: "equivalent-length",
  name: "Equivalent length of fittings",
  text: "n * N * D",
  symbols: { n: ["how many alike", "1"], N: ["equivalent length of one, in bores", "1"], D: ["bore", "m", "bore"] },
  result: ["L", "length of line that costs as much", "m"],
  holds: "turbulent flow",
  accuracy: "some 25 % (common practice, no source)",
  source: "definition",
  checkedBy: ["fittings/equivalent-length"],
});

/** Drop of a valve by its flow coefficient. */
export const valveDrop = formula({
  id: "valve-kv",
  name: "Drop of a valve by its flow coefficient",
  text: "p_o + p_1 * rho / rho_1 * Q * abs(Q) / K_v^2",
  symbols: {
    p_o: ["pressure at which it opens", "Pa"],
    p_1: ["one bar, at which Kv is stated", "Pa"],
    rho: ["density of the fuel", "kg/m3"],
    rho_1: ["density of the water Kv is stated for", "kg/m3"],
    Q: ["flow", "m3/s"],
    K_v: ["flow coefficient Kv", "m3/s"],
  },
  result: ["dp", "drop of the valve", "Pa"],
  holds:
    "turbulent flow; the opening pressure is counted at every flow, the safe reading of a spring that keeps pushing",
  accuracy: "low for thick fuel, whose flow through the valve is not turbulent",
  source: "IEC 60534-1 and IEC 60534-2-1",
});

/** Drop of a sharp restriction. */
export const orificeDrop = formula({
  id: "orifice",
  name: "Drop of an orifice by its discharge coefficient",
  text: "8 * rho * Q * abs(Q) / (pi^2 * C_d^2 * d^4)",
  symbols: {
    rho: ["density of the fuel", "kg/m3"],
    Q: ["flow", "m3/s"],
    C_d: ["discharge coefficient", "1"],
    d: ["diameter of the hole", "m", "bore"],
  },
  result: ["dp", "drop of the orifice", "Pa"],
  holds:
    "turbulent flow in the hole, from a Reynolds number of some 10 000 (common practice, no source); none of it recovered",
  accuracy: "too low at low Reynolds numbers",
  source: "F. M. White, Fluid Mechanics (7th ed. 2011), section 6.12",
});

/** Static head of a climb. */
export const riseDrop = formula({
  id: "static-head",
  name: "Static head of a climb",
  text: "rho * g * h",
  symbols: {
    rho: ["density of the fuel", "kg/m3"],
    g: ["acceleration of free fall", "m/s2"],
    h: ["height it climbs", "m"],
  },
  result: ["dp", "static head", "Pa"],
  holds: "a liquid at rest or in steady flow",
  accuracy: "exact; local gravity differs by up to 0.3 %",
  source: "definition",
});
