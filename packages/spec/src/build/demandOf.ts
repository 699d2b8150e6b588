import type { FuelState } from "@thirstline/core";
import type { SystemDemand } from "../system/index.js";

/** What the engine burns and sends back, m3/s, with fuel in a state. */
export function demandOf(demand: SystemDemand): (state: FuelState) => { burn: number; return: number } {
  if ("burn" in demand) return () => ({ burn: demand.burn, return: demand.return });
  const massFlow = demand.power * demand.specificConsumption; // kg/s
  return (state) => ({ burn: massFlow / state.density, return: demand.return });
}
