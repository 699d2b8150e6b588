import { quantity, readDate } from "@thirstline/spec";
import type { ArgumentFault } from "./ArgumentFault.js";
import type { FleetQuery } from "./FleetQuery.js";
import type { Query } from "./Query.js";
import type { Request } from "./Request.js";

/** Days looked ahead when nobody says. */
const WITHIN = 90;

/** Understands the options of `fleet`, or says everything that is wrong with them. */
export function readFleetQuery(
  { files, given }: Request,
  { draws }: Pick<Query, "draws">,
): FleetQuery | { readonly faults: readonly ArgumentFault[] } {
  const faults: ArgumentFault[] = [];
  const refuse = (at: string, code: string, message: string) => faults.push({ at, code, message });
  if (files.length > 1) refuse("fleet", "several folders", "takes one folder at a time");
  if (files.includes("-")) refuse("fleet", "no folder", "reads a folder, not standard input");
  const [on = today()] = given.get("on") ?? [];
  const date = readDate(on, "today as year, month and day such as 2026-11-25");
  if ("fault" in date) refuse("--on", date.fault.code, date.fault.message);
  const [within] = given.get("within") ?? [];
  const ahead = within === undefined ? { value: WITHIN * DAY } : quantity(within, "calendar");
  if (within !== undefined && /^\d+$/.test(within)) {
    refuse("--within", "no unit", `"${within}" has no unit; write it as "${within} days"`);
  } else if ("fault" in ahead) refuse("--within", ahead.fault.code, ahead.fault.message);
  const [ics = null] = given.get("ics") ?? [];
  const log = given.get("log") ?? [];
  if (log.length > 0 && ics !== null) refuse("--log", "two jobs", "and --ics exclude each other");
  if (log.length > 0 && given.has("csv")) refuse("--log", "two jobs", "and --csv exclude each other");
  if (faults.length > 0) return { faults };
  return {
    on,
    within: Math.round(("value" in ahead ? ahead.value : 0) / DAY),
    ics,
    log,
    draws: given.has("draws") ? draws : 0,
  };
}

/** s */
const DAY = 24 * 3600;

/** The day it is where the machine stands. */
function today(): string {
  const now = new Date();
  const two = (figure: number) => String(figure).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
