import { type Filter, type FilterGiven, filter, type RatingKind } from "@thirstline/core";
import fc from "fast-check";
import { logUniform, uniform } from "./random.js";

// Random filters: every source of a medium, with and without body, folds and soil.

const anArea = logUniform(0.01, 10);
const aThickness = logUniform(1e-4, 5e-3);

/** A medium from each of its six sources. */
const aMedium: fc.Arbitrary<FilterGiven> = fc.oneof(
  fc
    .record({ drop: logUniform(10, 1e5), flow: logUniform(1e-6, 1e-2), dynamicViscosity: logUniform(1e-4, 0.1) })
    .map((clean) => ({ clean })),
  fc
    .record({
      drop: logUniform(10, 1e5),
      flow: logUniform(1e-6, 1e-2),
      slower: uniform(0.05, 0.9),
      linearShare: fc.oneof(fc.constantFrom(0, 1), uniform(0, 1)),
      density: uniform(600, 1000),
      dynamicViscosity: logUniform(1e-4, 0.1),
    })
    .map(({ drop, flow, slower, linearShare, density, dynamicViscosity }): FilterGiven => {
      const less = drop * (linearShare * slower + (1 - linearShare) * slower ** 2);
      const slow = { drop: less, flow: flow * slower };
      return { test: { points: [slow, { drop, flow }], density, dynamicViscosity } };
    }),
  fc
    .record({
      area: anArea,
      thickness: aThickness,
      permeability: logUniform(1e-14, 1e-10),
      inertia: fc.oneof(fc.constant(0), logUniform(1e3, 1e7)),
    })
    .map((media) => ({ media })),
  fc
    .record({
      flow: logUniform(1e-5, 1e-2),
      sampleArea: logUniform(1e-3, 1e-2),
      pressure: uniform(50, 500),
      area: anArea,
    })
    .map((airTest) => ({ airTest })),
  fc
    .record({
      diameter: logUniform(1e-6, 5e-5),
      solidity: uniform(0.006, 0.3),
      area: anArea,
      thickness: aThickness,
    })
    .map((fibre) => ({ fibre })),
  fc
    .record({
      size: logUniform(1e-6, 1e-4),
      kind: fc.constantFrom<RatingKind>("nominal", "absolute", "beta 75", "beta 200", "beta 1000"),
      area: anArea,
      thickness: aThickness,
    })
    .map((rating) => ({ rating })),
);

const aBody: fc.Arbitrary<Partial<FilterGiven>> = fc.record(
  {
    housing: fc.record({ k: uniform(0, 20), port: logUniform(0.004, 0.05) }),
    pleats: fc.record({ depth: logUniform(0.005, 0.05), gap: logUniform(1e-4, 3e-3), area: anArea }),
    restriction: fc.oneof(fc.constant(1), logUniform(1, 1e4)),
    reversed: fc.boolean(),
  },
  { requiredKeys: [] },
);

/** A filter that lets fuel pass. */
export const aFilter: fc.Arbitrary<Filter> = fc
  .tuple(aMedium, aBody)
  .map(([medium, body]) => filter({ ...medium, ...body }));

/** A filter that does not: shut off, or plugged to the last pore. */
export const aShutFilter: fc.Arbitrary<Filter> = fc
  .tuple(aMedium, aBody, fc.boolean())
  .map(([medium, body, plugged]) =>
    filter({ ...medium, ...body, ...(plugged ? { restriction: Infinity } : { blocked: true }) }),
  );
