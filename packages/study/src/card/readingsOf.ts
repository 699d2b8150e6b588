import type { System } from "@thirstline/spec/system";
import type { CheckPoint } from "../check/CheckAnswer.js";
import { check } from "../check/check.js";
import type { CardReading } from "./CardAnswer.js";

/**
 * What the gauge should read: at the duty's lowest load, where it states loads, and at full demand. It is what `check`
 * says of the system as it is handed in: with its elements clean, or as soiled as the file has those that stay.
 */
export function readingsOf(
  system: System,
  temperature: number,
): { readonly readings: readonly CardReading[]; readonly full: CheckPoint } {
  const at = (demand?: number) =>
    check(system, { temperatures: [temperature], ...(demand === undefined ? {} : { demand }) }).points[0] as CheckPoint;
  const full = at();
  const lowest = Math.min(1, ...(system.duty?.loads ?? []).map(({ load }) => load));
  const low = lowest < 1 ? [readingOf(lowest, at(lowest * full.demand.total))] : [];
  const shut = full.reasons.some(({ code }) => code === "shut");
  return { readings: shut ? [] : [...low, readingOf(1, full)], full };
}

function readingOf(load: number, point: CheckPoint): CardReading {
  return {
    load,
    demand: point.demand.total,
    vacuum: point.vacuumNow ?? point.vacuum,
    feed: point.feedPressure,
  };
}
