import type { Fuel } from "../Fuel.js";

/** Petrol without ethanol, with the highest vapour pressure of EN 228 class A (summer). `petrolOfClass` gives others. */
export const petrol: Fuel = {
  name: "petrol",
  composition: { petrol: 1 },
  density: { kind: "volume correction", densityAt15: 745 },
  viscosity: {
    kind: "points",
    points: [
      { temperature: 253.15, kinematicViscosity: 0.9e-6 },
      { temperature: 293.15, kinematicViscosity: 0.55e-6 },
    ],
  },
  vapourPressure: { kind: "Reid", reid: 60e3, slope: 3 },
  range: { from: 253.15, to: 311.15 },
  status: "representative",
  estimated: [],
  sources: [
    "viscosity: US DOE, Properties of Fuels, middle of the range at 20 and -20 degC (seen)",
    "checked on a polymer gasoline: at 15 degC 6.5 % thinner, at 38 degC 5.7 % thicker, Environment Canada 1996 (seen)",
    "density: representative choice inside EN 228 (seen), volume correction by table 54B (computed)",
    "Reid vapour pressure: EN 228 class A, 45 to 60 kPa (seen); S 3.0 of motor gasoline, AP-42 (from memory)",
  ],
};

/** Ethanol. An associating liquid: keep to -20 to 20 degC. */
export const ethanol: Fuel = {
  name: "ethanol",
  composition: { ethanol: 1 },
  density: { kind: "linear", temperature: 288.15, density: 794, slope: -0.85 },
  viscosity: {
    kind: "points",
    points: [
      { temperature: 253.15, kinematicViscosity: 3.435e-6 },
      { temperature: 293.15, kinematicViscosity: 1.5e-6 },
    ],
  },
  // Through 7.87 kPa at 25 degC and the normal boiling point, 78.37 degC (handbook values, from memory).
  vapourPressure: { kind: "two constants", a: 25.801, b: 5017.9 },
  range: { from: 253.15, to: 293.15 },
  status: "representative",
  estimated: ["vapour pressure"],
  sources: [
    "viscosity: US DOE, Properties of Fuels, 20 and -20 degC (seen)",
    "handbook values (from memory): at 0 degC 2.215 mm2/s, the line 3 % lower; at 50 degC 0.909, the line 8 % higher",
    "density 0.794 at 60 degF: US DOE (seen); slope: handbook densities at 0 to 25 degC (from memory)",
    "vapour pressure: handbook values at 25 degC and the boiling point (from memory)",
  ],
};

/** The oil `premix` assumes. */
export const premixOil: Fuel = {
  name: "premix oil",
  composition: { oil: 1 },
  density: { kind: "volume correction", densityAt15: 880 },
  viscosity: {
    kind: "points",
    points: [
      { temperature: 293.15, kinematicViscosity: 130e-6 },
      { temperature: 313.15, kinematicViscosity: 50e-6 },
    ],
  },
  vapourPressure: { kind: "none" },
  range: { from: 293.15, to: 313.15 },
  status: "estimate",
  estimated: ["viscosity", "density"],
  sources: ["oil of premix: assumed, 130 mm2/s at 20 degC, 50 at 40 degC, 880 kg/m3 (common practice, no source)"],
};
