import type { Fuel } from "../Fuel.js";
import { distillateVapourPressure } from "./distillates.js";

const limits = "density: representative choice inside EN 590, volume correction by table 54B (computed)";
const vapour = "vapour pressure: US EPA AP-42 table 7.1-2, distillate fuel oil no. 2 (from memory)";

/** Diesel for summer: the top of the published viscosity range. Its cloud point depends on the place and is left open. */
export const dieselSummer: Fuel = {
  name: "summer diesel",
  composition: { diesel: 1 },
  density: { kind: "volume correction", densityAt15: 835 },
  viscosity: {
    kind: "points",
    points: [
      { temperature: 253.15, kinematicViscosity: 24e-6 },
      { temperature: 293.15, kinematicViscosity: 5e-6 },
    ],
  },
  vapourPressure: distillateVapourPressure,
  // The New Zealand summer limit, the highest found (restated by an engine maker; seen).
  cloudPointLimit: 277.15,
  range: { from: 253.15, to: 313.15 },
  status: "representative",
  estimated: [],
  sources: [
    "viscosity: US DOE, Properties of Fuels, top of the range of No. 2 diesel at 20 and -20 degC (seen)",
    "checked at 40 degC: 3.05 mm2/s, inside the published range 1.3 to 4.1 (seen)",
    limits,
    vapour,
  ],
};

/** Diesel for winter: the middle of the published viscosity range. */
export const dieselWinter: Fuel = {
  name: "winter diesel",
  composition: { diesel: 1 },
  density: { kind: "volume correction", densityAt15: 830 },
  viscosity: {
    kind: "points",
    points: [
      { temperature: 253.15, kinematicViscosity: Math.sqrt(9 * 24) * 1e-6 },
      { temperature: 293.15, kinematicViscosity: Math.sqrt(2.8 * 5) * 1e-6 },
    ],
  },
  vapourPressure: distillateVapourPressure,
  cloudPoint: 266.15,
  cloudPointLimit: 277.15,
  coldFilterPluggingPoint: 253.15,
  range: { from: 253.15, to: 313.15 },
  status: "representative",
  estimated: ["cloud point"],
  sources: [
    "viscosity: US DOE, Properties of Fuels, geometric mean of the range of No. 2 diesel at 20 and -20 degC (seen)",
    "checked at 40 degC: 2.41 mm2/s, inside the published range 1.3 to 4.1 (seen)",
    "cloud point about -7 degC, CFPP -20 degC reached with additive: public text on DIN EN 590 winter fuel (seen)",
    limits,
    vapour,
  ],
};

/** Diesel for severe winter: the bottom of the published viscosity range. */
export const dieselArctic: Fuel = {
  name: "arctic diesel",
  composition: { diesel: 1 },
  density: { kind: "volume correction", densityAt15: 815 },
  viscosity: {
    kind: "points",
    points: [
      { temperature: 253.15, kinematicViscosity: 9e-6 },
      { temperature: 293.15, kinematicViscosity: 2.8e-6 },
    ],
  },
  vapourPressure: distillateVapourPressure,
  cloudPoint: 239.15,
  cloudPointLimit: 239.15,
  coldFilterPluggingPoint: 229.15,
  range: { from: 253.15, to: 313.15 },
  status: "representative",
  estimated: [],
  sources: [
    "viscosity: US DOE, Properties of Fuels, bottom of the range of No. 2 diesel at 20 and -20 degC (seen)",
    "checked at 0 degC: 4.61 mm2/s, inside the measured 4.2 to 5.3 of a -50 degC pour point diesel, ECCC 2021 (seen)",
    "cloud point -34 degC, CFPP -44 degC: the limits of EN 590 severe winter class 4 (seen); typical is about -40 degC",
    limits,
    vapour,
  ],
};
