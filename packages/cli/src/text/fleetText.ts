import {
  dayOf,
  type FleetAnswer,
  type FleetEntry,
  type FleetGroup,
  fleetCautionWords,
  fleetGroupTitle,
  fleetReasonWords,
  fleetSentence,
  namesWords,
  plain,
  type UnitSystem,
} from "@thirstline/study";
import type { Paint, Tone } from "../io/paint.js";
import { cautionItems } from "./cautionLines.js";
import { closingLines } from "./closingLines.js";
import { fleetParts } from "./fleetParts.js";
import { rule } from "./heading.js";
import { separated } from "./separated.js";
import { left, right, wrap } from "./wrap.js";

const tones: Readonly<Record<FleetGroup, Tone>> = {
  late: "bad",
  now: "bad",
  within: "care",
  "left alone": "good",
  "cannot say": "care",
  later: "good",
};

const MACHINE = 34;

/** An answer to `fleet` as lines for people: the list by how pressing it is, then the parts to have on the shelf. */
export function fleetText(answer: FleetAnswer, units: UnitSystem, paint: Paint): string[] {
  const groups = [...new Set(answer.entries.map(({ group }) => group))];
  const day = `${answer.on}, ${answer.within} days ahead`;
  return [
    `${paint("strong", left("What is due", 80 - day.length))}${day}`,
    rule(paint),
    ...separated([
      wrap(fleetSentence(answer)),
      ...groups.map((group) => groupLines(answer, group, paint)),
      fleetParts(answer, paint),
      cautionItems([...cautions(answer, units), ...unlisted(answer)]),
      closingLines(),
    ]),
  ];
}

function groupLines(answer: FleetAnswer, group: FleetGroup, paint: Paint): string[] {
  const entries = answer.entries.filter((entry) => entry.group === group);
  const title = paint(tones[group], fleetGroupTitle(group, answer));
  if (group === "cannot say") return [title, ...entries.flatMap(reasonLines)];
  const heads = paint("quiet", row("", "due", "days", "by", "off by"));
  return [`${title}`, heads, ...entries.flatMap((entry) => entryLines(entry, group))];
}

function entryLines(entry: FleetEntry, group: FleetGroup): string[] {
  const { due, machine, stakes } = entry;
  const mild = stakes === "a nuisance" ? `${machine} (a nuisance)` : machine;
  const first = row(mild, due?.date ?? "none", due ? String(due.days) : "", due?.by ?? "", sureness(entry));
  if (group === "later") return [first];
  const chance = entry.chance === null ? [] : [`chance of a limit before: ${Math.round(entry.chance * 100)} %`];
  const more = [`change ${namesWords(entry.change)}`, ...chance, ...entry.reasons.map(fleetReasonWords)].join("; ");
  return [first, ...wrap(more, "", 74).map((line) => `      ${line}`)];
}

function reasonLines({ machine, reasons, stakes }: FleetEntry): string[] {
  const mild = stakes === "a nuisance" ? `${machine} (a nuisance)` : machine;
  return wrap(`${mild}: ${reasons.map(fleetReasonWords).join("; ")}`, "    ", 78).map((line) => `  ${line}`);
}

function row(machine: string, due: string, days: string, by: string, sure: string): string {
  return `  ${left(machine, MACHINE)} ${left(due, 10)} ${right(days, 5)}  ${left(by, 11)}  ${sure}`.trimEnd();
}

/** By how many days the day may be off, with the fastest and the slowest use; else what the rate rests on. */
function sureness({ due, hours }: FleetEntry): string {
  if (due === null || due.by === "calendar" || due.by === "gauge") return "";
  if (due.early === null && due.late === null) return hours?.from === "duty" ? "duty only" : "";
  const early = due.early === null ? 0 : Math.min(0, dayOf(due.early) - dayOf(due.date));
  const late = due.late === null ? "…" : `${Math.max(0, dayOf(due.late) - dayOf(due.date))}`;
  // What lies behind us was read off the meters.
  if (early === 0 && late === "0") return due.days > 0 ? "a day" : "";
  return `-${Math.abs(early)} +${late}`;
}

/** Every caution once, with the machines it is of. */
function cautions({ entries }: FleetAnswer, units: UnitSystem): string[] {
  const said = new Map<string, string[]>();
  for (const { machine, cautions: own } of entries) {
    for (const caution of own) {
      const words = plain(fleetCautionWords(caution, units));
      said.set(words, [...(said.get(words) ?? []), machine]);
    }
  }
  return [...said].map(([words, machines]) => `${some(machines)}: ${words}`);
}

function unlisted(answer: FleetAnswer): string[] {
  if (answer.unlisted.length === 0) return [];
  const names = answer.unlisted.map(({ machine, rows }) => `${machine} (${rows} row${rows === 1 ? "" : "s"})`);
  return [`the log has rows of machines that are not listed here: ${some(names)}`];
}

/** Names, of which a long list shows the first. */
function some(names: readonly string[]): string {
  return names.length <= SHOWN
    ? namesWords(names)
    : `${names.slice(0, SHOWN).join(", ")} and ${names.length - SHOWN} more`;
}

const SHOWN = 5;
