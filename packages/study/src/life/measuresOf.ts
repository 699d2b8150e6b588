import type { Life } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import type { Duty } from "./dutyOf.js";
import type { Measures } from "./LifeAnswer.js";

/** A running time, s, in the other measures people go by. */
export function measuresOf(system: System, duty: Duty, found: Life, time: number): Measures {
  const years = time / duty.year;
  const distance = system.duty?.distance === undefined ? null : system.duty.distance * years;
  const last = system.service?.last;
  return {
    time,
    burnt: burntBy(found, time),
    distance,
    years,
    date: dateAfter(newOn(system), years),
    hourMeter: last?.hours === undefined ? null : last.hours + time,
    distanceMeter: last?.distance === undefined || distance === null ? null : last.distance + distance,
  };
}

/** The day the elements were new: that of the last change, else the first of the duty. */
function newOn({ service, duty }: System): string | undefined {
  return service?.last?.date ?? duty?.starts;
}

/** Fuel burnt by a time, m3: straight between the moments known, and on at the year's mean beyond them. */
function burntBy(found: Life, time: number): number {
  const moments = [...found.moments, ...(found.end ? [found.end] : [])];
  const after = moments.findIndex((moment) => moment.time >= time);
  const right = moments[after];
  const left = moments[after - 1];
  const last = moments.at(-1);
  if (!right) return last && last.time > 0 ? (last.burnt * time) / last.time : 0;
  if (!left || right.time === left.time) return right.burnt;
  return left.burnt + ((right.burnt - left.burnt) * (time - left.time)) / (right.time - left.time);
}

/** The calendar date some years of duty after an ISO date, evenly spread over the calendar year. */
function dateAfter(start: string | undefined, years: number): string | null {
  if (start === undefined) return null;
  const then = new Date(Date.parse(`${start}T00:00:00Z`) + years * 365.25 * 24 * 3600 * 1000);
  return Number.isNaN(then.getTime()) ? null : then.toISOString().slice(0, 10);
}
