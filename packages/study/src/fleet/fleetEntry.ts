import type { LogEntry } from "@thirstline/spec/system";
import { dateOf } from "./day.js";
import type { FleetElement, FleetEntry, FleetReason } from "./FleetAnswer.js";
import type { FleetMachine } from "./FleetMachine.js";
import { groupOf, NOW_DAYS, type Window } from "./groupOf.js";
import { type History, historyOf } from "./historyOf.js";
import { type ElementState, type Limit, type Missing, manualLimits } from "./limitsOfElement.js";
import { Meter } from "./Meter.js";
import type { Outlook } from "./outlookOf.js";
import { predictedLimits } from "./predictedLimits.js";

/** An element with its limits on days, the first to come first. */
export interface JudgedElement {
  readonly state: ElementState;
  readonly limits: readonly Limit[];
}

/** A machine judged: its entry, and what its parts are counted from. */
export interface Judged {
  readonly entry: FleetEntry;
  readonly elements: readonly JudgedElement[];
  readonly hours: Meter | null;
  readonly distance: Meter | null;
}

/** Judges one machine, by its own rows of the log and nothing of its neighbours'. */
export function fleetEntry(
  machine: FleetMachine,
  rows: readonly LogEntry[],
  outlook: Outlook,
  window: Window,
  lives: Float64Array | null,
): Judged {
  const { duty, service } = outlook.system;
  const history = historyOf(machine, rows, outlook, dateOf(window.on));
  const runs = history.reasons.some(({ code }) => code === "runs backwards");
  const perDay = duty ? (duty.hoursADay * duty.daysAYear * 3600) / YEAR_DAYS : null;
  const hours = runs ? null : Meter.of(history.hours, perDay);
  const distance = runs
    ? null
    : Meter.of(history.distance, duty?.distance === undefined ? null : duty.distance / YEAR_DAYS);
  const states = outlook.elements.map((element) => stateOf(element, machine, history, hours, distance));
  const predicted = predictedLimits(states, outlook, hours, history);
  const missing = new Map<Missing, string[]>();
  const elements = states.map((state): JudgedElement => {
    const manual = manualLimits(state, outlook, hours, distance);
    const { name } = state.element;
    for (const code of manual.missing) missing.set(code, [...(missing.get(code) ?? []), name]);
    const restriction = predicted.limits.get(name);
    const gauge = predicted.gauge?.elements.has(name) ? [predicted.gauge.limit] : [];
    const limits = [...manual.limits, ...(restriction ? [restriction] : []), ...gauge];
    return { state, limits: limits.sort((left, right) => compare(left.day, right.day)) };
  });
  const all = elements.flatMap(({ limits }) => limits).sort((left, right) => compare(left.day, right.day));
  const reasons: FleetReason[] = [
    ...history.reasons,
    ...(outlook.elements.length === 0 ? [{ code: "no filter" } as const] : []),
    ...(service ? [] : [{ code: "no interval" } as const]),
    ...[...missing].map(([code, names]) => ({ code, elements: names })),
  ];
  const group = groupOf(machine, all, { reasons, runsRight: predicted.runsRight }, window);
  const [next] = all;
  const first = group === "cannot say" || next === undefined || next.day === Infinity ? null : next;
  const entry: FleetEntry = {
    machine: machine.name,
    system: machine.file,
    stakes: machine.stakes,
    group,
    due: first && dueOf(first, window),
    change: first ? changesThen(elements, first.day, window) : [],
    elements: elements.map((one) => elementOf(one, hours, window)),
    hours: hours?.rate ?? null,
    distance: history.distance.length > 0 || service?.distance !== undefined ? (distance?.rate ?? null) : null,
    gauge: history.gauge,
    chance: first && chanceOf(lives, states, hours, Math.max(first.day, window.on)),
    reasons,
    cautions: [
      ...predicted.cautions,
      ...(hours?.rate.from === "log" && hours.rate.perDay === 0 ? [{ code: "stood still" } as const] : []),
    ],
  };
  return { entry, elements, hours, distance };
}

/** Days of a year of duty. */
const YEAR_DAYS = 365.25;

/** Turned round, since Infinity less Infinity is no number. */
function compare(left: number, right: number): number {
  return left < right ? -1 : left > right ? 1 : 0;
}

function stateOf(
  element: ElementState["element"],
  { changed: known }: FleetMachine,
  { changed, hours: readings, distance: travels }: History,
  hours: Meter | null,
  distance: Meter | null,
): ElementState {
  const day = changed.get(element.name) ?? null;
  // A meter's figure at a change nobody dated is on the scale of the first meter of the log.
  const undated = (figure: number | undefined, read: number) =>
    day === null && known?.date === undefined && figure !== undefined && read > 0 ? figure : null;
  return {
    element,
    changed: day,
    running: day !== null && hours ? hours.at(day) : undated(known?.hours, readings.length),
    travelled: day !== null && distance ? distance.at(day) : undated(known?.distance, travels.length),
  };
}

function dueOf(first: Limit, { on }: Window): FleetEntry["due"] {
  return {
    date: dateOf(first.day),
    days: first.day - on,
    by: first.by,
    early: dateOrNull(first.early),
    late: dateOrNull(first.late),
  };
}

/** What is due by a week after the first, or after today, is changed on the same day. */
function changesThen(elements: readonly JudgedElement[], first: number, { on }: Window): string[] {
  const until = Math.max(first, on) + NOW_DAYS;
  return elements.flatMap(({ state, limits }) => ((limits[0]?.day ?? Infinity) <= until ? [state.element.name] : []));
}

function elementOf({ state, limits }: JudgedElement, hours: Meter | null, { on }: Window): FleetElement {
  const { element, changed, running } = state;
  return {
    element: element.name,
    style: element.style,
    changed: changed === null ? null : dateOf(changed),
    running: hours && running !== null ? Math.max(0, hours.at(on) - running) : null,
    limits: limits.map(({ by, day, latest, after }) => ({
      by,
      date: dateOrNull(day),
      latest: dateOrNull(latest),
      after,
    })),
  };
}

function dateOrNull(day: number | null): string | null {
  return day === null || !Number.isFinite(day) ? null : dateOf(day);
}

/** How many of the draws meet a limit by a day, counted from the oldest change. */
function chanceOf(
  lives: Float64Array | null,
  states: readonly ElementState[],
  hours: Meter | null,
  day: number,
): number | null {
  const known = lives?.filter((life) => !Number.isNaN(life)) ?? [];
  const totals = states.map(({ running }) => running);
  if (!hours || known.length === 0 || totals.some((total) => total === null)) return null;
  const run = hours.at(day) - Math.min(...(totals as number[]));
  return known.filter((life) => life < run).length / known.length;
}
