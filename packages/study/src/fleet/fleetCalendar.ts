import { fleetDueWords } from "../say/fleetWords.js";
import { namesWords } from "../say/namesWords.js";
import { dateOf, dayOf } from "./day.js";
import type { FleetAnswer, FleetEntry } from "./FleetAnswer.js";
import { foldLines } from "./foldLines.js";

/** Groups whose days are put into a calendar. */
const PLANNED: ReadonlySet<FleetEntry["group"]> = new Set(["late", "now", "within", "left alone"]);

/**
 * What falls due in the days looked ahead as a calendar file (iCalendar, RFC 5545): an event of a whole day for each
 * machine, on its day or, where that is past, today. An event keeps its name from one file to the next as long as the
 * elements are not changed, so that a calendar moves it rather than showing it twice.
 *
 * With nothing due it has no event, which the rules do not foresee and readers take for what it is: nothing.
 *
 * @returns the file's text; its maker is loaded when first asked for
 */
export async function fleetCalendar(answer: FleetAnswer): Promise<string> {
  const { createEvents } = await import("ics");
  const events = answer.entries.flatMap((entry) => {
    if (entry.due === null || !PLANNED.has(entry.group)) return [];
    const day = Math.max(dayOf(entry.due.date), dayOf(answer.on));
    return [
      {
        uid: nameOf(entry),
        title: `${tidy(entry.machine)}: change ${tidy(namesWords(entry.change))}`,
        description: tidy(descriptionOf(entry)),
        start: partsOf(day),
        end: partsOf(day + 1),
        transp: "TRANSPARENT" as const,
        // Missing in the package's types, though its own check of an event knows it.
        ...{ timestamp: `${answer.on.replaceAll("-", "")}T000000Z` },
      },
    ];
  });
  const { error, value } = createEvents(events, { productId: "-//thirstline//fleet//EN", calName: "Filters due" });
  if (error !== null || value === null) throw error ?? new Error("no calendar was made");
  return foldLines(value);
}

/** Unlike that of any other machine, and of this one after its next change. */
function nameOf({ machine, elements, change }: FleetEntry): string {
  const [first] = change;
  const changed = elements.find(({ element }) => element === first)?.changed ?? "unknown";
  // Half a letter, which only a program can make, has no place in a file.
  return `${encodeURIComponent(machine.replace(/\p{Cs}/gu, "\ufffd"))}-${changed}@thirstline`;
}

function descriptionOf(entry: FleetEntry): string {
  const stakes = entry.stakes === null ? "" : ` When it stops: ${entry.stakes}.`;
  const left = entry.group === "left alone" ? " Runs right: leave it alone until then." : "";
  return `${fleetDueWords(entry)}${left}${stakes} The operator's manual decides.`;
}

/** Without the signs no calendar shows. */
function tidy(text: string): string {
  return text.replace(/\p{Cc}+/gu, " ");
}

function partsOf(day: number): [number, number, number] {
  const [year = 1970, month = 1, date = 1] = dateOf(day).split("-").map(Number);
  return [year, month, date];
}
