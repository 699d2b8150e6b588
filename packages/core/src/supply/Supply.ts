import type { Circuit } from "../circuit/index.js";
import type { Pump } from "./PumpKinds.js";
import type { Tank } from "./tank.js";

/** Everything from the tank to the injection pump or carburettor. */
export interface Supply {
  /** air pressure at the machine, Pa absolute */
  readonly ambientPressure: number;
  /** one, or several whose paths join before `suction` */
  readonly tanks: readonly Tank[];
  /** tank (or joint) to pump; with no pump, the whole path */
  readonly suction: Circuit;
  readonly pump: Pump;
  /** pump to injection pump; null when not stated */
  readonly delivery: Circuit | null;
}
