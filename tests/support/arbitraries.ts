import {
  type Circuit,
  type Filter,
  type FilterGiven,
  type FuelState,
  filter,
  fitting,
  fuelState,
  line,
  MOST_ROUGH,
  netRise,
  orifice,
  type Parallel,
  type Part,
  type Passage,
  parallel,
  type RatingKind,
  rise,
  series,
  strainer,
  valve,
} from "@thirstline/core";
import fc from "fast-check";

// Random fuels, parts and circuits, wide on purpose: from a jet to a dock's pipe, from petrol to cold bitumen. Sizes are
// drawn evenly over their logarithm, so that a millimetre is met as often as a metre. Random supplies: supplies.ts.

/** A number drawn evenly over its logarithm. */
export function logUniform(from: number, to: number): fc.Arbitrary<number> {
  const logs = { min: Math.log10(from), max: Math.log10(to), noNaN: true };
  return fc.double(logs).map((log) => Math.min(to, Math.max(from, 10 ** log)));
}

/** A number drawn evenly. */
export function uniform(from: number, to: number): fc.Arbitrary<number> {
  return fc.double({ min: from, max: to, noNaN: true });
}

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

export const aLine: fc.Arbitrary<Part> = aLineShape.map((shape) => line(shape));

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

/** A climb or a fall of at most so many metres. */
function aRise(most: number): fc.Arbitrary<Part> {
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

/** What a random circuit may hold besides friction. */
export interface Holding {
  /** climbs and falls of at most so many metres; the branches of a bank are brought to the same net rise */
  readonly rises?: number;
  /** check valves */
  readonly checkValves?: boolean;
  /** branches of a bank that are shut, never all of them */
  readonly shutBranches?: boolean;
}

export const everything: Holding = { rises: 30, checkValves: true, shutBranches: true };

/** Friction alone. */
export const aFrictionCircuit = aCircuit({});

/** A circuit that lets fuel pass, series and banks up to four deep. */
export function aCircuit(holding: Holding, depth = 4): fc.Arbitrary<Circuit> {
  return fc
    .tuple(circuitOf(holding, depth), aFrictionPart)
    .map(([{ circuit }, part]) => (resists(circuit) ? circuit : series(circuit, part)));
}

/** Whether a circuit is more than rises; no fitting here is without loss. */
function resists(circuit: Circuit): boolean {
  return circuit.kind === "series" ? circuit.items.some(resists) : circuit.kind !== "rise";
}

/** Branches that leave one point and meet at another; all with the same net rise, the first never shut. */
export function someBranches(holding: Holding, depth = 2): fc.Arbitrary<Circuit[]> {
  const some = fc.array(branchOf(holding, depth - 1), { minLength: 2, maxLength: depth > 2 ? 3 : 8 });
  const climb = holding.rises ? uniform(-holding.rises, holding.rises) : fc.constant(0);
  return fc.tuple(some, climb).map(([branches, height]) =>
    branches.map(({ circuit, shut }, at) => {
      const level = holding.rises ? levelled(circuit, height) : circuit;
      return at > 0 && shut ? series(level, shut) : level;
    }),
  );
}

/** A bank of them. */
export function aBank(holding: Holding, depth = 2): fc.Arbitrary<Parallel> {
  return someBranches(holding, depth).map((branches) => parallel(...branches));
}

/** The circuit, and behind it the rise that makes its net rise the one asked for. */
function levelled(circuit: Circuit, height: number): Circuit {
  return series(circuit, rise({ height: height - netRise(circuit) }));
}

interface Drawn {
  readonly circuit: Circuit;
  readonly shut?: Circuit | null;
}

function aPart({ rises, checkValves }: Holding): fc.Arbitrary<Part> {
  return fc.oneof(
    { weight: 6, arbitrary: aFrictionPart },
    ...(rises ? [{ weight: 2, arbitrary: aRise(rises) }] : []),
    ...(checkValves ? [{ weight: 1, arbitrary: aCheckValve }] : []),
  );
}

function circuitOf(holding: Holding, depth: number): fc.Arbitrary<Drawn> {
  const part = aPart(holding).map((one): Drawn => ({ circuit: one }));
  if (depth === 0) return part;
  const run = fc
    .array(circuitOf(holding, depth - 1), { minLength: 1, maxLength: 4 })
    .map((items): Drawn => ({ circuit: series(...items.map(({ circuit }) => circuit)) }));
  const bank = aBank(holding, depth).map((circuit): Drawn => ({ circuit }));
  return fc.oneof({ weight: 1, arbitrary: part }, { weight: 2, arbitrary: run }, { weight: 2, arbitrary: bank });
}

/** A branch starts with something that resists, since a bare rise cannot be a branch. */
function branchOf(holding: Holding, depth: number): fc.Arbitrary<Drawn> {
  const open = depth <= 0 ? aFrictionPart : fc.tuple(aFrictionPart, circuitOf(holding, depth - 1));
  const first = (drawn: Part | [Part, Drawn]): Circuit =>
    Array.isArray(drawn) ? series(drawn[0], drawn[1].circuit) : drawn;
  const shut = holding.shutBranches ? fc.option(aShutFilter, { freq: 4 }) : fc.constant(null);
  return fc.tuple(open as fc.Arbitrary<Part | [Part, Drawn]>, shut).map(([drawn, closed]) => ({
    circuit: first(drawn),
    shut: closed,
  }));
}
