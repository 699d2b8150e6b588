import type { GaugeReading, System } from "@thirstline/spec/system";
import { gauge } from "@thirstline/study";
import type { Told } from "../messages.js";
import { courseOf } from "./courseOf.js";

/** What the gauge says, and what it shows over the hours. */
export function workGauge(system: System, readings: readonly GaugeReading[]): Told {
  const answer = gauge(system, readings);
  const courses = answer.sides.map((side) => courseOf(system, readings, answer, side));
  return { kind: "gauge", answer, courses };
}
