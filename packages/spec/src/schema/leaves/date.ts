import { shown } from "../../shown.js";
import { type Leaf, leaf, type Reading } from "../leaf.js";
import { fault } from "./fault.js";

const example = "2026-03-01";
const months = "January February March April May June July August September October November December".split(" ");

/** A day of the calendar as year, month and day (ISO 8601), kept as text. */
export function date(words: string): Leaf<string> {
  const json = {
    type: "string",
    format: "date",
    pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$",
    description: `${words} as year, month and day, such as ${example}`,
    examples: [example],
  };
  const wanted = `${words} as year, month and day, such as ${example}`;
  return leaf<string>(wanted, json, "", (given) => readDate(given, wanted));
}

/** A day of the calendar, or why it is none. */
export function readDate(given: unknown, wanted: string): Reading<string> {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(String(given)) ?? [];
  if (typeof given !== "string" || year === undefined) {
    return fault("not a date", `${shown(given)} is not a date; write ${wanted}`);
  }
  const name = months[Number(month) - 1];
  if (name === undefined) {
    return fault("no such day", `${shown(given)}: there is no month ${month}; write ${wanted}`);
  }
  const last = new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate();
  if (!(Number(day) >= 1 && Number(day) <= last)) {
    return fault("no such day", `${shown(given)}: ${name} ${year} has days 1 to ${last}; write ${wanted}`);
  }
  if (!(Number(year) >= 1950 && Number(year) < 2150)) {
    return fault("out of range", `${shown(given)} is out of range; 1950 to 2149 makes sense, such as ${example}`);
  }
  return { value: given };
}
