import { separationAt } from "@thirstline/core";
import type { SystemFilter } from "@thirstline/spec/system";

/** Share of the free water a filter keeps at a flow, m3/s; an absorber of which no share is stated keeps all, the safe side. */
export function keptBy({ separation, absorbs }: SystemFilter, flow: number): number {
  if (!separation) return absorbs ? 1 : 0;
  return flow > 0 ? separationAt(separation, flow) : 0;
}
