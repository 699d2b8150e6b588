import { nearest } from "../nearest.js";
import { readDate } from "../schema/leaves/date.js";
import { shown } from "../shown.js";
import { quantity } from "../units/quantity.js";
import type { LogEntry, LogEvent } from "./LogEntry.js";
import { readEvent } from "./readEvent.js";

/** Entries to put into a log, or why a text is none. */
export type LogNoteResult = { readonly entries: readonly LogEntry[] } | { readonly message: string };

/** Figures of an entry and how each is recognised: by what its unit measures. */
const figures = [
  ["hours", "runningTime", "a time"],
  ["distance", "odometer", "a length"],
  ["gauge", "gaugeReading", "a pressure"],
] as const;

const example = '"Heron, 2026-11-25, 11650 h, 14 kPa, changed prefilter A"';

/**
 * Reads an entry as it is said: the machine, the day, then in any order what the meters and the gauge showed, each with its
 * unit, what was done, and after "note:" anything else. Several changes make several entries of the same day.
 *
 * @param text such as "Heron, 2026-11-25, 11650 h, 14 kPa, changed prefilter A, changed fine filter, note: seal was dry"
 * @param machines names of all machines; a name may hold commas
 */
export function readLogNote(text: string, machines: readonly string[]): LogNoteResult {
  const trimmed = text.trim();
  const known = machines
    .filter((name) => trimmed.startsWith(`${name},`) || trimmed === name)
    .sort((left, right) => right.length - left.length)[0];
  if (known === undefined) {
    const [first = ""] = trimmed.split(",", 1);
    const near = nearest(first, machines);
    const hint = near === undefined ? `write it as ${example}` : `did you mean ${shown(near)}?`;
    return { message: `${shown(first)} is no machine here; ${hint}` };
  }
  const [said = "", ...noted] = trimmed.slice(known.length + 1).split(/(?:^|,)\s*note:\s*/i);
  const [date = "", ...pieces] = said.split(",").map((piece) => piece.trim());
  const day = readDate(date, "the day after the machine such as 2026-11-25");
  if ("fault" in day) return { message: day.fault.message };
  const read = readPieces(pieces.filter((piece) => piece !== ""));
  if ("message" in read) return read;
  const { found, events } = read;
  const note = noted.join(" note: ").trim();
  if (Object.keys(found).length === 0 && events.length === 0 && note === "") {
    return { message: `nothing after the day; write what was read or done, as in ${example}` };
  }
  const lacks = events.find(({ kind }) => kind === "new hour meter" && found.hours === undefined);
  if (lacks) return { message: "what does the new hour meter show? write it with its unit, such as 0 h" };
  const [
    first = noted.length > 0 && Object.keys(found).length === 0
      ? ({ kind: "note" } as const)
      : ({ kind: "reading" } as const),
    ...more
  ] = events;
  const head = { machine: known, date: day.value };
  const whole: LogEntry = { ...head, ...found, event: first, ...(note === "" ? {} : { note }) };
  return { entries: [whole, ...more.map((event) => ({ ...head, event }))] };
}

type Found = Partial<Record<"hours" | "distance" | "gauge", number>>;

function readPieces(pieces: readonly string[]): { found: Found; events: LogEvent[] } | { readonly message: string } {
  const found: Found = {};
  const events: LogEvent[] = [];
  for (const piece of pieces) {
    if (!/^[-+.\d]/.test(piece)) {
      const event = readEvent(piece);
      if ("message" in event) return event;
      events.push(event);
      continue;
    }
    const figure = figureOf(piece);
    if ("message" in figure) return figure;
    if (found[figure.name] !== undefined)
      return { message: `${shown(piece)}: ${figure.name} stand there already; keep one` };
    found[figure.name] = figure.value;
  }
  return { found, events };
}

function figureOf(piece: string): { name: keyof Found; value: number } | { readonly message: string } {
  let refused: string | null = null;
  for (const [name, kind] of figures) {
    const read = quantity(piece, kind);
    if ("value" in read) return { name, value: read.value };
    if (read.fault.code !== "wrong measure") refused ??= read.fault.message;
  }
  return {
    message: refused ?? `${shown(piece)} is neither hours, a distance nor a gauge reading; write it as in ${example}`,
  };
}
