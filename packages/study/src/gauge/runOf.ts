import type { GaugeReading, System } from "@thirstline/spec/system";
import type { Start } from "./Instant.js";

/** A reading with its running time, s. */
export interface Timed {
  readonly reading: GaugeReading;
  /** since the run began, s */
  readonly time: number;
}

/** The readings that count for what is fitted now. */
export interface RunReadings {
  readonly readings: readonly Timed[];
  readonly start: Start;
  /** readings of elements that have been changed since */
  readonly earlier: number;
  /** what the hour meter showed, s, when the run began; null where readings have dates only */
  readonly meter: number | null;
}

/** Why readings cannot be put in time. */
export type NoRun = { readonly code: "no duty for dates" } | { readonly code: "hours and dates mixed" };

const YEAR = 365.25 * 24 * 3600 * 1000;
const HOUR = 3600;

/**
 * The readings since the last change of elements, in running time. A change is one noted in the readings, or the last change
 * of the file; without either, soil that the file states is a known start, and else nothing is known of it.
 *
 * Dates become running time by the hours of the file's duty, evenly spread over the calendar.
 *
 * @param stated resistance over clean of the leading element as the file states it; 1 when it states none
 */
export function runOf(readings: readonly GaugeReading[], system: System, stated: number): RunReadings | NoRun {
  const clock = clockOf(readings, system);
  if ("code" in clock) return clock;
  const times = readings.map(clock.time);
  const changed = readings.findLastIndex((one) => one.changed);
  const last = clock.lastChange;
  if (last !== null && (changed < 0 || last > (times[changed] as number))) {
    const first = times.findIndex((time) => time >= last);
    if (first >= 0)
      return runFrom(readings, times, first, last, { known: true, ratio: 1, by: "last change" }, clock.byHours);
  }
  if (changed >= 0) {
    const start: Start = { known: true, ratio: 1, by: "change in the readings" };
    return runFrom(readings, times, changed, times[changed] as number, start, clock.byHours);
  }
  const start: Start = stated > 1 ? { known: true, ratio: stated, by: "stated" } : { known: false };
  return runFrom(readings, times, 0, times[0] ?? 0, start, clock.byHours);
}

function runFrom(
  readings: readonly GaugeReading[],
  times: readonly number[],
  first: number,
  origin: number,
  start: Start,
  byHours: boolean,
): RunReadings {
  return {
    readings: readings.slice(first).map((reading, at) => ({ reading, time: (times[first + at] as number) - origin })),
    start,
    earlier: first,
    meter: byHours ? origin : null,
  };
}

interface Clock {
  readonly time: (reading: GaugeReading) => number;
  /** on the same clock; null where the file does not say */
  readonly lastChange: number | null;
  readonly byHours: boolean;
}

function clockOf(readings: readonly GaugeReading[], { duty, service }: System): Clock | NoRun {
  const last = service?.last;
  if (readings.every(({ hours }) => hours !== undefined)) {
    return { time: ({ hours = 0 }) => hours, lastChange: last?.hours ?? null, byHours: true };
  }
  if (!readings.every(({ date }) => date !== undefined)) return { code: "hours and dates mixed" };
  if (!duty) return { code: "no duty for dates" };
  const perYear = duty.hoursADay * duty.daysAYear * HOUR;
  const running = (date: string) => (Date.parse(date) / YEAR) * perYear;
  return {
    time: ({ date = "" }) => running(date),
    lastChange: last?.date === undefined ? null : running(last.date),
    byHours: false,
  };
}
