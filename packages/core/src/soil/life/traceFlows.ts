import type { Stop } from "../../circuit/index.js";

/**
 * Records how a flow splits on its way: the flow of every branch of every bank, m3/s, in the order they are met.
 *
 * @param stops the path
 * @param flow through it, m3/s
 * @param into takes the flows, from place `at` on
 * @returns the place after the last one taken
 */
export function traceFlows(stops: readonly Stop[], flow: number, into: number[], at: number): number {
  let next = at;
  for (const stop of stops) {
    if (stop.kind !== "bank") continue;
    const flows = stop.bank.flows(flow);
    for (let branch = 0; branch < flows.length; branch++) {
      const own = flows[branch] as number;
      into[next] = own;
      next = traceFlows(stop.branches[branch] as readonly Stop[], own, into, next + 1);
    }
  }
  return next;
}
