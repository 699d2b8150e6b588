import type { GaugeReading } from "@thirstline/spec/system";
import type { Course } from "./Course.js";

/** What readings are drawn over. */
export type Axis = "hours" | "date";

/** Where a running time of the run, s, stands on an axis: hours of the meter, or days since 1970. */
export type Timescale = (time: number) => number;

/** Days since 1970 of a day such as "2026-11-25". */
export function dayOfDate(date: string): number {
  return Date.parse(`${date}T00:00:00Z`) / 864e5;
}

/** The axes that readings can be drawn over: those that every one of them has a place on. */
export function axesOf(course: Course, readings: readonly GaugeReading[]): Axis[] {
  const rows = rowsOf(course, readings);
  const hours: Axis[] = rows.every((one) => one.hours !== undefined) ? ["hours"] : [];
  const dates = new Set(rows.map(({ date }) => date));
  return rows.length > 1 && dates.size > 1 && !dates.has(undefined) ? [...hours, "date"] : hours;
}

/** Running time over the meter's hours, or over the calendar: straight between readings, and on as it went on the whole. */
export function timescale(axis: Axis, course: Course, readings: readonly GaugeReading[]): Timescale {
  const rows = rowsOf(course, readings);
  const places = course.points.map(({ time }, at) => ({
    time,
    at: axis === "hours" ? (rows[at]?.hours ?? 0) / 3600 : dayOfDate(rows[at]?.date ?? "1970-01-01"),
  }));
  const [first, last] = [places[0], places.at(-1)];
  if (axis === "hours" || !first || !last || last.time === first.time) {
    const offset = (last?.at ?? 0) - (last?.time ?? 0) / 3600;
    return (time) => offset + time / 3600;
  }
  const rate = (last.at - first.at) / (last.time - first.time);
  return (time) => {
    const after = places.findIndex((one) => one.time >= time);
    const [left, right] = [places[after - 1], places[after]];
    if (!left || !right)
      return after === 0 ? first.at + rate * (time - first.time) : last.at + rate * (time - last.time);
    return left.at + ((right.at - left.at) * (time - left.time)) / (right.time - left.time);
  };
}

function rowsOf({ points }: Course, readings: readonly GaugeReading[]): readonly GaugeReading[] {
  return points.flatMap(({ row }) => readings[row - 1] ?? []);
}
