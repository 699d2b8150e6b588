import { expect, test } from "vitest";
import { readLogNote } from "./readLogNote.js";

const machines = ["Heron", "Heron, port engine", "Lorry"];
const entriesOf = (text: string) => {
  const read = readLogNote(text, machines);
  return "entries" in read ? read.entries : read.message;
};

test("readLogNote(text, machines) reads what was read and done, in any order", () => {
  expect(entriesOf("Heron, 2026-11-25, 11650 h, 14 kPa, changed prefilter A")).toEqual([
    {
      machine: "Heron",
      date: "2026-11-25",
      hours: 11650 * 3600,
      gauge: 14000,
      event: { kind: "changed", element: "prefilter A" },
    },
  ]);
  expect(entriesOf("Lorry, 2026-11-25, changed all, 88400 km")).toEqual([
    { machine: "Lorry", date: "2026-11-25", distance: 88_400_000, event: { kind: "changed", element: null } },
  ]);
});

test("readLogNote(text, machines) takes the longest machine's name, and a note to its end", () => {
  const text =
    "Heron, port engine, 2026-11-25, changed fine filter, changed prefilter A, note: seal was dry, note: twice";
  expect(entriesOf(text)).toEqual([
    {
      machine: "Heron, port engine",
      date: "2026-11-25",
      event: { kind: "changed", element: "fine filter" },
      note: "seal was dry note: twice",
    },
    { machine: "Heron, port engine", date: "2026-11-25", event: { kind: "changed", element: "prefilter A" } },
  ]);
  expect(entriesOf("Lorry, 2026-11-25, note: parked")).toEqual([
    { machine: "Lorry", date: "2026-11-25", event: { kind: "note" }, note: "parked" },
  ]);
});

test.each([
  ["Herron, 2026-11-25, 1 h", '"Herron" is no machine here; did you mean "Heron"?'],
  ["Heron, 25 November, 1 h", '"25 November" is not a date; write the day after the machine such as 2026-11-25'],
  [
    "Heron, 2026-11-25",
    'nothing after the day; write what was read or done, as in "Heron, 2026-11-25, 11650 h, 14 kPa, changed prefilter A"',
  ],
  ["Heron, 2026-11-25, 14", '"14" has no unit; write it as "14 h"'],
  [
    "Heron, 2026-11-25, 14 kg",
    '"14 kg" is neither hours, a distance nor a gauge reading; write it as in "Heron, 2026-11-25, 11650 h, 14 kPa, changed prefilter A"',
  ],
  ["Heron, 2026-11-25, 1 h, 2 h", '"2 h": hours stand there already; keep one'],
  ["Heron, 2026-11-25, new hour meter", "what does the new hour meter show? write it with its unit, such as 0 h"],
  ["Heron, 2026-11-25, changed", 'which element was changed? write "changed all" or its name after it'],
])("readLogNote(%j) is refused", (text, message) => {
  expect(entriesOf(text)).toBe(message);
});
