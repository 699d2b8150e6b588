import type { LogEntry } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { machineOf } from "../../../../tests/support/fleets.js";
import { dayOf } from "./day.js";
import type { FleetMachine } from "./FleetMachine.js";
import { fleetEntry } from "./fleetEntry.js";
import type { Outlook } from "./outlookOf.js";

const DAY = 24 * 3600;
const element = (name: string, isSuction = true) => ({ name, style: "spin-on", isSuction, figures: "" });
const service = { interval: 250, atMost: 300, calendar: 365 * DAY };
/** A machine of two elements, by its manual alone; nothing predicts its restriction. */
const outlook = (system: object = { service }, more: object = {}) =>
  ({
    system,
    elements: [element("A"), element("C", false)],
    life: { year: 0, reasons: [], end: null, elements: [], trace: { time: [], vacuum: [] }, range: null },
    first: new Set(),
    vacuum: { clean: 20e3, atChange: 40e3 },
    ...more,
  }) as unknown as Outlook;
const row = (date: string, more: Partial<LogEntry> = {}): LogEntry => ({
  machine: "one",
  date,
  event: { kind: "reading" },
  ...more,
});
const changed = (date: string, hours: number, element: string | null = null) =>
  row(date, { hours, event: { kind: "changed", element } });
/** 5 a day from the first of the year on. */
const log = [changed("2026-01-01", 0), changed("2026-01-11", 50, "C"), row("2026-02-10", { hours: 200, gauge: 15e3 })];
interface Asked {
  readonly rows?: readonly LogEntry[];
  readonly of?: Outlook;
  readonly on?: string;
  readonly lives?: Float64Array | null;
  readonly machine?: Partial<FleetMachine>;
}
const judged = ({ rows = log, of = outlook(), on = "2026-02-11", lives = null, machine = {} }: Asked = {}) => {
  const one = { ...machineOf("one", of.system), ...machine };
  return fleetEntry(one, rows, of, { on: dayOf(on), within: 90 }, lives);
};
const entryOf = (asked: Asked = {}) => judged(asked).entry;

test("fleetEntry(machine, rows, outlook, window, lives) is one machine judged, its elements each by their own change", () => {
  const calendar = (date: string) => ({ by: "calendar", date, latest: date, after: null });
  expect(entryOf()).toEqual({
    machine: "one",
    system: "one.yaml",
    stakes: null,
    group: "within",
    due: { date: "2026-02-20", days: 9, by: "hours", early: null, late: null },
    change: ["A"],
    elements: [
      {
        element: "A",
        style: "spin-on",
        changed: "2026-01-01",
        running: 205,
        limits: [{ by: "hours", date: "2026-02-20", latest: "2026-03-02", after: 250 }, calendar("2027-01-01")],
      },
      {
        element: "C",
        style: "spin-on",
        changed: "2026-01-11",
        running: 155,
        limits: [{ by: "hours", date: "2026-03-02", latest: "2026-03-12", after: 250 }, calendar("2027-01-11")],
      },
    ],
    hours: { perDay: 5, least: null, most: null, from: "log" },
    distance: null,
    gauge: { date: "2026-02-10", value: 15e3 },
    chance: null,
    reasons: [],
    cautions: [{ code: "restriction not followed", reasons: [] }],
  });
});

test("fleetEntry(...) is due by whichever element comes first, wherever that stands", () => {
  const rows = [changed("2026-01-01", 0), changed("2026-01-11", 50, "A"), row("2026-02-10", { hours: 200 })];
  expect(entryOf({ rows })).toMatchObject({ due: { date: "2026-02-20" }, change: ["C"] });
});

test("fleetEntry(...) changes together what is due by a week after the first, or after today", () => {
  const apart = (days: number) => {
    const date = `2026-01-${String(1 + days).padStart(2, "0")}`;
    return [changed("2026-01-01", 0), changed(date, 5 * days, "C"), row("2026-02-10", { hours: 200 })];
  };
  expect(entryOf({ rows: apart(7) }).change).toEqual(["A", "C"]);
  expect(entryOf({ rows: apart(8) }).change).toEqual(["A"]);
  // A was due on 20 February and C on the 28th: on the 21st that is a week off.
  expect(entryOf({ rows: apart(8), on: "2026-02-21" }).change).toEqual(["A", "C"]);
  expect(entryOf({ rows: apart(8), on: "2026-02-20" }).change).toEqual(["A"]);
});

describe("fleetEntry(...) by the distance", () => {
  const travels = outlook({
    service: { ...service, distance: 4000 },
    duty: { hoursADay: 1, daysAYear: 1, distance: 36525 },
  });
  const rows = [
    row("2026-01-01", { hours: 0, distance: 0, event: { kind: "changed", element: null } }),
    row("2026-02-10", { hours: 100, distance: 8000 }),
  ];

  test("has its rate by the log, or by the duty where no log tells", () => {
    expect(entryOf({ rows, of: travels })).toMatchObject({
      due: { date: "2026-01-21", by: "distance" },
      distance: { perDay: 200, from: "log" },
    });
    // A year of duty of 36525 is 100 a day.
    expect(entryOf({ of: travels })).toMatchObject({
      due: { date: "2026-02-10", by: "distance" },
      distance: { perDay: 100, from: "duty" },
    });
  });

  test("shows a distance that is read, though the manual does not count it, and none that nobody asks for", () => {
    expect(entryOf({ rows }).distance).toMatchObject({ perDay: 200 });
    expect(
      entryOf({ of: outlook({ service, duty: { hoursADay: 1, daysAYear: 1, distance: 36525 } }) }).distance,
    ).toBeNull();
    const untold = entryOf({ of: outlook({ service: { ...service, distance: 4000 } }) });
    expect(untold.distance).toBeNull();
    expect(untold.reasons).toEqual([{ code: "distance unknown", elements: ["A", "C"] }]);
  });
});

test("fleetEntry(...) takes the duty's hours where the log has too few, spread over the days of the calendar", () => {
  const of = outlook({ service, duty: { hoursADay: 2, daysAYear: 365.25 } });
  expect(entryOf({ of, rows: [changed("2026-01-01", 0)] }).hours).toEqual({
    perDay: 7200,
    least: null,
    most: null,
    from: "duty",
  });
});

describe("fleetEntry(...) cannot say", () => {
  const nothing = { group: "cannot say", due: null, change: [] };

  test("where a meter runs backwards: no meter is believed then", () => {
    const rows = [...log, row("2026-02-11", { hours: 100 })];
    const found = judged({ rows });
    expect(found.entry).toMatchObject({ ...nothing, hours: null, distance: null, chance: null });
    expect(found.entry.reasons[0]).toEqual({ code: "runs backwards", meter: "hours", date: "2026-02-11" });
    expect([found.hours, found.distance]).toEqual([null, null]);
  });

  test("where no filter stands open, or no interval is stated", () => {
    const rows = [changed("2026-01-01", 0), row("2026-02-10", { hours: 250 })];
    const bare = entryOf({ rows, of: outlook({ service }, { elements: [] }), lives: Float64Array.of(1) });
    expect(bare).toMatchObject({ ...nothing, reasons: [{ code: "no filter" }], chance: null });
    expect(entryOf({ of: outlook({}) })).toMatchObject({ ...nothing, reasons: [{ code: "no interval" }] });
  });

  test("where the calendar alone is known, and that is months off; then no part of it is said", () => {
    const rows = [row("2026-01-01", { event: { kind: "changed", element: null } })];
    const found = entryOf({ rows, lives: Float64Array.of(1) });
    expect(found).toMatchObject({
      ...nothing,
      reasons: [{ code: "hours unknown", elements: ["A", "C"] }],
      hours: null,
      chance: null,
    });
    expect(found.elements[0]).toMatchObject({ running: null, changed: "2026-01-01", limits: [{ date: "2027-01-01" }] });
  });

  test("where one element's change is unknown, and names that one", () => {
    const rows = [changed("2026-01-01", 0, "A"), row("2026-02-10", { hours: 200 })];
    const found = entryOf({ rows });
    expect(found.reasons).toEqual([{ code: "last change unknown", elements: ["C"] }]);
    expect(found.elements[1]).toMatchObject({ changed: null, running: null, limits: [] });
  });
});

describe("fleetEntry(...) of a change known without its day", () => {
  const undated = { changed: { hours: 100, distance: 500 } };
  const rows = [row("2026-01-01", { hours: 200 }), row("2026-02-10", { hours: 400 })];
  const of = outlook({ service: { interval: 250, distance: 4000 } });

  test("counts its meters on the scale of the first that is read, and of one that is not read nothing", () => {
    const found = entryOf({ rows, of, machine: undated });
    expect(found.elements[0]).toMatchObject({
      changed: null,
      running: 305,
      limits: [{ by: "hours", date: "2026-01-31" }],
    });
    expect(found.reasons).toEqual([{ code: "last change unknown", elements: ["A", "C"] }]);
    const both = [...rows, row("2026-02-10", { distance: 900 }), row("2026-03-02", { distance: 1900 })];
    // 500 and 4000 are 4500, at 50 a day 52 days after 1900.
    const limits = entryOf({ rows: both, of, machine: undated }).elements[0]?.limits ?? [];
    expect(limits.map(({ by, date }) => [by, date])).toEqual([
      ["hours", "2026-01-31"],
      ["distance", "2026-04-23"],
    ]);
  });

  test("does not count them where the log knows the change", () => {
    const known = [changed("2026-01-01", 200), ...rows.slice(1)];
    expect(entryOf({ rows: known, of, machine: undated }).elements[0]).toMatchObject({ running: 205 });
  });

  test("needs a meter to be read", () => {
    const duty = { hoursADay: 2, daysAYear: 365.25 };
    const found = entryOf({ rows: [], of: outlook({ service, duty }), machine: undated });
    expect(found.elements[0]).toMatchObject({ running: null, limits: [] });
  });
});

test("fleetEntry(...) of a machine that stands still says so, and that no limit comes", () => {
  const rows = [changed("2026-01-01", 0), row("2026-02-10", { hours: 0 })];
  const of = outlook({ service: { interval: 250 } });
  const found = entryOf({ rows, of });
  expect(found).toMatchObject({ group: "later", due: null, change: [] });
  expect(found.cautions).toContainEqual({ code: "stood still" });
  expect(found.elements[0]?.limits).toEqual([{ by: "hours", date: null, latest: null, after: 250 }]);
  expect(entryOf().cautions).not.toContainEqual({ code: "stood still" });
});

describe("fleetEntry(...).chance is of the draws that meet a limit before it is due, or before today", () => {
  const lives = Float64Array.of(100, 200, 250, 300, Number.NaN);

  test("counted from the oldest change", () => {
    // A runs 250 by its day; a life of just that is not met before.
    expect(entryOf({ lives }).chance).toBe(2 / 4);
    // On 2 March, which is past it, 300 have been run.
    expect(entryOf({ lives, on: "2026-03-02" }).chance).toBe(3 / 4);
  });

  test("null where nothing was drawn, the change of one is not known, or no limit comes", () => {
    expect(entryOf({ lives: Float64Array.of(Number.NaN) }).chance).toBeNull();
    expect(entryOf({ lives: Float64Array.of() }).chance).toBeNull();
    const rows = [changed("2026-01-01", 0, "A"), row("2026-02-20", { hours: 250 })];
    expect(entryOf({ rows, lives, on: "2026-02-20" })).toMatchObject({ group: "now", chance: null });
    const still = [changed("2026-01-01", 0), row("2026-02-10", { hours: 0 })];
    expect(entryOf({ rows: still, of: outlook({ service: { interval: 250 } }), lives }).chance).toBeNull();
  });
});

test("fleetEntry(...) has what is predicted and what a gauge shows among the limits, in the order they come", () => {
  const life = {
    year: 1,
    reasons: [],
    end: { time: 240 },
    elements: [{ name: "A" }],
    trace: { time: [], vacuum: [] },
    range: { early: 230, late: null },
  };
  const predicted = outlook({ service }, { life, first: new Set(["A"]) });
  const found = entryOf({ of: predicted });
  expect(found.elements[0]?.limits.map(({ by, date, latest }) => [by, date, latest])).toEqual([
    ["restriction", "2026-02-18", null],
    ["hours", "2026-02-20", "2026-03-02"],
    ["calendar", "2027-01-01", "2027-01-01"],
  ]);
  expect(found.elements[1]?.limits.map(({ by }) => by)).toEqual(["hours", "calendar"]);
  expect(found.due).toEqual({ date: "2026-02-18", days: 7, by: "restriction", early: "2026-02-16", late: null });
  const high = [...log, row("2026-02-11", { gauge: 41e3 })];
  const gauged = entryOf({ rows: high });
  expect(gauged.elements.map(({ limits }) => limits[0]?.by)).toEqual(["gauge", "hours"]);
  expect(gauged).toMatchObject({ group: "now", due: { date: "2026-02-11", days: 0, by: "gauge" }, change: ["A"] });
});
