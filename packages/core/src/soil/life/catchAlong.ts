import type { Stop } from "../../circuit/index.js";
import type { Efficiency } from "../capture/Capture.js";
import { binCount } from "../distribution/sizeEdges.js";

/** What each filter frees the fuel of, by name: m3/s by size, per unit of what comes in. */
export type Freed = Map<string, Float64Array>;

/**
 * Follows fuel along a path: what share of the particles of each size is still in it at the end, and how much fuel each
 * filter frees of them on the way.
 *
 * @param stops the path
 * @param flow through it, m3/s
 * @param passing share still in the fuel at the start of the path, by size; becomes the share at its end
 * @param efficiencies what each filter catches by name; others catch nothing
 * @param freed takes each filter's figure
 */
export function catchAlong(
  stops: readonly Stop[],
  flow: number,
  passing: Float64Array,
  efficiencies: ReadonlyMap<string, Efficiency>,
  freed: Freed,
): void {
  for (const stop of stops) {
    if (stop.kind === "bank") {
      mix(stop.branches, stop.bank.flows(flow), flow, passing, efficiencies, freed);
      continue;
    }
    const name = stop.part.name ?? "";
    const efficiency = stop.part.kind === "filter" ? efficiencies.get(name) : undefined;
    if (!efficiency) continue;
    const own = new Float64Array(binCount);
    const forward = Math.max(0, flow);
    for (let bin = 0; bin < binCount; bin++) {
      const caught = (passing[bin] as number) * (efficiency[bin] as number);
      own[bin] = forward * caught;
      passing[bin] = (passing[bin] as number) - caught;
    }
    freed.set(name, own);
  }
}

/** Branches each clean their part of the flow; behind the bank the parts are mixed by flow. */
function mix(
  branches: readonly (readonly Stop[])[],
  flows: Float64Array,
  total: number,
  passing: Float64Array,
  efficiencies: ReadonlyMap<string, Efficiency>,
  freed: Freed,
): void {
  const before = passing.slice();
  passing.fill(0);
  branches.forEach((branch, at) => {
    const flow = flows[at] as number;
    const inside = before.slice();
    catchAlong(branch, flow, inside, efficiencies, freed);
    const share = flow / total;
    for (let bin = 0; bin < binCount; bin++) {
      passing[bin] = (passing[bin] as number) + share * (inside[bin] as number);
    }
  });
}
