import type { GaugeReading, System } from "@thirstline/spec/system";
import type { GaugeAnswer, GaugeOptions } from "../../gauge/GaugeAnswer.js";
import type { GaugeFits } from "../../gauge/gaugeFits.js";

/** What the figures of readings are worked out from. */
export interface GaugeGiven {
  readonly system: System;
  readonly readings: readonly GaugeReading[];
  readonly answer: GaugeAnswer;
  readonly options: GaugeOptions;
  /** null where readings cannot be held against the system */
  readonly fits: GaugeFits | null;
}
