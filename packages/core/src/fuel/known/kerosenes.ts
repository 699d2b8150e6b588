import type { DensityPoint } from "../densityAt.js";
import type { Fuel } from "../Fuel.js";
import { keroseneVapourPressure } from "./distillates.js";

const report = "AFRL-RQ-WP-TR-2020-0017 (Edwards), through an open data table taken from its figures (seen)";
const vapour = "vapour pressure: US EPA AP-42 table 7.1-2, jet kerosene (from memory)";

const densities = (...points: readonly [temperature: number, density: number][]): DensityPoint[] =>
  points.map(([temperature, density]) => ({ temperature, density }));

const common = {
  composition: { kerosene: 1 },
  vapourPressure: keroseneVapourPressure,
  // Freezing point limit of Jet A (seen), of Jet A-1 -47 degC: above it no crystals are left.
  cloudPointLimit: 233.15,
  status: "representative",
  estimated: [],
} as const;

/** Kerosene, Jet A and A-1: reference fuel A-2. */
export const kerosene: Fuel = {
  ...common,
  name: "kerosene",
  density: {
    kind: "points",
    points: densities([233.15, 843.9], [253.15, 829.7], [273.15, 815.1], [293.15, 801.7], [313.15, 787.3]),
  },
  viscosity: {
    kind: "points",
    points: [
      { temperature: 253.15, kinematicViscosity: 4.5e-6 },
      { temperature: 313.15, kinematicViscosity: 1.31e-6 },
    ],
  },
  range: { from: 233.15, to: 313.15 },
  sources: [
    `viscosity at -20 and 40 degC, density -40 to 40 degC: reference fuel A-2, ${report}`,
    "checked at -40 degC: 9.21 mm2/s against 9.2 measured (seen)",
    vapour,
  ],
};

/** The light end of jet fuel: reference fuel A-1 (JP-8). */
export const keroseneLight: Fuel = {
  ...common,
  name: "light kerosene",
  density: { kind: "points", points: densities([253.15, 808.6], [273.15, 794.2], [293.15, 779.9], [313.15, 765.3]) },
  viscosity: {
    kind: "points",
    points: [
      { temperature: 253.15, kinematicViscosity: 3.5e-6 },
      { temperature: 313.15, kinematicViscosity: 1.14e-6 },
    ],
  },
  range: { from: 253.15, to: 313.15 },
  sources: [`viscosity at -20 and 40 degC, density -20 to 40 degC: reference fuel A-1, ${report}`, vapour],
};

/** The heavy end of jet fuel, near No. 1 diesel: reference fuel A-3 (JP-5). */
export const keroseneHeavy: Fuel = {
  ...common,
  name: "heavy kerosene",
  density: { kind: "points", points: densities([273.15, 838.7], [293.15, 823.9], [313.15, 809.8]) },
  viscosity: {
    kind: "points",
    points: [
      { temperature: 253.15, kinematicViscosity: 6.5e-6 },
      { temperature: 313.15, kinematicViscosity: 1.57e-6 },
    ],
  },
  range: { from: 253.15, to: 313.15 },
  sources: [
    `viscosity at -20 and 40 degC, density 0 to 40 degC and on down along the same line: reference fuel A-3, ${report}`,
    vapour,
  ],
};
