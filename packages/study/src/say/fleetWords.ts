import type { FleetAnswer, FleetEntry, FleetGroup, FleetLimit } from "../fleet/FleetAnswer.js";
import { namesWords } from "./namesWords.js";

/** A group as a heading. */
export function fleetGroupTitle(group: FleetGroup, { within }: Pick<FleetAnswer, "within">): string {
  switch (group) {
    case "late":
      return "Late";
    case "now":
      return "Due now";
    case "within":
      return `Due within ${within} days`;
    case "left alone":
      return "Best left alone until the day";
    case "cannot say":
      return "Cannot say";
    case "later":
      return "Later";
  }
}

const limits: Readonly<Record<FleetLimit, string>> = {
  hours: "running hours",
  distance: "distance",
  calendar: "calendar",
  restriction: "predicted restriction",
  gauge: "the gauge",
};

/** What an element falls due by, after "by". */
export function fleetLimitWords(by: FleetLimit): string {
  return limits[by];
}

/** How many machines are how pressing, as a sentence. */
export function fleetSentence({ entries, within }: FleetAnswer): string {
  const count = (group: FleetGroup) => entries.filter((entry) => entry.group === group).length;
  const told = (
    [
      ["late", "is late", "are late"],
      ["now", "is due now", "are due now"],
      ["within", `falls due within ${within} days`, `fall due within ${within} days`],
      ["left alone", "is best left alone until its day", "are best left alone until their day"],
      ["later", "has longer", "have longer"],
    ] as const
  ).flatMap(([group, one, more]) => (count(group) === 0 ? [] : [`${count(group)} ${count(group) === 1 ? one : more}`]));
  const unknown = count("cannot say");
  const whole = `Of ${entries.length} machine${entries.length === 1 ? "" : "s"} ${namesWords(told)}`;
  if (entries.length === 0) return "There is no machine in the folder.";
  if (told.length === 0) {
    return entries.length === 1
      ? "Of the 1 machine nothing can be said."
      : `Of none of the ${entries.length} machines anything can be said.`;
  }
  return unknown === 0 ? `${whole}.` : `${whole}; of ${unknown} nothing can be said.`;
}

/** When an entry is due and how sure that is, as a sentence. */
export function fleetDueWords({ due, hours }: FleetEntry): string {
  if (due === null) return "No limit comes in sight.";
  const ends = [
    ...(due.early !== null && due.early < due.date ? [`${due.early} with the fastest use`] : []),
    ...(due.late !== null && due.late > due.date ? [`${due.late} with the slowest`] : []),
  ];
  const band = ends.length === 0 ? "" : ` (${ends.join(", ")})`;
  const rate =
    due.by === "calendar" || due.by === "gauge" || hours?.from !== "duty" ? "" : ", at the duty its file states";
  return `Due ${due.date} by ${fleetLimitWords(due.by)}${band}${rate}.`;
}
