import { formula } from "../Formula.js";

/** Drop of laminar flow in a line. */
export const laminarDrop = formula({
  id: "laminar-drop",
  name: "Hagen–Poiseuille law: drop of laminar flow in a line",
  text: "128 * mu * L * Q / (pi * D^4)",
  symbols: {
    mu: ["dynamic viscosity of the fuel", "Pa s"],
    L: ["length", "m"],
    Q: ["flow", "m3/s"],
    D: ["bore", "m", "bore"],
  },
  result: ["dp", "drop of a line in laminar flow", "Pa"],
  holds: "steady flow below Re 2300 in a straight round line, away from its inlet and from bends",
  accuracy: "exact in its range; the first stretch behind an inlet costs more",
  source: "G. K. Batchelor, An Introduction to Fluid Dynamics (1967), section 4.2",
  checkedBy: ["lines/examples-published", "lines/examples-recomputed"],
});

/** Drop of a line by its friction factor. */
export const darcyDrop = formula({
  id: "darcy-weisbach",
  name: "Darcy–Weisbach equation: drop of a line by its friction factor",
  text: "f * L / D * rho * v * abs(v) / 2",
  symbols: {
    f: ["Darcy friction factor", "1"],
    L: ["length", "m"],
    D: ["bore", "m", "bore"],
    rho: ["density of the fuel", "kg/m3"],
    v: ["mean velocity", "m/s"],
  },
  result: ["dp", "drop of a line in turbulent flow", "Pa"],
  holds: "steady flow in a straight round line, with the friction factor of its Reynolds number",
  accuracy: "that of the friction factor",
  source: "F. M. White, Fluid Mechanics (7th ed. 2011), sections 6.4 and 6.6",
  checkedBy: ["lines/examples-published", "lines/examples-recomputed"],
});

/** The equation whose root is one over the root of the friction factor. */
export const colebrookSide = formula({
  id: "colebrook-white",
  name: "Colebrook–White equation, its right side",
  text: "-2 * log10(epsilon / (3.7 * D) + 2.51 * x / Re)",
  symbols: {
    epsilon: ["roughness of the wall", "m", "bore"],
    D: ["bore", "m", "bore"],
    x: ["one over the root of the friction factor", "1"],
    Re: ["Reynolds number", "1"],
  },
  result: ["x", "one over the root of the friction factor", "1"],
  holds: "turbulent flow from Re 4000, roughness up to 0.05 of the bore; solved from Re 2300 up for the safe reading",
  accuracy: "a fit to measurements, good to some 5 % in service",
  source: "C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133",
  checkedBy: ["colebrook/colebrook-12", "lines/colebrook-points"],
});

/** Friction factor from the root of Colebrook and White's equation. */
export const frictionFactor = formula({
  id: "friction-factor",
  name: "Friction factor from its root",
  text: "1 / x^2",
  symbols: { x: ["one over the root of the friction factor", "1"] },
  result: ["f", "Darcy friction factor", "1"],
  holds: "with the root of the Colebrook–White equation",
  accuracy: "exact",
  source: "definition",
});
