import { readDate } from "../schema/leaves/date.js";
import { shown } from "../shown.js";
import { type KindName, kinds } from "../units/kinds.js";
import { quantity } from "../units/quantity.js";
import { backwardAt, type Latest, latest } from "./backwardAt.js";
import { isChange, stated } from "./entryOf.js";
import type { GaugeReading } from "./GaugeReading.js";
import { loadOf } from "./loadOf.js";

/** What a piece of a typed reading may be: its key, its kind, and the words that may stand before it. */
const pieces = [
  { key: "hours", kind: "runningTime", words: ["hours"] },
  { key: "vacuum", kind: "vacuumRead", words: ["vacuum", "inlet"] },
  { key: "feedPressure", kind: "pressureRead", words: ["feed", "feed pressure"] },
  { key: "flow", kind: "flow", words: ["flow"] },
  { key: "temperature", kind: "temperature", words: ["temperature", "fuel"] },
  { key: "depth", kind: "depth", words: ["level", "tank level"] },
] as const satisfies readonly { key: keyof GaugeReading; kind: KindName; words: readonly string[] }[];

type Figures = { [Key in (typeof pieces)[number]["key"] | "load" | "date"]?: number | string };

/**
 * Reads one reading as typed on a command line: pieces between commas, each known by its unit. "feed" stands before a feed
 * pressure, "level" before the fuel over the pick-up; "changed" says the elements are new.
 *
 * @param row which reading it is, from 1
 * @returns the reading, or what is wrong with it
 * @example
 * typedReading("11450 h, 14 kPa, 100 %, 12 degC", 1)
 * typedReading("2026-03-02, vacuum 4 inHg, feed 45 kPa, changed", 2)
 */
function typedReading(
  text: string,
  row: number,
): { readonly reading: GaugeReading } | { readonly messages: readonly string[] } {
  if (text.length > 300) return { messages: [`${shown(text)} is too long for a reading`] };
  const figures: Figures = {};
  const messages: string[] = [];
  let changed = false;
  for (const piece of text.split(",").map((one) => one.trim())) {
    if (piece === "") continue;
    if (isChange(piece)) changed = true;
    else {
      const read = pieceOf(piece);
      if ("message" in read) messages.push(read.message);
      else if (figures[read.key] !== undefined)
        messages.push(`${shown(piece)} is a second ${wordOf(read.key)}; keep one`);
      else figures[read.key] = read.value;
    }
  }
  if (messages.length === 0 && figures.hours === undefined && figures.date === undefined) {
    messages.push(`${shown(text)} has neither hours nor a date; begin with one, such as "11450 h"`);
  }
  if (messages.length === 0 && figures.vacuum === undefined && figures.feedPressure === undefined && !changed) {
    messages.push(`${shown(text)} has no gauge reading; add one such as "14 kPa" or "feed 45 kPa"`);
  }
  if (messages.length > 0) return { messages };
  return { reading: { row, line: null, ...stated(figures), changed } as GaugeReading };
}

/** Readings typed one by one, in order of time. */
export function typedReadings(
  texts: readonly string[],
): { readonly readings: readonly GaugeReading[] } | { readonly messages: readonly string[] } {
  const readings: GaugeReading[] = [];
  const messages: string[] = [];
  let above: Latest = {};
  for (const text of texts) {
    const read = typedReading(text, readings.length + 1);
    if ("messages" in read) messages.push(...read.messages);
    else {
      const late = backwardAt(above, read.reading);
      above = latest(above, read.reading);
      if (late) messages.push(late.message);
      readings.push(read.reading);
    }
  }
  return messages.length > 0 ? { messages } : { readings };
}

function pieceOf(piece: string): { key: keyof Figures; value: number | string } | { readonly message: string } {
  if (/^\d{4}-\d{1,2}-\d{1,2}$/.test(piece)) {
    const read = readDate(piece, "the day such as 2026-11-25");
    return "value" in read ? { key: "date", value: read.value } : { message: read.fault.message };
  }
  const [, load] = /^(?:load )?(\S+ ?%)$/i.exec(piece) ?? [];
  if (load !== undefined) {
    const read = loadOf(load, false);
    return "value" in read ? { key: "load", value: read.value } : read;
  }
  const [, word = "", rest = ""] = /^([a-z][a-z ]*?)? ?([-+.\d].*)$/i.exec(piece) ?? [];
  const named = pieces.find(({ words }) => (words as readonly string[]).includes(word.toLowerCase()));
  if (word !== "" && !named) return { message: `${shown(piece)} is not a piece of a reading; ${hint}` };
  const tried = named ? [named] : pieces.filter(({ key }) => key !== "feedPressure" && key !== "depth");
  let wrong = "";
  for (const { key, kind } of tried) {
    const read = quantity(rest, kind);
    if ("value" in read) return { key, value: read.value };
    // A figure of the right measure that is out of range says so itself.
    if (named || read.fault.code === "out of range" || read.fault.code === "no unit") wrong ||= read.fault.message;
  }
  if (/^[-+\d.]+$/.test(rest)) return { message: `${shown(piece)} has no unit; ${hint}` };
  return { message: wrong === "" ? `${shown(piece)} is not a piece of a reading; ${hint}` : wrong };
}

const hint = 'write it as "11450 h, 14 kPa, feed 45 kPa, 100 %, 12 degC"';

function wordOf(key: keyof Figures): string {
  const piece = pieces.find((one) => one.key === key);
  return piece ? kinds[piece.kind].words.replace(/^an? /, "") : key;
}
