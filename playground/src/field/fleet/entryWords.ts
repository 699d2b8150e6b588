import {
  capitalWords,
  type FleetEntry,
  fig,
  fleetCautionWords,
  fleetDueWords,
  fleetReasonWords,
  joined,
  namesWords,
  say,
  type UnitSystem,
  type Words,
} from "@thirstline/study";

/** What a row of the list says under its machine: what to change and why, by which limit, and what is not known. */
export function entryWords(entry: FleetEntry, units: UnitSystem): Words {
  const { group, change, reasons, cautions, chance } = entry;
  const alone = group === "left alone" ? " It runs right: leave it alone until then." : "";
  const due = group === "cannot say" ? [] : [`${fleetDueWords(entry)}${alone}`];
  const what = change.length === 0 || group === "cannot say" ? [] : [`Change ${namesWords(change)}.`];
  const sentence = (words: Words): Words => [...capitalWords(words), "."];
  return joined(
    [
      ...[...what, ...due].map((one) => [one]),
      ...(chance === null ? [] : [chanceWords(chance)]),
      ...reasons.map((one) => sentence([fleetReasonWords(one)])),
      ...cautions.map((one) => sentence(fleetCautionWords(one, units))),
    ],
    " ",
  );
}

function chanceWords(chance: number): Words {
  return say`Chance of a limit before: ${fig("chance of a limit before it is due", `${Math.round(100 * chance)} %`)}.`;
}

/** How many days off a day is, in words. */
export function daysWords(days: number): Words {
  const live = (text: string) => fig("days until it is due", text);
  if (days === 0) return [live("today")];
  const count = live(Math.abs(days) === 1 ? "1 day" : `${Math.abs(days)} days`);
  return days < 0 ? say`${count} ago` : say`in ${count}`;
}
