/** What a system must keep to; each figure left out is not asked for, save where `judge` says so. */
export interface Limits {
  /** most vacuum at the pump's inlet with clean elements, Pa */
  readonly vacuumClean?: number;
  /** most vacuum at the pump's inlet before elements are changed, Pa */
  readonly vacuumAtChange?: number;
  /** least gauge pressure at the injection pump or, with no pump, at the engine, Pa; 0 when left out: the head is spent */
  readonly feedPressure?: number;
}

/** The names of what can bind. */
export type LimitName = "vacuum clean" | "vacuum at change" | "feed pressure" | "vapour" | "pump capacity";
