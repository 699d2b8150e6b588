import type { FleetRate } from "./FleetAnswer.js";

/** A reading of a meter; a new meter shows what it starts from. */
export interface MeterReading {
  /** by `dayOf` */
  readonly day: number;
  /** s or m */
  readonly value: number;
  readonly isNew: boolean;
}

/** What a meter has counted in all by a day, whatever meters were put in on the way. */
export interface Point {
  readonly day: number;
  readonly total: number;
}

/** Days before the last reading that the rate of use is taken from: a year, so that every season is in it. */
export const LOOKED_BACK = 365;
/** Fewer days than these tell no rate: common practice, no source. */
const LEAST_DAYS = 14;
/** Days at least that a stretch of the log has when slowest and fastest use are told from it. */
export const STRETCH = 28;

/** A meter followed through a log: its total on any day, and the day of any total. */
export class Meter {
  readonly points: readonly Point[];
  readonly rate: FleetRate;

  /**
   * @param readings in the order of their days, never running backwards but at a new meter
   * @param duty what the system file says of its use, per day; null when it does not
   * @returns null where nothing tells how fast it runs
   */
  static of(readings: readonly MeterReading[], duty: number | null): Meter | null {
    const rate =
      rateOf(readings) ?? (duty === null ? null : { perDay: duty, least: null, most: null, from: "duty" as const });
    return rate === null ? null : new Meter(pointsOf(readings, rate.perDay), rate);
  }

  private constructor(points: readonly Point[], rate: FleetRate) {
    // Without any reading it starts from nothing; only what it gains matters.
    this.points = points.length > 0 ? points : [{ day: 0, total: 0 }];
    this.rate = rate;
  }

  /** The total on a day: straight between readings, at the rate of use before and after. */
  at(day: number): number {
    const { points, rate } = this;
    const after = points.findIndex((point) => point.day >= day);
    const left = points[after === -1 ? points.length - 1 : after - 1];
    const right = after === -1 ? undefined : points[after];
    if (left && right) return left.total + ((right.total - left.total) * (day - left.day)) / (right.day - left.day);
    const only = (left ?? right) as Point;
    return only.total + rate.perDay * (day - only.day);
  }

  /** The day, not whole, a total is reached; Infinity when it never is at the rate given, the meter's own when left out. */
  dayWhen(total: number, perDay = this.rate.perDay): number {
    const { points } = this;
    const first = points[0] as Point;
    const last = points[points.length - 1] as Point;
    if (total > last.total) return perDay > 0 ? last.day + (total - last.total) / perDay : Infinity;
    if (total < first.total) return perDay > 0 ? first.day + (total - first.total) / perDay : first.day;
    const after = points.findIndex((point) => point.total >= total);
    const right = points[after] as Point;
    const left = points[after - 1] ?? right;
    if (right.total === left.total) return right.day;
    return left.day + ((right.day - left.day) * (total - left.total)) / (right.total - left.total);
  }
}

interface Stretch {
  readonly days: number;
  readonly gain: number;
}

/** How fast the meter ran over the last year of the log; null where it is too short to tell. */
function rateOf(readings: readonly MeterReading[]): FleetRate | null {
  const last = readings.at(-1);
  if (!last) return null;
  const seen = readings.filter(({ day }) => day >= last.day - LOOKED_BACK);
  const steps = seen.flatMap((one, at): Stretch[] => {
    const before = seen[at - 1];
    return before === undefined || one.isNew ? [] : [{ days: one.day - before.day, gain: one.value - before.value }];
  });
  const days = steps.reduce((sum, step) => sum + step.days, 0);
  if (days < LEAST_DAYS) return null;
  const perDay = steps.reduce((sum, step) => sum + step.gain, 0) / days;
  const rates = stretches(steps).map((one) => one.gain / one.days);
  const told = rates.length > 1;
  return { perDay, least: told ? Math.min(...rates) : null, most: told ? Math.max(...rates) : null, from: "log" };
}

/** Steps put together until each has a month or so; what is left over at the end is too short to count. */
function stretches(steps: readonly Stretch[]): Stretch[] {
  const whole: Stretch[] = [];
  let open: Stretch = { days: 0, gain: 0 };
  for (const { days, gain } of steps) {
    open = { days: open.days + days, gain: open.gain + gain };
    if (open.days < STRETCH) continue;
    whole.push(open);
    open = { days: 0, gain: 0 };
  }
  return whole;
}

/** Totals by day, on the first meter's scale; what was run while a meter was out counts at the rate of use. */
function pointsOf(readings: readonly MeterReading[], perDay: number): Point[] {
  const points: Point[] = [];
  let offset = 0;
  for (const { day, value, isNew } of readings) {
    const last = points.at(-1);
    if (isNew && last) offset = last.total + perDay * (day - last.day) - value;
    const point = { day, total: value + offset };
    // Of several readings on a day the last counts.
    if (last?.day === day) points[points.length - 1] = point;
    else points.push(point);
  }
  return points;
}
