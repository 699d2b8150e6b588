import { readReadings } from "@thirstline/spec";
import type { GaugeReading } from "@thirstline/spec/system";
import type { Draft } from "./Draft.js";

/** Faults of a typed reading by the box they are of; "" for the whole. */
export type DraftFaults = ReadonlyMap<keyof Draft | "", string>;

const boxes: Readonly<Record<string, keyof Draft>> = {
  hours: "hours",
  date: "date",
  vacuum: "vacuum",
  "feed pressure": "feed",
  load: "load",
  flow: "load",
  temperature: "temperature",
  "tank level": "level",
  changed: "changed",
  note: "note",
};

/** Reads a typed reading, by the rules a file of readings is read by. */
export function readDraft(draft: Draft): { readonly reading: GaugeReading } | { readonly faults: DraftFaults } {
  const isShare = /%$|^[\d.]*$/.test(draft.load.trim());
  const cells = {
    hours: draft.hours,
    date: draft.date,
    vacuum: draft.vacuum,
    "feed pressure": draft.feed,
    load: isShare ? draft.load : "",
    flow: isShare ? "" : draft.load,
    temperature: draft.temperature,
    "tank level": draft.level,
    changed: draft.changed ? "yes" : "",
    note: draft.note,
  };
  const quoted = Object.values(cells).map((text) => `"${text.trim().replaceAll('"', '""')}"`);
  const read = readReadings(`${Object.keys(cells).join(",")}\n${quoted.join(",")}\n`, { file: "" });
  if ("faults" in read) {
    return { faults: new Map(read.faults.map(({ path, message }) => [boxes[path] ?? "", message])) };
  }
  const [reading] = read.readings;
  if (reading && reading.vacuum === undefined && reading.feedPressure === undefined && !reading.changed) {
    return { faults: new Map([["", "no gauge was read: write the vacuum or the feed pressure"]]) };
  }
  return reading ? { reading } : { faults: new Map([["", "nothing was typed"]]) };
}
