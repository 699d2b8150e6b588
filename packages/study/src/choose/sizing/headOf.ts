import type { FuelState } from "@thirstline/core";
import type { SystemPart } from "@thirstline/spec/system";

/** Free fall, m/s2, as core's rises take it. */
const FREE_FALL = 9.80665;

/** A rise that costs a drop, Pa, at any flow: it stands for a stack to find out how much room there is for one. */
export function headOf(drop: number, fuel: FuelState): SystemPart {
  return { part: "rise", name: "room", height: drop / (fuel.density * FREE_FALL) };
}
