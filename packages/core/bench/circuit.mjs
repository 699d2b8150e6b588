import { filter, fitting, fuelState, line, parallel, rise, series, twoKConstants } from "@thirstline/core";

/** The fuel of the bench: a cool winter diesel, given outright. */
export const fuel = fuelState({ density: 830, kinematicViscosity: 4e-6, vapourPressure: 0 });

/**
 * One filter test condition for all: 200 L/h of 3 mm2/s fuel.
 * @param {number} drop Pa
 */
function tested(drop) {
  return filter({ clean: { drop, flow: 200 / 3.6e6, dynamicViscosity: 3e-6 * 830 } });
}

/** Plain figures of the circuit, which the plain solver reads too. */
export const shape = {
  wide: { length: 6, bore: 0.019, roughness: 1e-5 },
  narrow: { length: 2, bore: 0.006, roughness: 1.5e-6 },
  elbow: { bore: 0.01, ...twoKConstants["elbow 90 screwed"] },
  bend: { bore: 0.01, k: 0.9 },
  height: 0.9,
  branches: [
    { line: { length: 1, bore: 0.008, roughness: 1.5e-6 }, drop: 2000 },
    { line: { length: 1.5, bore: 0.008, roughness: 1.5e-6 }, drop: 3000 },
    { line: { length: 0.5, bore: 0.006, roughness: 1.5e-6 }, drop: 2000 },
  ],
  fine: 3000,
};

/**
 * Twelve parts: a line in laminar and one in turbulent flow, two fittings, a rise, an uneven bank of three branches of
 * line and filter, and a fine filter.
 */
export const circuit = series(
  line(shape.wide),
  line(shape.narrow),
  fitting({ bore: shape.elbow.bore, twoK: shape.elbow }),
  fitting(shape.bend),
  rise({ height: shape.height }),
  parallel(...shape.branches.map((branch) => series(line(branch.line), tested(branch.drop)))),
  tested(shape.fine),
);

/** Flow through it, m3/s: about 340 L/h. */
export const flow = 9.5e-5;
