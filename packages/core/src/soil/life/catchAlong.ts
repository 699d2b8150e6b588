import type { Stop } from "../../circuit/index.js";
import type { Efficiency } from "../capture/Capture.js";
import { binCount } from "../distribution/sizeEdges.js";

/** What a walk along a path works with; made once, since it is walked thousands of times. */
export interface CatchWork {
  /** what each filter catches, by name; others catch nothing */
  readonly efficiencies: ReadonlyMap<string, Efficiency>;
  /** takes what each filter frees the fuel of, by name: m3/s by size, per unit of what comes in */
  readonly freed: ReadonlyMap<string, Float64Array>;
  /** how many sizes to follow, from the smallest up */
  readonly bins: number;
  /** arrays for banks within banks, two a depth */
  readonly spare: Float64Array[];
  /** flows of branches as `traceFlows` recorded them, and the place of the next one */
  readonly flows: readonly number[];
  at: number;
}

/**
 * Follows fuel along a path: what share of the particles of each size is still in it at the end, and how much fuel each
 * filter frees of them on the way.
 *
 * @param stops the path
 * @param flow through it, m3/s
 * @param passing share still in the fuel at the start of the path, by size; becomes the share at its end
 * @param work gives the flows of branches, takes each filter's figure
 * @param depth how many banks this path lies within
 */
export function catchAlong(
  stops: readonly Stop[],
  flow: number,
  passing: Float64Array,
  work: CatchWork,
  depth = 0,
): void {
  const forward = Math.max(0, flow);
  const { bins } = work;
  for (const stop of stops) {
    if (stop.kind === "bank") {
      mix(stop.branches, flow, passing, work, depth);
      continue;
    }
    if (stop.part.kind !== "filter") continue;
    const efficiency = work.efficiencies.get(stop.part.name ?? "");
    const own = work.freed.get(stop.part.name ?? "");
    if (!efficiency || !own) continue;
    for (let bin = 0; bin < bins; bin++) {
      const caught = (passing[bin] as number) * (efficiency[bin] as number);
      own[bin] = forward * caught;
      passing[bin] = (passing[bin] as number) - caught;
    }
  }
}

/** Branches each clean their part of the flow; behind the bank the parts are mixed by flow. */
function mix(
  branches: readonly (readonly Stop[])[],
  total: number,
  passing: Float64Array,
  work: CatchWork,
  depth: number,
): void {
  const { bins } = work;
  const before = spareOf(work, 2 * depth);
  const inside = spareOf(work, 2 * depth + 1);
  before.set(passing);
  passing.fill(0);
  for (let at = 0; at < branches.length; at++) {
    const flow = work.flows[work.at] as number;
    work.at++;
    inside.set(before);
    catchAlong(branches[at] as readonly Stop[], flow, inside, work, depth + 1);
    const share = flow / total;
    for (let bin = 0; bin < bins; bin++) {
      passing[bin] = (passing[bin] as number) + share * (inside[bin] as number);
    }
  }
}

function spareOf({ spare }: CatchWork, place: number): Float64Array {
  const found = spare[place] ?? new Float64Array(binCount);
  spare[place] = found;
  return found;
}
