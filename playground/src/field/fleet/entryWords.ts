import {
  capital,
  type FleetEntry,
  fleetCautionWords,
  fleetDueWords,
  fleetReasonWords,
  namesWords,
  type UnitSystem,
} from "@thirstline/study";

/** What a row of the list says under its machine: what to change and why, by which limit, and what is not known. */
export function entryWords(entry: FleetEntry, units: UnitSystem): string[] {
  const { group, change, reasons, cautions, chance } = entry;
  const alone = group === "left alone" ? " It runs right: leave it alone until then." : "";
  const due = group === "cannot say" ? [] : [`${fleetDueWords(entry)}${alone}`];
  const what = change.length === 0 || group === "cannot say" ? [] : [`Change ${namesWords(change)}.`];
  const odds = chance === null ? [] : [`Chance of a limit before: ${Math.round(100 * chance)} %.`];
  return [
    ...what,
    ...due,
    ...odds,
    ...reasons.map((one) => `${capital(fleetReasonWords(one))}.`),
    ...cautions.map((one) => `${capital(fleetCautionWords(one, units))}.`),
  ];
}

/** How many days off a day is, in words. */
export function daysWords(days: number): string {
  if (days === 0) return "today";
  const count = Math.abs(days) === 1 ? "1 day" : `${Math.abs(days)} days`;
  return days < 0 ? `${count} ago` : `in ${count}`;
}
