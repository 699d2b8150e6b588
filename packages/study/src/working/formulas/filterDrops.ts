import { formula } from "../Formula.js";

const medium = { A: ["area of the medium", "m2"], t: ["thickness of the medium", "m", "bore"] } as const;

/** Drop of a filter's medium. */
export const mediumDrop = formula({
  id: "medium-drop",
  name: "Darcy's law: drop of a filter's medium",
  text: "mu * R * r * Q",
  symbols: {
    mu: ["dynamic viscosity of the fuel", "Pa s"],
    R: ["resistance of the clean medium", "1/m3"],
    r: ["resistance now over the clean one", "1"],
    Q: ["flow through it", "m3/s"],
  },
  result: ["dp", "drop of the medium", "Pa"],
  holds: "creeping flow through the medium, as in any fuel filter",
  accuracy: "that of the resistance",
  source: "J. Bear, Dynamics of Fluids in Porous Media (1972)",
  checkedBy: ["porous/examples-published", "porous/examples-recomputed"],
});

/** What a filter costs in flow squared. */
export const inertialDrop = formula({
  id: "inertial-drop",
  name: "Forchheimer's term: what a filter costs in flow squared",
  text: "rho * B * Q * abs(Q)",
  symbols: {
    rho: ["density of the fuel", "kg/m3"],
    B: ["quadratic term of the medium and its body", "1/m4"],
    Q: ["flow through it", "m3/s"],
  },
  result: ["dp", "drop in flow squared", "Pa"],
  holds: "flows up to some times those it was tested at",
  accuracy: "that of the test",
  source: "P. Forchheimer, Z. Ver. Dtsch. Ing. 45 (1901) 1782",
});

/** What the channels between pleats cost. */
export const channelDrop = formula({
  id: "channel-drop",
  name: "Drop of the channels between pleats",
  text: "mu * C * Q",
  symbols: {
    mu: ["dynamic viscosity of the fuel", "Pa s"],
    C: ["resistance of the channels", "1/m3"],
    Q: ["flow through it", "m3/s"],
  },
  result: ["dp", "drop of the pleat channels", "Pa"],
  holds: "laminar flow between even pleats that do not touch",
  accuracy: "that of the gap, which counts with its cube",
  source: "G. K. Batchelor, An Introduction to Fluid Dynamics (1967), section 4.8",
  checkedBy: ["media/pleat-channel"],
});

/** Resistance of the channels between pleats. */
export const pleatResistance = formula({
  id: "pleat-resistance",
  name: "Resistance of the channels between pleats",
  text: "12 * h^2 / (g^3 * A)",
  symbols: { h: ["depth of a fold", "m", "bore"], g: ["gap between two walls", "m", "bore"], A: medium.A },
  result: ["C", "resistance of the pleat channels", "1/m3"],
  holds: "plane gaps, laminar flow, even suction through both walls",
  accuracy: "that of the gap, which counts with its cube",
  source: "G. K. Batchelor, An Introduction to Fluid Dynamics (1967), section 4.8",
  checkedBy: ["media/pleat-channel"],
});
