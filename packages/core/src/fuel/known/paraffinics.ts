import type { Fuel } from "../Fuel.js";

/** Paraffinic diesel: hydrotreated vegetable oil (HVO), EN 15940. */
export const paraffinic: Fuel = {
  name: "paraffinic diesel",
  composition: { paraffinic: 1 },
  density: { kind: "volume correction", densityAt15: 780 },
  viscosity: {
    kind: "points",
    points: [
      { temperature: 293.15, kinematicViscosity: 4.3e-6 },
      { temperature: 313.15, kinematicViscosity: 2.8e-6 },
    ],
  },
  vapourPressure: { kind: "none" },
  // The summer grade's limit, the safe side; the same sheet gives -34 degC for its winter grade.
  cloudPoint: 258.15,
  cloudPointLimit: 258.15,
  range: { from: 293.15, to: 313.15 },
  status: "representative",
  estimated: ["viscosity", "density"],
  sources: [
    "viscosity at 40 degC: EN 15940 fuel sheet (seen); at 20 degC: general literature (from memory, 5 % either way)",
    "cloud point: limit of the summer grade of one EN 15940 fuel sheet (seen)",
    "density: the same sheet (seen); its change with temperature by table 54B, not made for it (computed)",
  ],
};
