import type { GaugeReading, System } from "@thirstline/spec/system";
import type { GaugeAnswer, GaugeElement, HoursLeft, Interval, SideAnswer } from "@thirstline/study";
import { partsIn } from "../../model/parts.js";
import type { Course, CoursePoint } from "./Course.js";
import { type FullDemand, fullDemand } from "./fullDemand.js";
import { type SoilKnown, soilLine } from "./soilLine.js";

/** Places along the drawn course. */
const PLACES = 72;

/** What one gauge shows over the hours: readings as points, the fitted course with its band, where it meets the limit. */
export function courseOf(
  system: System,
  readings: readonly GaugeReading[],
  answer: GaugeAnswer,
  side: SideAnswer,
): Course {
  const { pump, left } = answer;
  const own = readings.filter((one) => readOf(one, side, pump) !== undefined);
  const rows = own.slice(-side.readings);
  const now = side.trace.time.at(-1) ?? 0;
  const temperature = left?.pointTemperature ?? system.temperature;
  const lead = leadOf(side);
  const full = lead && side.trend ? fullDemand(system, answer, side, lead, temperature) : null;
  const met = left !== null && isOf(left, side) ? left : null;
  const crossing: Interval | null = met && { low: now + met.low, middle: now + met.middle, high: now + met.high };
  const end = met && full && endRatio(met, side, full, system);
  const known: SoilKnown | null = lead && {
    start: startOf(answer, system, lead),
    now,
    ratio: lead.ratio,
    end: crossing && end !== null ? { time: crossing, ratio: end } : null,
  };
  const soil = full && known && soilLine(side, known);
  const valueAt = (time: number) => {
    if (!full || !soil) return null;
    const { low, middle, high } = soil(time);
    return { low: full.at(low), middle: full.at(middle), high: full.at(high) };
  };
  const off = new Set(answer.outliers.filter((one) => one.side === side.side).map(({ row }) => row));
  const points = side.trace.time.map((time, at): CoursePoint => {
    const [read, expected] = [side.trace.read[at] ?? 0, side.trace.reckoned[at] ?? 0];
    const value = valueAt(time);
    const row = rows[at]?.row ?? 0;
    return { row, time, read, expected, full: value && value.middle + read - expected, off: off.has(row) };
  });
  const from = known?.start === null ? (side.trace.time[0] ?? 0) : 0;
  const times = Array.from({ length: PLACES + 1 }, (_, at) => from + (at / PLACES) * (lastOf(now, crossing) - from));
  const values = times.map(valueAt).filter((one) => one !== null);
  const line = {
    time: times,
    low: values.map(({ low }) => low),
    middle: values.map(({ middle }) => middle),
    high: values.map(({ high }) => high),
  };
  return {
    side: side.side,
    points,
    earlier: own
      .slice(0, own.length - rows.length)
      .map((one) => ({ row: one.row, read: readOf(one, side, pump) ?? Number.NaN })),
    temperature,
    ofLimit: left !== null,
    line: values.length === times.length ? line : null,
    limit: full?.limit ?? null,
    crossing,
    now,
  };
}

/** What one gauge showed at a reading, Pa; with no pump there is one gauge, which may be noted either way. */
function readOf(
  { vacuum, feedPressure }: GaugeReading,
  { side }: SideAnswer,
  pump: GaugeAnswer["pump"],
): number | undefined {
  if (side === "delivery") return feedPressure;
  if (pump !== "none" || vacuum !== undefined) return vacuum;
  return feedPressure === undefined ? undefined : -feedPressure;
}

/** The element with most soil. */
function leadOf({ elements }: SideAnswer): GaugeElement | null {
  const [first = null, ...rest] = elements;
  return first && rest.reduce((most, one) => (one.ratio.middle > most.ratio.middle ? one : most), first);
}

function startOf({ cautions }: GaugeAnswer, system: System, { name }: GaugeElement): number | null {
  const by = cautions.find(({ code }) => code === "start");
  const jumped = cautions.some(({ code }) => code === "after the jump");
  if (jumped || by?.code !== "start" || by.by === "not known") return null;
  if (by.by !== "stated") return 1;
  const part = partsIn(system).find((one) => one.part === "filter" && one.name === name);
  return part?.part === "filter" ? (part.restriction ?? 1) : 1;
}

/** Whether what ends the hours left is seen by this gauge. */
function isOf({ by }: HoursLeft, { side, elements }: SideAnswer): boolean {
  if (by.kind === "terminal drop") return elements.some(({ name }) => name === by.element);
  return (by.limit === "feed pressure") === (side === "delivery");
}

/** The resistance of the element that goes first when the limit is met; null where no gauge tells. */
function endRatio({ by }: HoursLeft, side: SideAnswer, full: FullDemand, system: System): number | null {
  if (by.kind === "limit") return full.ratioAtLimit;
  const element = side.elements.find(({ name }) => name === by.element);
  const part = partsIn(system).find((one) => one.part === "filter" && one.name === by.element);
  if (!element || part?.part !== "filter" || part.terminalDrop === undefined) return null;
  const { drop, dropClean, ratio } = element;
  return 1 + ((ratio.middle - 1) * (part.terminalDrop - dropClean)) / (drop - dropClean);
}

/** Last running time drawn, s: what counts, with room for its words. */
function lastOf(now: number, crossing: Interval | null): number {
  if (crossing === null) return now;
  const far = Number.isFinite(crossing.high) ? crossing.high : 1.5 * crossing.middle;
  return now + 1.06 * (Math.min(far, 2.5 * crossing.middle) - now);
}
