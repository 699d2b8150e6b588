import type { Fuel } from "../Fuel.js";

const density = "density and slope: ECCC Oil Properties Database 2021, 0 and 15 degC (seen; slope computed)";
const common = {
  composition: { biodiesel: 1 },
  vapourPressure: { kind: "none" },
  // The top of the range found for pure biodiesel, tallow's (US DOE AFDC, seen).
  cloudPointLimit: 288.15,
  range: { from: 273.15, to: 313.15 },
  status: "representative",
} as const;

/** Biodiesel from soy, pure (B100). */
export const biodieselSoy: Fuel = {
  ...common,
  name: "soy biodiesel",
  density: { kind: "linear", temperature: 288.15, density: 884.8, slope: -0.733 },
  viscosity: {
    kind: "points",
    points: [
      { temperature: 273.15, kinematicViscosity: 12.2e-6 },
      { temperature: 313.15, kinematicViscosity: 4.1e-6 },
    ],
  },
  cloudPoint: 273.15,
  estimated: ["cloud point"],
  sources: [
    "viscosity: Knothe and Steidley, Fuel 86 (2007) 2560, 0 and 40 degC (from memory, 5 % either way)",
    "checked at 20 degC: 6.59 mm2/s against 6.5; at 15 degC: 7.57, inside the measured 7.4 to 9.6, ECCC 2021 (seen)",
    "cloud point about 0 degC: NREL Biodiesel Handling and Use Guide (from memory)",
    density,
  ],
};

/** Biodiesel from rapeseed or canola, pure (B100). Its viscosity is an estimate: at 15 degC 11 % or more too thin. */
export const biodieselRapeseed: Fuel = {
  ...common,
  name: "rapeseed biodiesel",
  density: { kind: "linear", temperature: 288.15, density: 884.2, slope: -0.727 },
  viscosity: {
    kind: "points",
    points: [
      { temperature: 273.15, kinematicViscosity: 14e-6 },
      { temperature: 313.15, kinematicViscosity: 4.5e-6 },
    ],
  },
  cloudPoint: 270.15,
  estimated: ["viscosity", "cloud point"],
  sources: [
    "viscosity: the same class of data as soy's, 0 and 40 degC (from memory, 5 % either way)",
    "checked at 20 degC: 7.37 mm2/s against 7.2; at 15 degC: 8.51, below the measured 9.6 to 10.7, ECCC 2021 (seen)",
    "cloud point about -3 degC: NREL Biodiesel Handling and Use Guide (from memory)",
    density,
  ],
};
