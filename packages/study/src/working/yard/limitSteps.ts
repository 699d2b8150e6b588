import type { JudgedElement } from "../../fleet/fleetEntry.js";
import type { Limit } from "../../fleet/limitsOfElement.js";
import * as formulas from "../formulas/yardDays.js";
import type { Check, Step } from "../Step.js";
import { fromFile, inWords, searched, worked } from "../worked.js";
import { changeTotal } from "./changeTotal.js";
import type { MachineGiven } from "./MachineGiven.js";
import { DAY } from "./MeterTrack.js";
import { oldestFollowed, restrictionAfter } from "./restrictionSteps.js";

const TIME = { unit: "s", kind: "running time" } as const;

/** What an element is allowed from its change on by a limit; null for a calendar and a gauge. */
export function allowed(given: MachineGiven, { by }: Limit): Step | null {
  const { service } = given.system;
  if (by === "restriction") return restrictionAfter(given);
  if (by === "hours" && service) {
    return fromFile("service.interval", { name: "service interval", value: service.interval, ...TIME });
  }
  if (by !== "distance" || service?.distance === undefined) return null;
  return fromFile("service.distance", {
    name: "distance between changes",
    value: service.distance,
    unit: "m",
    kind: "distance",
  });
}

/** Days from today until a limit, as whole days of the calendar; null where it never comes. */
export function daysTo(given: MachineGiven, { state }: JudgedElement, limit: Limit): Step | null {
  if (!Number.isFinite(limit.day)) return null;
  const value = limit.day - given.on;
  const name = `days to the limit of ${state.element.name} by ${limit.by}`;
  if (limit.by === "gauge")
    return inWords("the day the gauge was read, counted on the calendar", { name, value, unit: "d" });
  const moment = limit.by === "calendar" ? calendarMoment(given, state.changed) : meterMoment(given, state, limit);
  return moment && wholeDay(name, value, moment);
}

function calendarMoment({ system, on }: MachineGiven, changed: number | null): Step | null {
  const calendar = system.service?.calendar;
  if (changed === null || calendar === undefined) return null;
  const c = inWords("counted on the calendar", {
    name: "days from today to the change",
    value: changed - on,
    unit: "d",
  });
  const t = fromFile("service.calendar", { name: "calendar time between changes", value: calendar, ...TIME });
  return worked(formulas.calendarDue, { c, t, D: DAY });
}

function meterMoment(given: MachineGiven, own: JudgedElement["state"], limit: Limit): Step | null {
  const meter = limit.by === "distance" ? given.distance : given.hours;
  const state = limit.by === "restriction" ? oldestFollowed(given) : own;
  const C = meter && state && changeTotal(given, state, meter);
  const A = allowed(given, limit);
  return meter && C && A && meter.when(worked(meter.formulas.target, { C, A }));
}

/** The whole day a moment falls on. What lies within a millionth of a day before midnight counts as the day after it. */
function wholeDay(name: string, value: number, moment: Step): Step {
  const day = (words: string, days: number): Step => inWords(words, { name: words, value: days, unit: "d" });
  const checks: Check[] = [
    {
      words: "the day has begun at that moment",
      left: day("the day, less what a division may round", value - 1e-6),
      relation: "<=",
      right: moment,
    },
    { words: "the day after it has not", left: day("the day after", value + 1), relation: ">=", right: moment },
  ];
  return searched("the whole day of the calendar on which the moment falls", { name, value, unit: "d" }, checks);
}
