import { formula } from "../Formula.js";

const medium = { A: ["area of the medium", "m2"], t: ["thickness of the medium", "m", "bore"] } as const;
const result = ["R", "resistance of the clean medium", "1/m3"] as const;

/** Resistance of a medium from one tested point. */
export const onePointResistance = formula({
  id: "resistance-one-point",
  name: "Resistance of a medium from one tested point",
  text: "dp / (mu * Q)",
  symbols: {
    dp: ["drop in the test", "Pa"],
    mu: ["dynamic viscosity of the test fluid", "Pa s"],
    Q: ["flow in the test", "m3/s"],
  },
  result,
  holds: "all of the drop is taken as linear in flow, since one point cannot tell more",
  accuracy: "that of the test near its own flow and viscosity",
  source: "J. Bear, Dynamics of Fluids in Porous Media (1972)",
});

/** How fast drop over flow grows with flow, from two tested points. */
export const testSlope = formula({
  id: "two-point-slope",
  name: "Slope of drop over flow, from two tested points",
  text: "(dp_2 / Q_2 - dp_1 / Q_1) / (Q_2 - Q_1)",
  symbols: {
    dp_1: ["drop at the smaller flow", "Pa"],
    Q_1: ["smaller flow", "m3/s"],
    dp_2: ["drop at the larger flow", "Pa"],
    Q_2: ["larger flow", "m3/s"],
  },
  result: ["s", "slope of drop over flow", "Pa s2/m6"],
  holds: "two points in one fluid",
  accuracy: "that of the test",
  source: "P. Forchheimer, Z. Ver. Dtsch. Ing. 45 (1901) 1782",
});

/** Quadratic term from that slope. */
export const testQuadratic = formula({
  id: "two-point-quadratic",
  name: "Quadratic term from two tested points",
  text: "s / rho",
  symbols: { s: ["slope of drop over flow", "Pa s2/m6"], rho: ["density of the test fluid", "kg/m3"] },
  result: ["B", "quadratic term of the medium and its body", "1/m4"],
  holds: "two points in one fluid",
  accuracy: "that of the test",
  source: "P. Forchheimer, Z. Ver. Dtsch. Ing. 45 (1901) 1782",
});

/** Resistance of a medium from two tested points. */
export const twoPointResistance = formula({
  id: "resistance-two-points",
  name: "Resistance of a medium from two tested points",
  text: "(dp_1 / Q_1 - s * Q_1) / mu",
  symbols: {
    dp_1: ["drop at the smaller flow", "Pa"],
    Q_1: ["smaller flow", "m3/s"],
    s: ["slope of drop over flow", "Pa s2/m6"],
    mu: ["dynamic viscosity of the test fluid", "Pa s"],
  },
  result,
  holds: "two points in one fluid",
  accuracy: "that of the test",
  source: "P. Forchheimer, Z. Ver. Dtsch. Ing. 45 (1901) 1782",
});

/** Resistance of a medium from its geometry. */
export const geometryResistance = formula({
  id: "resistance-geometry",
  name: "Darcy's law: resistance of a medium from its geometry",
  text: "t / (k * A)",
  symbols: { ...medium, k: ["permeability", "m2"] },
  result,
  holds: "creeping flow through a flat sheet",
  accuracy: "that of the permeability",
  source: "J. Bear, Dynamics of Fluids in Porous Media (1972)",
  checkedBy: ["porous/examples-published"],
});

/** Quadratic term of a medium from its geometry. */
export const geometryQuadratic = formula({
  id: "quadratic-geometry",
  name: "Forchheimer's term of a medium from its geometry",
  text: "beta * t / A^2",
  symbols: { ...medium, beta: ["inertial coefficient", "1/m"] },
  result: ["B", "quadratic term of the medium", "1/m4"],
  holds: "flow through a flat sheet",
  accuracy: "that of the coefficient",
  source: "P. Forchheimer, Z. Ver. Dtsch. Ing. 45 (1901) 1782",
});

/** Resistance of a medium from an air test. */
export const airTestResistance = formula({
  id: "resistance-air-test",
  name: "Resistance of a medium from an air test",
  text: "S * dp / (mu_a * Q * A)",
  symbols: {
    S: ["area of the sample", "m2"],
    dp: ["pressure the air was driven with", "Pa"],
    mu_a: ["viscosity of air at 20 °C", "Pa s"],
    Q: ["air through the sample", "m3/s"],
    A: medium.A,
  },
  result,
  holds: "creeping flow of air; in pores of a micrometre or less air slips, and fuel sees somewhat more resistance",
  accuracy: "that of the test, and the slip",
  source: "J. Bear, Dynamics of Fluids in Porous Media (1972); tests as ASTM D737 and ISO 9237 report them",
  checkedBy: ["media/air-permeability"],
});
