import { fuelState, line, pump, type Supply, SupplyModel, tank } from "@thirstline/core";

const diesel = fuelState({ density: 830, kinematicViscosity: 3e-6, vapourPressure: 100 });

/** A suction hose that is smooth, and laminar at what an engine takes. */
export const hose = line({ length: 3, bore: 0.012, roughness: 1e-6 });

/** One hose, and a pump that relieves to its inlet. */
export const plain: Supply = {
  ambientPressure: 101325,
  tanks: [tank({ depth: 0.2 })],
  suction: hose,
  pump: pump({ kind: "fixed", flow: 2e-4, slip: null, relief: 80e3, reliefTo: "inlet" }),
  delivery: null,
};

/** The model of the plain supply on diesel of round figures, but for what is given. */
export function modelOf(supply: Partial<Supply>): SupplyModel {
  return new SupplyModel({ ...plain, ...supply }, { fuel: diesel, passage: "smooth", end: "middle" });
}
