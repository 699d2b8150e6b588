import {
  atmosphere,
  type Circuit,
  type FuelState,
  fuelState,
  type Limits,
  line,
  type Pump,
  pump,
  type Supply,
  series,
  type Tank,
  tank,
  type Vent,
} from "@thirstline/core";
import fc from "fast-check";
import { aCheckValve, aFrictionPart } from "./arbitraries.js";
import { aCircuit } from "./circuits.js";
import { logUniform, uniform } from "./random.js";

// Random supplies: tanks, suction, every kind of pump, delivery, limits. Sizes are those of machines, from a lawn mower to
// a ship, so that limits bind now here, now there.

/** A fuel of any machine, from petrol to cold heavy oil. */
export const anEngineFuel: fc.Arbitrary<FuelState> = fc
  .record({ density: uniform(650, 950), kinematicViscosity: logUniform(3e-7, 1e-3), vapourPressure: uniform(0, 60e3) })
  .map((given) => fuelState(given));

/** What an engine asks for, return included, m3/s. */
export const aDemand = logUniform(1e-7, 1e-3);

/** Air pressure from below sea level to a mountain pass, Pa. */
export const anAmbientPressure = uniform(-400, 5000).map((altitude) => atmosphere(altitude));

const aVent: fc.Arbitrary<Vent> = fc.oneof(
  fc.constant<Vent>({ kind: "open" }),
  uniform(0, 5000).map((opening): Vent => ({ kind: "spring", opening })),
);

const aDepth = uniform(0, 3);

const holding = { rises: 1.5, checkValves: true, shutBranches: true };

/** A path of moderate lines and filters with a bank here and there. */
export const aPath: fc.Arbitrary<Circuit> = fc
  .tuple(logUniform(0.1, 20), logUniform(0.004, 0.03), aCircuit(holding, 2))
  .map(([length, bore, circuit]) => series(line({ length, bore, roughness: 1.5e-6 }), circuit));

/** A tank's way to the joint: a line, and more or a check valve behind it now and then. */
const aTankPath: fc.Arbitrary<Circuit> = fc
  .tuple(logUniform(0.1, 10), logUniform(0.004, 0.03), fc.option(fc.oneof(aFrictionPart, aCheckValve)))
  .map(([length, bore, more]) => series(line({ length, bore, roughness: 1.5e-6 }), ...(more ? [more] : [])));

export const aSingleTank: fc.Arbitrary<Tank> = fc.record({ depth: aDepth, vent: aVent }).map((given) => tank(given));

/** Two or three tanks that join, of any heads. */
export const someTanks: fc.Arbitrary<Tank[]> = fc.array(
  fc.record({ depth: aDepth, vent: aVent, path: aTankPath }).map((given) => tank(given)),
  { minLength: 2, maxLength: 3 },
);

const aSlip = fc.option(
  fc.record({ share: uniform(0, 1.5), rise: logUniform(1e3, 1e6), dynamicViscosity: logUniform(3e-4, 0.1) }),
);

/** A fixed pump whose relief goes where it is told; its slip may eat all it moves. */
export function aFixedPump(reliefTo: "inlet" | "tank"): fc.Arbitrary<Pump> {
  return fc
    .record({ flow: logUniform(1e-7, 3e-3), slip: aSlip, relief: logUniform(1e3, 5e5) })
    .map(({ flow, slip, relief }) => {
      const stated = slip && { flow: slip.share * flow, rise: slip.rise, dynamicViscosity: slip.dynamicViscosity };
      return pump({ kind: "fixed", flow, slip: stated, relief, reliefTo });
    });
}

const aCurvePump: fc.Arbitrary<Pump> = fc
  .array(fc.tuple(uniform(0.05, 1), uniform(0, 1)), { minLength: 2, maxLength: 5 })
  .chain((steps) =>
    fc.tuple(fc.constant(steps), logUniform(1e-7, 3e-3), logUniform(1e3, 3e5)).map(([all, most, highest]) => {
      let flow = 0;
      let rise = highest;
      const points = all.map(([more, less], at) => {
        if (at > 0) {
          flow += more * most;
          rise *= less;
        }
        return { flow, rise };
      });
      return pump({ kind: "curve", points });
    }),
  );

export const aPulsePump: fc.Arbitrary<Pump> = fc
  .record({ flow: logUniform(1e-7, 1e-3), suction: logUniform(1e3, 5e4) })
  .map((given) => pump({ kind: "pulse", ...given }));

export const aPump: fc.Arbitrary<Pump> = fc.oneof(
  fc.constant<Pump>({ kind: "none" }),
  aFixedPump("inlet"),
  aFixedPump("tank"),
  aCurvePump,
  aPulsePump,
);

/** A supply of one tank, or of several that join before the suction path. */
export const aSupply: fc.Arbitrary<Supply> = fc
  .record({
    ambientPressure: anAmbientPressure,
    tanks: fc.oneof(
      aSingleTank.map((one) => [one]),
      someTanks,
    ),
    suction: aPath,
    pump: aPump,
    delivery: fc.option(aPath),
  })
  .map((supply) => (supply.pump.kind === "none" ? { ...supply, delivery: null } : supply));

/** Any of the limits, or none. */
export const someLimits: fc.Arbitrary<Limits> = fc
  .record({ clean: uniform(5e3, 30e3), more: uniform(0, 40e3), feedPressure: uniform(0, 50e3), stated: fc.nat(7) })
  .map(({ clean, more, feedPressure, stated }) => ({
    ...(stated & 1 ? { vacuumClean: clean } : {}),
    ...(stated & 2 ? { vacuumAtChange: clean + more } : {}),
    ...(stated & 4 ? { feedPressure } : {}),
  }));
