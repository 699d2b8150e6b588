import { dayOf } from "./day.js";
import type { FleetCaution } from "./FleetAnswer.js";
import type { History } from "./historyOf.js";
import { day, type ElementState, type Limit } from "./limitsOfElement.js";
import type { Meter } from "./Meter.js";
import type { Outlook } from "./outlookOf.js";

/** Share of the interval within which an element counts as nearly new: common practice, no source. */
const NEARLY_NEW = 0.1;

/** What is predicted of a machine, by element, and what that rests on. */
export interface Predicted {
  readonly limits: ReadonlyMap<string, Limit>;
  readonly gauge: { readonly elements: ReadonlySet<string>; readonly limit: Limit } | null;
  readonly cautions: readonly FleetCaution[];
  /** whether it is known to run freely: by a gauge reading under the clean limit or, without one, by what is predicted */
  readonly runsRight: boolean;
}

/**
 * When the restriction comes to a limit: `life` from new elements on, counted from the change of the oldest that is
 * followed, and said of those that make up most of the rise.
 *
 * The latest gauge reading corrects it in one way: a machine is where the predicted vacuum shows that reading, and what is
 * left is what the prediction has left from there. A reading brings the day nearer, never further: it was hardly taken at
 * the worst point of the duty. At or over the limit at change the elements are due on the day it was read; over the clean
 * limit with elements nearly new, too, since then it is not their soil.
 */
export function predictedLimits(
  states: readonly ElementState[],
  outlook: Outlook,
  hours: Meter | null,
  { gauge }: History,
): Predicted {
  const { life, vacuum, system } = outlook;
  const cautions: FleetCaution[] = [];
  if (life.year === 0) cautions.push({ code: "restriction not followed", reasons: life.reasons });
  const starves = life.end?.time === 0;
  if (starves) cautions.push({ code: "starves clean" });
  const followed = new Set(life.elements.map(({ name }) => name));
  const oldest = oldestOf(states.filter(({ element }) => followed.has(element.name)));
  const reading = vacuum === null ? null : gauge;
  if (gauge !== null && vacuum === null) cautions.push({ code: "gauge not used" });
  const suction = states.filter(({ element }) => element.isSuction);
  const limits = new Map<string, Limit>();
  if (hours && oldest !== null && life.year > 0 && !starves) {
    const run = reading === null ? null : hours.at(dayOf(reading.date)) - oldest;
    const left = reading === null || run === null ? null : leftBy(outlook, reading.value, run);
    const plain = life.end === null ? Infinity : life.end.time;
    const after = Math.min(plain, run === null || left === null ? Infinity : run + left);
    const limit = restrictionLimit(outlook, hours, oldest, after);
    for (const { element } of states) if (outlook.first.has(element.name)) limits.set(element.name, limit);
  }
  if (reading === null || vacuum === null)
    return { limits, gauge: null, cautions, runsRight: life.year > 0 && !starves };
  const { value } = reading;
  const changed = oldestOf(suction);
  const run = hours && changed !== null ? hours.at(dayOf(reading.date)) - changed : null;
  const isNew = run !== null && run <= NEARLY_NEW * (system.service?.interval ?? 0);
  const over = vacuum.clean !== null && value >= vacuum.clean;
  if (value >= vacuum.atChange) {
    cautions.push({ code: "gauge at the change limit", value, limit: vacuum.atChange });
  } else if (over && isNew && vacuum.clean !== null) {
    cautions.push({ code: "gauge over the clean limit", value, limit: vacuum.clean });
  } else return { limits, gauge: null, cautions, runsRight: !over && !starves };
  const due = dayOf(reading.date);
  const limit: Limit = { by: "gauge", day: due, latest: Infinity, early: null, late: null, after: null };
  const elements = new Set(suction.map(({ element }) => element.name));
  return { limits, gauge: { elements, limit }, cautions, runsRight: false };
}

/** The least total at which any was changed; null when it cannot be told of one of them. */
function oldestOf(states: readonly ElementState[]): number | null {
  const totals = states.map(({ running }) => running);
  return totals.length === 0 || totals.some((total) => total === null) ? null : Math.min(...(totals as number[]));
}

/** Running time left by a gauge reading, s: from where the prediction shows it to the prediction's end; null for no say. */
function leftBy({ life, vacuum }: Outlook, value: number, run: number): number | null {
  const { time, vacuum: shown } = life.trace;
  const start = shown[0];
  if (vacuum === null || start === undefined || value <= start || value >= vacuum.atChange) return null;
  const after = shown.findIndex((one) => one >= value);
  const end = life.end?.time;
  if (end === undefined || after <= 0) {
    // Beyond all that is predicted: straight on from clean to the limit.
    return run > 0 ? (run * (vacuum.atChange - value)) / (value - start) : 0;
  }
  const [low, high] = [shown[after - 1] ?? start, shown[after] ?? value];
  const [from, to] = [time[after - 1] ?? 0, time[after] ?? end];
  return Math.max(0, end - (from + ((to - from) * (value - low)) / (high - low)));
}

function restrictionLimit({ life }: Outlook, hours: Meter, from: number, after: number): Limit {
  const plain = life.end?.time ?? Infinity;
  const { least, most } = hours.rate;
  const at = (time: number, perDay: number | null) =>
    day(perDay === null ? hours.dayWhen(from + time) : hours.dayWhen(from + time, perDay));
  // What is only estimated spreads the prediction by as much as it does the plain one; a gauge shifts all of it alike.
  const shift = plain === Infinity ? 0 : after - plain;
  const early = Math.max(0, Math.min(after, (life.range ? (life.range.early ?? Infinity) : plain) + shift));
  const late = Math.max(after, life.range ? (life.range.late ?? Infinity) + shift : after);
  const told = life.range !== null || most !== null;
  return {
    by: "restriction",
    day: at(after, null),
    latest: Infinity,
    early: told ? at(early, most) : null,
    late: told ? at(late, least) : null,
    after: Number.isFinite(after) ? after : null,
  };
}
