import { expect, test } from "vitest";
import { calendarText, readCalendar } from "../../../../tests/support/readCalendar.js";
import type { FleetAnswer, FleetEntry } from "./FleetAnswer.js";
import { fleetCalendar } from "./fleetCalendar.js";

const entry = {
  machine: "Heron",
  group: "within",
  due: { date: "2026-12-31", days: 36, by: "hours", early: null, late: null },
  change: ["prefilter A", "fine filter"],
  elements: [
    { element: "fine filter", changed: "2026-05-01" },
    { element: "prefilter A", changed: "2026-06-01" },
  ],
  stakes: null,
  hours: null,
} as unknown as FleetEntry;
const calendarOf = async (...entries: object[]) => {
  const all = entries.map((one) => ({ ...entry, ...one }));
  const text = await fleetCalendar({ on: "2026-11-25", within: 90, entries: all } as unknown as FleetAnswer);
  return readCalendar(new TextEncoder().encode(text));
};
/** The properties of the one event of a calendar, as a reader shows them. */
const eventOf = async (more: object) => {
  const { parts } = await calendarOf(more);
  expect(parts).toHaveLength(1);
  const [event] = parts;
  return Object.fromEntries((event?.lines ?? []).map(({ name, value }) => [name, calendarText(value)]));
};

test("fleetCalendar(answer) has an event of a whole day for each machine that is due, by whom it was made and when", async () => {
  expect(await eventOf({})).toEqual({
    UID: "Heron-2026-06-01@thirstline",
    SUMMARY: "Heron: change prefilter A and fine filter",
    DTSTAMP: "20261125T000000Z",
    DTSTART: "20261231",
    DTEND: "20270101",
    DESCRIPTION: "Due 2026-12-31 by running hours. The operator's manual decides.",
    TRANSP: "TRANSPARENT",
  });
  const { lines } = await calendarOf();
  const values = Object.fromEntries(lines.map(({ name, value }) => [name, value]));
  expect(values).toMatchObject({ PRODID: "-//thirstline//fleet//EN", "X-WR-CALNAME": "Filters due" });
});

test("fleetCalendar(answer) puts what is past on today", async () => {
  const due = { ...entry.due, date: "2026-11-01" };
  expect(await eventOf({ due, group: "late" })).toMatchObject({ DTSTART: "20261125", DTEND: "20261126" });
});

test("fleetCalendar(answer) says what a stop means, and what is best left alone", async () => {
  expect((await eventOf({ stakes: "stops the work" })).DESCRIPTION).toBe(
    "Due 2026-12-31 by running hours. When it stops: stops the work. The operator's manual decides.",
  );
  expect((await eventOf({ stakes: "a nuisance", group: "left alone" })).DESCRIPTION).toBe(
    "Due 2026-12-31 by running hours. Runs right: leave it alone until then. When it stops: a nuisance. The operator's manual decides.",
  );
});

test("fleetCalendar(answer) has events of what is late, due or left alone, and of nothing else", async () => {
  const groups = ["late", "now", "within", "left alone", "later", "cannot say"];
  const { parts } = await calendarOf(...groups.map((group) => ({ group, machine: group })), { due: null });
  const names = parts.map(({ lines }) => lines.find(({ name }) => name === "UID")?.value);
  expect(names).toEqual(["late", "now", "within", "left%20alone"].map((name) => `${name}-2026-06-01@thirstline`));
});

test("fleetCalendar(answer) names an event whose elements were changed on a day nobody knows, and of a name no file can hold", async () => {
  const elements = [{ element: "prefilter A", changed: null }];
  expect((await eventOf({ elements })).UID).toBe("Heron-unknown@thirstline");
  expect((await eventOf({ elements: [] })).UID).toBe("Heron-unknown@thirstline");
  // Half a letter and another half are two signs that cannot be shown.
  expect((await eventOf({ machine: "A\ud800B\ud800" })).UID).toBe("A%EF%BF%BDB%EF%BF%BD-2026-06-01@thirstline");
});

test("fleetCalendar(answer) shows no sign that a calendar does not", async () => {
  expect((await eventOf({ machine: "He\u0007\u0008ron", change: ["A\tB"] })).SUMMARY).toBe("He ron: change A B");
});
