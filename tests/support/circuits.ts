import { type Circuit, netRise, type Parallel, type Part, parallel, rise, series } from "@thirstline/core";
import fc from "fast-check";
import { aCheckValve, aFrictionPart, aRise } from "./arbitraries.js";
import { aShutFilter } from "./filters.js";
import { uniform } from "./random.js";

// Random circuits: series and banks of the parts in arbitraries.ts.

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
function aBank(holding: Holding, depth = 2): fc.Arbitrary<Parallel> {
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
