import type { Stop } from "../circuit/compile.js";
import { boreOf } from "../circuit/profile.js";
import type { FuelState } from "../fuel/index.js";
import { kineticPressure } from "./descent.js";

/** Where a walk along a path has got to. */
export interface Walk {
  /** total pressure, Pa absolute */
  total: number;
  /** bore the fuel runs in, m; null where none is known */
  bore: number | null;
  /** lowest static pressure met, Pa absolute */
  lowest: number;
}

/**
 * Walks a path at a flow and keeps the lowest static pressure met. The same figure as a descent's lowest point, without
 * describing the way: margins ask for it many times over.
 *
 * @param walk where it starts; becomes where it ends
 * @param inBank whether the path is a branch of a bank
 * @returns false where nothing passes and the walk ends
 */
export function walkAlong(stops: readonly Stop[], fuel: FuelState, flow: number, walk: Walk, inBank = false): boolean {
  for (const stop of stops) {
    if (stop.kind === "part") {
      // On the main path no flow is the start of flow: a check valve is just opening. In a branch it may be held shut.
      if (stop.run.shut || (inBank && stop.holdsBack && flow === 0)) return false;
      walk.total -= stop.run.at(flow);
      walk.bore = boreOf(stop.part) ?? walk.bore;
    } else {
      const flows = stop.bank.flows(flow);
      const drop = stop.head + stop.bank.drop;
      stop.branches.forEach((branch, at) => {
        const inside = { ...walk };
        walkAlong(branch, fuel, flows[at] ?? 0, inside, true);
        walk.lowest = Math.min(walk.lowest, inside.lowest);
      });
      walk.total -= drop;
    }
    if (!Number.isFinite(walk.total)) return false;
    walk.lowest = Math.min(walk.lowest, walk.total - kineticPressure(flow, walk.bore, fuel));
  }
  return true;
}
