import type { GaugeReading } from "./GaugeReading.js";

/** What is wrong with the time of a reading. */
export interface TimeFault {
  readonly column: "hours" | "date";
  readonly code: string;
  readonly message: string;
}

/** The last hours, s, and date above a reading. */
export type Latest = Pick<GaugeReading, "hours" | "date">;

/** The last hours and date from a reading on. */
export function latest(above: Latest, { hours = above.hours, date = above.date }: GaugeReading): Latest {
  return { ...(hours === undefined ? {} : { hours }), ...(date === undefined ? {} : { date }) };
}

/** Whether a reading goes back in time behind those above it: a slip of the pen, or a new hour meter. */
export function backwardAt({ hours, date }: Latest, one: GaugeReading): TimeFault | undefined {
  if (one.hours !== undefined && hours !== undefined && one.hours < hours - 1e-6) {
    const message = `${shownHours(one.hours)} is less than ${shownHours(hours)} above it; put readings in order of time, and go on counting where a new hour meter was fitted`;
    return { column: "hours", code: "out of order", message };
  }
  if (one.date !== undefined && date !== undefined && one.date < date) {
    const message = `${one.date} is before ${date} above it; put readings in order of time`;
    return { column: "date", code: "out of order", message };
  }
  return undefined;
}

function shownHours(seconds: number): string {
  return `${Number((seconds / 3600).toFixed(2))} h`;
}
