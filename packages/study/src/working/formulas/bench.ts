import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;

/** How high the fuel of a full tank stands over a place. */
export const headOver = formula({
  id: "head-over",
  name: "How high the fuel of a full tank stands over a place",
  text: "h - sum(r)",
  symbols: { h: ["depth of the full tank", "m"], r: ["climb on the way", "m"] },
  result: ["H", "fuel over it", "m"],
  holds: "the tank that stands highest, filled",
  ...exact,
});

/** Fuel in a line. */
export const lineVolume = formula({
  id: "line-volume",
  name: "Fuel in a line",
  text: "pi / 4 * D^2 * L",
  symbols: { D: ["bore", "m", "bore"], L: ["length", "m"] },
  result: ["v", "fuel in the line", "m3"],
  holds: "a round line",
  ...exact,
});

/** Several volumes. */
export const volumeSum = formula({
  id: "volumes",
  name: "Several volumes together",
  text: "sum(v)",
  symbols: { v: ["volume of each", "m3"] },
  result: ["V", "volume", "m3"],
  holds: "always",
  ...exact,
});

/** Strokes of a hand primer. */
export const strokes = formula({
  id: "priming-strokes",
  name: "Strokes of a hand primer until so much air has gone through it",
  text: "V / (s * f)",
  symbols: {
    V: ["air to move", "m3"],
    s: ["sweep of a stroke", "m3"],
    f: ["share of it that moves", "1", "ratio"],
  },
  result: ["n", "strokes", "1"],
  holds: "air that comes as one; what hides in a high point takes a few more",
  accuracy: "that of the share that moves, 0.8 by common practice, no source",
  source: "definition",
});

/** Demand at a part of the load. */
export const partDemand = formula({
  id: "part-demand",
  name: "Demand at a part of the load",
  text: "l * Q",
  symbols: { l: ["load over full load", "1", "ratio"], Q: ["demand at full load", "m3/s"] },
  result: ["Q_l", "demand at that load", "m3/s"],
  holds: "burn and return in step with the load",
  accuracy: "a choice, not a law",
  source: "common practice, no source",
});

/** Density of water. */
export const waterDensity = formula({
  id: "water-density",
  name: "Density of water",
  text: "rho_0 * (1 - ((T - T_0) / T_1 - 3.983035)^2 * ((T - T_0) / T_1 + 301.797) / (522528.9 * ((T - T_0) / T_1 + 69.34881)))",
  symbols: {
    rho_0: ["its greatest density", "kg/m3"],
    T: ["temperature", "K"],
    T_0: ["ice point", "K"],
    T_1: ["one kelvin, which the law counts in", "K"],
  },
  result: ["rho_w", "density of water", "kg/m3"],
  holds: "0 to 40 °C at 0.1 MPa, clean and without air",
  accuracy: "1e-6, as its authors state",
  source: "M. Tanaka and others, Metrologia 38 (2001) 301; from memory",
});

/** How fast a drop settles. */
export const settlingSpeed = formula({
  id: "settling-speed",
  name: "How fast a drop of water settles in still fuel (Stokes's law)",
  text: "g * d^2 * (rho_w - rho) / (18 * rho * nu)",
  symbols: {
    g: ["standard free fall", "m/s2"],
    d: ["size of the drop", "m", "particle size"],
    rho_w: ["density of water", "kg/m3"],
    rho: ["density of the fuel", "kg/m3"],
    nu: ["kinematic viscosity of the fuel", "m2/s"],
  },
  result: ["u", "speed down", "m/s"],
  holds: "a sphere alone, Reynolds number up to 1",
  accuracy: "too fast by 3/16 of the Reynolds number (Oseen); a drop whose inside turns is up to half faster",
  source: "G. G. Stokes, Trans. Cambridge Phil. Soc. 9 (1851) 8; from memory",
});

/** How long it takes. */
export const settlingTime = formula({
  id: "settling-time",
  name: "How long a drop takes from the top of a tank to its bottom",
  text: "h / u",
  symbols: { h: ["depth of the full tank", "m"], u: ["speed down", "m/s"] },
  result: ["t", "time to settle", "s"],
  holds: "fuel that stands still; what warms or cools stirs itself",
  accuracy: "that of the speed",
  source: "definition",
});
