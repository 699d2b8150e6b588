import type { Stop } from "../circuit/compile.js";
import type { DescentEntry, LowPoint } from "./descent.js";
import type { Tank } from "./tank.js";

/** What one tank gives at a flow. */
export interface TankShare {
  readonly tank: Tank;
  /** m3/s; negative when fuel runs back into it */
  readonly flow: number;
  /** total pressure at its pick-up, Pa absolute */
  readonly source: number;
  /** along the tank's own path, up to the joint */
  readonly descent: readonly DescentEntry[];
}

/** The suction side at a flow. */
export interface IntakeDescent {
  readonly tanks: readonly TankShare[];
  readonly suction: readonly DescentEntry[];
  /** total pressure where the suction path begins: the tanks' joint, or behind the only tank's path, Pa absolute */
  readonly joint: number;
  /** lowest static pressure anywhere on the way, and the part behind which it stands; null where nothing passes */
  readonly lowest: LowPoint | null;
  /** bore at the pump's inlet, m; null when no line or fitting comes before it */
  readonly bore: number | null;
}

/** A stretch of path with its flow, m3/s. */
export interface Way {
  readonly stops: readonly Stop[];
  readonly flow: number;
}
