/** What a system must keep to; what is left out was not stated. */
export interface SystemLimits {
  /** most vacuum at the pump's inlet with clean elements, Pa */
  readonly vacuumClean?: number;
  /** most vacuum at the pump's inlet before elements are changed, Pa */
  readonly vacuumAtChange?: number;
  /** least gauge pressure at the injection pump, Pa */
  readonly feedPressure?: number;
  /** who says so */
  readonly source?: string;
}
