import { SECONDS_A_DAY } from "./day.js";
import type { FleetLimit, FleetReason } from "./FleetAnswer.js";
import type { Meter } from "./Meter.js";
import type { Outlook, OutlookElement } from "./outlookOf.js";

/** A limit of an element, on days by `dayOf`; Infinity for never. */
export interface Limit {
  readonly by: FleetLimit;
  readonly day: number;
  /** the day the manual allows no longer; Infinity for what is only predicted or read off a gauge */
  readonly latest: number;
  readonly early: number | null;
  /** null where nothing tells; Infinity for never */
  readonly late: number | null;
  /** s or m since the change; null for a calendar and a gauge */
  readonly after: number | null;
}

/** What is known of an element when its limits are asked for. */
export interface ElementState {
  readonly element: OutlookElement;
  /** day of its last change; null when nobody says */
  readonly changed: number | null;
  /** totals of the meters then; null when they cannot be told */
  readonly running: number | null;
  readonly travelled: number | null;
}

/** A limit of the manual that cannot be put on a day. */
export type Missing = Extract<FleetReason, { elements: readonly string[] }>["code"];

/** The manual's limits of an element: whichever comes first counts, so one that is not known is named. */
export function manualLimits(
  { changed, running, travelled }: ElementState,
  { system }: Outlook,
  hours: Meter | null,
  distance: Meter | null,
): { readonly limits: readonly Limit[]; readonly missing: readonly Missing[] } {
  const { service } = system;
  if (!service) return { limits: [], missing: [] };
  const limits: Limit[] = [];
  const missing: Missing[] = [];
  if (hours && running !== null) {
    const { interval, atMost } = service;
    limits.push({
      ...byMeter("hours", hours, running, interval),
      latest: day(hours.dayWhen(running + (atMost ?? interval))),
    });
  } else missing.push(changed === null ? "last change unknown" : "hours unknown");
  if (service.distance !== undefined) {
    if (distance && travelled !== null) limits.push(byMeter("distance", distance, travelled, service.distance));
    else missing.push(changed === null ? "last change unknown" : "distance unknown");
  }
  if (service.calendar !== undefined) {
    const due = changed === null ? null : day(changed + service.calendar / SECONDS_A_DAY);
    if (due === null) missing.push("last change unknown");
    else limits.push({ by: "calendar", day: due, latest: due, early: null, late: null, after: null });
  }
  return { limits, missing: [...new Set(missing)] };
}

/** When a meter has gained so much since a change, with its slowest and fastest use. */
function byMeter(by: FleetLimit, meter: Meter, from: number, after: number): Limit {
  const { least, most } = meter.rate;
  const due = day(meter.dayWhen(from + after));
  return {
    by,
    day: due,
    latest: due,
    early: most === null ? null : day(meter.dayWhen(from + after, most)),
    late: least === null ? null : day(meter.dayWhen(from + after, least)),
    after,
  };
}

/** The whole day on which a moment falls; what lies beyond any plan never comes. */
export function day(moment: number): number {
  return moment > BEYOND ? Infinity : Math.floor(moment + ROUNDING);
}

/** 2149-12-31, the last day a file may name, by `dayOf`. */
const BEYOND = 65_744;
/** Far less than a second, far more than a division rounds. */
const ROUNDING = 1e-6;
