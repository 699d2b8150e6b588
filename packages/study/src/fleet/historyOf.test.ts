import type { LogEntry } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem, machineOf, unpredicted } from "../../../../tests/support/fleets.js";
import { dayOf } from "./day.js";
import type { FleetMachine } from "./FleetMachine.js";
import { historyOf } from "./historyOf.js";
import type { Outlook } from "./outlookOf.js";

const system = unpredicted(demoSystem("heron"));
const outlook = {
  elements: [
    { name: "A", isSuction: true },
    { name: "C", isSuction: false },
  ],
} as unknown as Outlook;
const row = (date: string, more: Partial<LogEntry> = {}): LogEntry => ({
  machine: "one",
  date,
  event: { kind: "reading" },
  ...more,
});
const changed = (element: string | null): Partial<LogEntry> => ({ event: { kind: "changed", element } });
const history = (rows: readonly LogEntry[], known: FleetMachine["changed"] = null, on = "2026-11-25") =>
  historyOf(machineOf("one", system, { changed: known }), rows, outlook, on);
const reading = (date: string, value: number, isNew = false) => ({ day: dayOf(date), value, isNew });

test("historyOf(machine, entries, outlook, on) of no row knows nothing", () => {
  expect(history([])).toEqual({
    hours: [],
    distance: [],
    changed: new Map([
      ["A", null],
      ["C", null],
    ]),
    gauge: null,
    reasons: [],
  });
});

test("historyOf(machine, entries, outlook, on) goes through rows by their days, those of a day as they stand", () => {
  const rows = [
    row("2026-03-01", { hours: 30, distance: 300 }),
    row("2026-01-01", { hours: 10 }),
    row("2026-02-01", { distance: 200 }),
    row("2026-03-01", { hours: 31 }),
    row("2026-03-02"),
  ];
  const found = history(rows);
  expect(found.hours).toEqual([reading("2026-01-01", 10), reading("2026-03-01", 30), reading("2026-03-01", 31)]);
  expect(found.distance).toEqual([reading("2026-02-01", 200), reading("2026-03-01", 300)]);
});

test("historyOf(machine, entries, outlook, on) takes what is known of the last change as a row before them", () => {
  const last = { date: "2026-01-01", hours: 10, distance: 100 };
  const found = history([row("2026-02-01", { hours: 20, ...changed("C") })], last);
  expect(found.hours).toEqual([reading("2026-01-01", 10), reading("2026-02-01", 20)]);
  expect(found.distance).toEqual([reading("2026-01-01", 100)]);
  expect([...found.changed.values()]).toEqual([dayOf("2026-01-01"), dayOf("2026-02-01")]);
  expect(history([], { date: "2026-01-01" })).toMatchObject({ hours: [], distance: [], reasons: [] });
  expect([...history([], { hours: 10 }).changed.values()]).toEqual([null, null]);
});

test("historyOf(machine, entries, outlook, on) knows a change of all, and of one by its name in any letters", () => {
  const rows = [row("2026-01-01", changed(null)), row("2026-02-01", changed("c")), row("2026-01-15", changed("A"))];
  expect([...history(rows).changed]).toEqual([
    ["A", dayOf("2026-01-15")],
    ["C", dayOf("2026-02-01")],
  ]);
});

test("historyOf(machine, entries, outlook, on) has the latest gauge since what stands before the pump was changed", () => {
  const gauges = [row("2026-01-01", { gauge: 9e3 }), row("2026-02-01", { gauge: 12e3 })];
  expect(history(gauges).gauge).toEqual({ date: "2026-02-01", value: 12e3 });
  expect(history([...gauges, row("2026-02-02", changed("C"))]).gauge).toEqual({ date: "2026-02-01", value: 12e3 });
  expect(history([...gauges, row("2026-02-02", changed("A"))]).gauge).toBeNull();
  expect(history([...gauges, row("2026-02-02", { ...changed(null), gauge: 15e3 })]).gauge).toBeNull();
  expect(history([...gauges, row("2026-02-02", changed("nothing"))]).gauge).not.toBeNull();
});

test("historyOf(machine, entries, outlook, on) says what makes a log say nothing", () => {
  const reasons = (...rows: LogEntry[]) => history(rows).reasons;
  expect(reasons(row("2026-11-25"))).toEqual([]);
  expect(reasons(row("2026-11-26"), row("2026-11-27"))).toEqual([{ code: "log dated ahead", date: "2026-11-26" }]);
  expect(reasons(row("2026-01-01", changed("B")))).toEqual([
    { code: "no such element", element: "B", known: ["A", "C"] },
  ]);
  const none = historyOf(
    machineOf("one", system),
    [row("2026-01-01", changed(null))],
    { elements: [] } as unknown as Outlook,
    "2026-11-25",
  );
  expect(none.reasons).toEqual([]);
});

test("historyOf(machine, entries, outlook, on) finds a meter that runs backwards, unless it is a new one of its own kind", () => {
  const back = (meter: "hours" | "distance", kind: LogEntry["event"]["kind"]) =>
    history([
      row("2026-01-01", { [meter]: 50 }),
      row("2026-02-01", { [meter]: 60 }),
      row("2026-03-01", { [meter]: 5, event: { kind } as LogEntry["event"] }),
      row("2026-04-01", { [meter]: 5 }),
    ]).reasons;
  const fault = (meter: "hours" | "distance") => [{ code: "runs backwards", meter, date: "2026-03-01" }];
  expect(back("hours", "reading")).toEqual(fault("hours"));
  expect(back("hours", "new hour meter")).toEqual([]);
  expect(back("hours", "new distance meter")).toEqual(fault("hours"));
  expect(back("distance", "reading")).toEqual(fault("distance"));
  expect(back("distance", "new distance meter")).toEqual([]);
  expect(back("distance", "new hour meter")).toEqual(fault("distance"));
  const swapped = history([
    row("2026-01-01", { hours: 50 }),
    row("2026-02-01", { hours: 5, event: { kind: "new hour meter" } }),
  ]);
  expect(swapped.hours).toEqual([reading("2026-01-01", 50), reading("2026-02-01", 5, true)]);
});
