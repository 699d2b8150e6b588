import type { LogEntry } from "./LogEntry.js";

const inUnit = {
  hours: { size: 3600, symbol: "h", event: "new hour meter", name: "hour meter" },
  distance: { size: 1000, symbol: "km", event: "new distance meter", name: "distance meter" },
} as const;

/** Why a meter cannot show what a later row has after an earlier one; null where it can. */
export function meterFault(earlier: LogEntry, later: LogEntry, meter: "hours" | "distance"): string | null {
  const [before, after] = [earlier[meter], later[meter]];
  const { size, symbol, event, name } = inUnit[meter];
  if (before === undefined || after === undefined || later.event.kind === event) return null;
  const text = (value: number) => `${Number((value / size).toPrecision(8))} ${symbol}`;
  if (after < before) {
    return `the ${name} runs backwards, from ${text(before)} on ${earlier.date} to ${text(after)} on ${later.date}; correct the figure or, for a new meter, write the event "${event}"`;
  }
  const days = (Date.parse(later.date) - Date.parse(earlier.date)) / DAY;
  // A day more than lies between, since both were read at some time of theirs.
  if (meter === "hours" && after - before > (days + 1) * 24 * 3600) {
    return `the hour meter gains ${text(after - before)} from ${earlier.date} to ${later.date}, more than there are; correct the figure or the date`;
  }
  return null;
}

/** ms */
const DAY = 24 * 3600 * 1000;
