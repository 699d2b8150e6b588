import type { LogEntry } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem, machineOf, unpredicted } from "../../../../tests/support/fleets.js";
import { logRefusals } from "./logRefusals.js";

const HOUR = 3600;
const heron = machineOf("one", unpredicted(demoSystem("heron")));
const row = (date: string, more: Partial<LogEntry> = {}): LogEntry => ({
  machine: "one",
  date,
  event: { kind: "reading" },
  ...more,
});
const old = [
  row("2026-01-01", { hours: 100 * HOUR, distance: 1e6, event: { kind: "changed", element: null } }),
  row("2026-02-01", { hours: 200 * HOUR, distance: 2e6 }),
];
const refusals = (entries: readonly LogEntry[], before: readonly LogEntry[] = old, machine = heron) =>
  logRefusals(before, entries, machine, "2026-11-25");
const hours = (date: string, value: number, more: Partial<LogEntry> = {}) =>
  row(date, { hours: value * HOUR, ...more });

test("logRefusals(old, entries, machine, on) has nothing against what can follow", () => {
  expect(refusals([hours("2026-03-01", 300, { distance: 3e6 })])).toEqual([]);
  // Between two rows, too, and on the day of one.
  expect(refusals([hours("2026-01-15", 150), hours("2026-02-01", 201)])).toEqual([]);
  expect(refusals([row("2026-03-01", { event: { kind: "changed", element: "fine filter" } })])).toEqual([]);
});

test("logRefusals(old, entries, machine, on) refuses a meter that would run backwards, before a row or behind it", () => {
  const back = (from: string, to: string) =>
    `the hour meter runs backwards, from ${from} to ${to}; correct the figure or, for a new meter, write the event "new hour meter"`;
  expect(refusals([hours("2026-03-01", 150)])).toEqual([back("200 h on 2026-02-01", "150 h on 2026-03-01")]);
  expect(refusals([hours("2026-01-15", 250)])).toEqual([back("250 h on 2026-01-15", "200 h on 2026-02-01")]);
  expect(refusals([hours("2026-03-01", 5, { event: { kind: "new hour meter" } })])).toEqual([]);
  expect(refusals([row("2026-03-01", { distance: 1e6 })])[0]).toContain("the distance meter runs backwards");
});

test("logRefusals(old, entries, machine, on) tells of both meters, hours first, and of faster than time", () => {
  const both = refusals([hours("2026-02-02", 500, { distance: 1e6 })]);
  expect(both.map((text) => text.slice(0, 22))).toEqual(["the hour meter gains 3", "the distance meter run"]);
});

test("logRefusals(old, entries, machine, on) looks at rows by their days, whatever order the log has", () => {
  expect(refusals([hours("2026-01-15", 150)], [...old].reverse())).toEqual([]);
  expect(refusals([hours("2026-03-01", 150)], [...old].reverse())).toHaveLength(1);
});

test("logRefusals(old, entries, machine, on) does not tell again what was wrong before", () => {
  const wrong = [...old, hours("2026-02-15", 50)];
  expect(refusals([hours("2026-03-01", 60)], wrong)).toEqual([]);
  const ahead = [...old, row("2026-12-01")];
  expect(refusals([row("2026-03-01")], ahead)).toEqual([]);
});

test("logRefusals(old, entries, machine, on) refuses a day ahead, and an element the machine has not", () => {
  expect(refusals([row("2026-11-26")])).toEqual([
    "the log has a row of it on 2026-11-26, after today; correct the day",
  ]);
  expect(refusals([row("2026-03-01", { event: { kind: "changed", element: "prefilter C" } })])).toEqual([
    'the log says "changed prefilter C", and it has no such element; it has prefilter A, prefilter B and fine filter',
  ]);
});

test("logRefusals(old, entries, machine, on) is of the machine's own rows, and of nothing that bars it or is only missing", () => {
  const other = old.map((one) => ({ ...one, machine: "two", hours: 900 * HOUR }));
  expect(refusals([hours("2026-03-01", 300)], [...other, ...old])).toEqual([]);
  expect(refusals([row("2026-03-01")], [])).toEqual([]);
  const barred = { ...heron, barred: { code: "log at fault", line: 7 } } as const;
  expect(refusals([row("2026-11-26")], old, barred)).toHaveLength(1);
  expect(refusals([row("2026-03-01")], old, barred)).toEqual([]);
});

test("logRefusals(old, entries, machine, on) passes over other machines' rows and rows without the meter, wherever they stand", () => {
  const other = hours("2026-02-15", 900, { machine: "two" });
  expect(refusals([hours("2026-03-01", 300)], [...old, other])).toEqual([]);
  expect(refusals([hours("2026-03-01", 150)], [...old, row("2026-02-15")])).toHaveLength(1);
});

test("logRefusals(old, entries, machine, on) takes a change of one element though that leaves others unknown", () => {
  expect(refusals([row("2026-03-01", { event: { kind: "changed", element: "prefilter A" } })], [])).toEqual([]);
});
