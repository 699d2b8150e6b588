import type { DescentEntry } from "./descent.js";
import type { IntakeDescent } from "./IntakeKinds.js";

/** A supply at one demand. Pressures are static, as gauges read them. */
export interface SupplyState {
  /** m3/s the engine asks for, return included */
  readonly demand: number;
  /** m3/s the suction line carries */
  readonly suctionFlow: number;
  /** at the pump's inlet, below the air around, Pa; negative when fuel stands above; Infinity when nothing can pass */
  readonly vacuum: number;
  /** rise over the pump, Pa; null when the pump's rise is not stated */
  readonly pumpRise: number | null;
  /** gauge pressure at the injection pump, Pa; null when it cannot be known */
  readonly feedPressure: number | null;
  /** m3/s over the relief valve; 0 when shut, or when no more than demand passes it */
  readonly relief: number;
}

/** Every part of a supply at one demand. */
export interface SupplyDescent extends IntakeDescent {
  readonly delivery: readonly DescentEntry[];
}
