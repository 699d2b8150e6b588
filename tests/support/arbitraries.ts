import {
  type FuelState,
  fitting,
  fuelState,
  line,
  MOST_ROUGH,
  orifice,
  type Part,
  type Passage,
  rise,
  strainer,
  valve,
} from "@thirstline/core";
import fc from "fast-check";
import { aFilter } from "./filters.js";
import { logUniform, uniform } from "./random.js";

// Random fuels, flows and parts, wide on purpose: from a jet to a dock's pipe, from petrol to cold bitumen. Sizes are
// drawn evenly over their logarithm, so that a millimetre is met as often as a metre. Filters, circuits and
// supplies have files of their own.

/** Density 600 to 1000 kg/m3, viscosity 1e-7 to 1e-2 m2/s: wider than any fuel. */
export const aFuel: fc.Arbitrary<FuelState> = fc
  .record({ density: uniform(600, 1000), kinematicViscosity: logUniform(1e-7, 1e-2), vapourPressure: uniform(0, 60e3) })
  .map((given) => fuelState(given));

/** How much, m3/s: a drop an hour to a river. */
export const aFlowSize = logUniform(1e-12, 1);

/** m3/s, either way. */
export const aFlow = fc.tuple(aFlowSize, fc.boolean()).map(([size, backward]) => (backward ? -size : size));

/** Either drawing of the passage between laminar and turbulent flow. */
export const aPassage = fc.constantFrom<Passage>("smooth", "early");

/** Wall roughness over bore, its ends and the smooth wall among it. */
export const aRelativeRoughness = fc.oneof(
  { weight: 1, arbitrary: fc.constantFrom(0, MOST_ROUGH) },
  { weight: 3, arbitrary: logUniform(1e-7, MOST_ROUGH) },
);

const aBore = logUniform(0.002, 0.3);

/** The figures of a line, still to be changed by a law. */
export const aLineShape = fc
  .tuple(logUniform(0.01, 1000), aBore, aRelativeRoughness)
  .map(([length, bore, rough]) => ({ length, bore, roughness: rough * bore }));

const aLine: fc.Arbitrary<Part> = aLineShape.map((shape) => line(shape));

const aFitting: fc.Arbitrary<Part> = fc
  .tuple(
    aBore,
    fc.integer({ min: 1, max: 6 }),
    fc.oneof(
      logUniform(0.01, 100).map((k) => () => ({ k })),
      fc.tuple(logUniform(10, 2000), uniform(0, 5)).map(([k1, kInfinity]) => () => ({ twoK: { k1, kInfinity } })),
      fc.tuple(logUniform(1, 500), aRelativeRoughness).map(([bores, rough]) => (bore: number) => ({
        equivalentLength: bores,
        roughness: rough * bore,
      })),
    ),
  )
  .map(([bore, count, lossOf]) => fitting({ bore, count, ...lossOf(bore) }));

/** A climb or a fall of at most so many metres. */
export function aRise(most: number): fc.Arbitrary<Part> {
  return uniform(-most, most).map((height) => rise({ height }));
}

const aKv = logUniform(1e-5, 0.1);

/** A valve that shuts against backward flow. */
export const aCheckValve: fc.Arbitrary<Part> = fc
  .record({ opening: fc.oneof(fc.constant(0), logUniform(10, 1e5)), kv: aKv })
  .map((given) => valve(given));

const aPlainValve: fc.Arbitrary<Part> = aKv.map((kv) => valve({ kv, oneWay: false }));

const anOrifice: fc.Arbitrary<Part> = fc
  .record({ diameter: logUniform(2e-4, 0.05), dischargeCoefficient: uniform(0.5, 1) })
  .map((given) => orifice(given));

const aStrainer: fc.Arbitrary<Part> = fc
  .tuple(logUniform(2e-5, 2e-3), uniform(0.3, 1), logUniform(1e-4, 0.1))
  .map(([aperture, wires, area]) => strainer({ aperture, wire: wires * aperture, area }));

/** A part that resists flow, either way alike. */
export const aFrictionPart: fc.Arbitrary<Part> = fc.oneof(
  { weight: 4, arbitrary: aLine },
  { weight: 2, arbitrary: aFitting },
  { weight: 3, arbitrary: aFilter },
  { weight: 1, arbitrary: aPlainValve },
  { weight: 1, arbitrary: anOrifice },
  { weight: 1, arbitrary: aStrainer },
);
