import { expect, test } from "vitest";
import type { FleetAnswer, FleetEntry, FleetGroup } from "../fleet/FleetAnswer.js";
import { fleetDueWords, fleetGroupTitle, fleetLimitWords, fleetSentence } from "./fleetWords.js";

test.each([
  ["late", "Late"],
  ["now", "Due now"],
  ["within", "Due within 30 days"],
  ["left alone", "Best left alone until the day"],
  ["cannot say", "Cannot say"],
  ["later", "Later"],
] as const)("fleetGroupTitle(%j, answer) is its heading", (group, title) => {
  expect(fleetGroupTitle(group, { within: 30 })).toBe(title);
});

test.each([
  ["hours", "running hours"],
  ["distance", "distance"],
  ["calendar", "calendar"],
  ["restriction", "predicted restriction"],
  ["gauge", "the gauge"],
] as const)("fleetLimitWords(%j) stands after 'by'", (by, words) => expect(fleetLimitWords(by)).toBe(words));

const sentenceOf = (...groups: FleetGroup[]) =>
  fleetSentence({ entries: groups.map((group) => ({ group })), within: 30 } as unknown as FleetAnswer);
const all: readonly FleetGroup[] = ["late", "now", "within", "left alone", "later"];
test.each([
  [[], "There is no machine in the folder."],
  [["late"], "Of 1 machine 1 is late."],
  [["cannot say"], "Of the 1 machine nothing can be said."],
  [["cannot say", "cannot say"], "Of none of the 2 machines anything can be said."],
  [["later", "cannot say"], "Of 2 machines 1 has longer; of 1 nothing can be said."],
  [
    all,
    "Of 5 machines 1 is late, 1 is due now, 1 falls due within 30 days, 1 is best left alone until its day and 1 has longer.",
  ],
  [
    [...all, ...all].reverse(),
    "Of 10 machines 2 are late, 2 are due now, 2 fall due within 30 days, 2 are best left alone until their day and 2 have longer.",
  ],
] as const)("fleetSentence(answer) of the groups %j counts how many machines are how pressing", (groups, words) => {
  expect(sentenceOf(...groups)).toBe(words);
});

const due = { date: "2026-05-10", days: 12, by: "hours", early: null, late: null };
const dueWords = (more: object | null, hours: object | null = null) =>
  fleetDueWords({ due: more && { ...due, ...more }, hours } as unknown as FleetEntry);
test.each([
  [null, "No limit comes in sight."],
  [{}, "Due 2026-05-10 by running hours."],
  [{ early: "2026-05-02" }, "Due 2026-05-10 by running hours (2026-05-02 with the fastest use)."],
  [{ late: "2026-06-01" }, "Due 2026-05-10 by running hours (2026-06-01 with the slowest)."],
  [
    { early: "2026-05-02", late: "2026-06-01", by: "restriction" },
    "Due 2026-05-10 by predicted restriction (2026-05-02 with the fastest use, 2026-06-01 with the slowest).",
  ],
  [{ early: "2026-05-10", late: "2026-05-10" }, "Due 2026-05-10 by running hours."],
])("fleetDueWords(entry) due %j says when, by what and how sure that is", (more, words) => {
  expect(dueWords(more)).toBe(words);
});

test("fleetDueWords(entry) says where its use is the file's, unless use does not matter", () => {
  const stated = "Due 2026-05-10 by running hours, at the duty its file states.";
  expect(dueWords({}, { from: "duty" })).toBe(stated);
  expect(dueWords({ by: "distance" }, { from: "duty" })).toBe(
    "Due 2026-05-10 by distance, at the duty its file states.",
  );
  expect(dueWords({}, { from: "log" })).toBe("Due 2026-05-10 by running hours.");
  expect(dueWords({ by: "calendar" }, { from: "duty" })).toBe("Due 2026-05-10 by calendar.");
  expect(dueWords({ by: "gauge" }, { from: "duty" })).toBe("Due 2026-05-10 by the gauge.");
});
