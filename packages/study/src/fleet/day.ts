/** Milliseconds of a day. */
const DAY = 24 * 3600 * 1000;

/** Seconds of a day. */
export const SECONDS_A_DAY = 24 * 3600;

/** A date such as "2026-11-25" as days since 1970-01-01; whole days of the calendar, which has no time zone. */
export function dayOf(date: string): number {
  return Math.round(Date.parse(`${date}T00:00:00Z`) / DAY);
}

/** Dates of a yard's days repeat each other by the thousand. */
const dates = new Map<number, string>();

/** The date of a day, by `dayOf`. */
export function dateOf(day: number): string {
  let date = dates.get(day);
  if (date === undefined) {
    date = new Date(day * DAY).toISOString().slice(0, 10);
    dates.set(day, date);
  }
  return date;
}
