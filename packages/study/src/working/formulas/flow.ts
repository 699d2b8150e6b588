import { formula } from "../Formula.js";

/** Mean velocity in a round bore. */
export const velocity = formula({
  id: "velocity",
  name: "Mean velocity in a round bore",
  text: "4 * Q / (pi * D^2)",
  symbols: { Q: ["flow", "m3/s"], D: ["bore", "m", "bore"] },
  result: ["v", "mean velocity", "m/s"],
  holds: "any full round bore",
  accuracy: "exact",
  source: "definition",
});

/** Reynolds number in a round bore. */
export const reynolds = formula({
  id: "reynolds",
  name: "Reynolds number in a round bore",
  text: "4 * abs(Q) / (pi * D * nu)",
  symbols: { Q: ["flow", "m3/s"], D: ["bore", "m", "bore"], nu: ["kinematic viscosity of the fuel", "m2/s"] },
  result: ["Re", "Reynolds number", "1"],
  holds: "any full round bore",
  accuracy: "exact",
  source: "O. Reynolds, Phil. Trans. R. Soc. 174 (1883) 935; definition",
});

/** Pressure of the fuel's motion. */
export const kineticPressure = formula({
  id: "kinetic-pressure",
  name: "Pressure of the fuel's motion",
  text: "alpha * rho * v^2 / 2",
  symbols: {
    alpha: ["kinetic factor", "1"],
    rho: ["density of the fuel", "kg/m3"],
    v: ["mean velocity", "m/s"],
  },
  result: ["p_k", "pressure of the fuel's motion", "Pa"],
  holds: "a formed flow in a round bore; the factor 2 is that of laminar flow and is taken everywhere, the safe side",
  accuracy: "up to twice too high in turbulent flow, where the factor is near 1",
  source: "F. M. White, Fluid Mechanics (7th ed. 2011), section 6.9, for the kinetic factor",
});

/** Dynamic viscosity from kinematic. */
export const dynamicViscosity = formula({
  id: "dynamic-viscosity",
  name: "Dynamic viscosity",
  text: "rho * nu",
  symbols: { rho: ["density of the fuel", "kg/m3"], nu: ["kinematic viscosity of the fuel", "m2/s"] },
  result: ["mu", "dynamic viscosity of the fuel", "Pa s"],
  holds: "any liquid",
  accuracy: "exact",
  source: "definition",
});
