import { readLogNote } from "@thirstline/spec";
import { expect, test } from "vitest";
import { noteText } from "./LogNote.js";

test("noteText(note) is read back by the log's own reader, a name and a note with commas and all", () => {
  const text = noteText({
    machine: "Heron, port engine",
    date: "2026-11-25",
    hours: "11650 h",
    distance: "",
    gauge: "4.1 inHg",
    changed: ["prefilter A", "fine filter"],
    newHourMeter: false,
    newDistanceMeter: false,
    note: "seal was dry, looked worn",
  });
  const read = readLogNote(text, ["Heron", "Heron, port engine"]);
  expect("entries" in read && read.entries.map(({ event }) => event)).toEqual([
    { kind: "changed", element: "prefilter A" },
    { kind: "changed", element: "fine filter" },
  ]);
  expect("entries" in read && read.entries[0]).toMatchObject({
    machine: "Heron, port engine",
    hours: 11650 * 3600,
    note: "seal was dry, looked worn",
  });
});
