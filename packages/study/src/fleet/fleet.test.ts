import { InputError } from "@thirstline/core";
import type { LogEntry, System } from "@thirstline/spec/system";
import { expect, test, vi } from "vitest";
import { demoSystem, machineOf, unpredicted } from "../../../../tests/support/fleets.js";
import type { FleetMachine, FleetOptions } from "./FleetMachine.js";
import { fleet } from "./fleet.js";

const heron = demoSystem("heron");
const plain = unpredicted(heron);
const hour = 3600;

type Row = Partial<LogEntry> & { readonly date: string; readonly h?: number };

const rowOf = ({ h, ...row }: Row): LogEntry => ({
  machine: "one",
  event: { kind: "reading" },
  ...(h === undefined ? {} : { hours: h * hour }),
  ...row,
});

const changed = (date: string, h: number, element: string | null = null): Row => ({
  date,
  h,
  event: { kind: "changed", element },
});

function entryOf(
  system: System,
  rows: readonly Row[],
  options: Partial<FleetOptions> = {},
  more: Partial<FleetMachine> = {},
) {
  const answer = fleet([machineOf("one", system, more)], rows.map(rowOf), { on: "2026-11-25", ...options });
  const [entry] = answer.entries;
  if (entry === undefined) throw new Error("no entry");
  return { ...entry, parts: answer.parts };
}

// 5 h a day: the interval of 250 h is over after 50 days, the longest of 500 h after 100.
const steady = (date: string, h: number): Row[] => [changed("2026-06-01", 1000), { date, h }];

test.each([
  ["2026-07-01", 1150, "2026-07-02", "within", "2026-07-21"],
  ["2026-07-01", 1150, "2026-07-14", "now", "2026-07-21"],
  ["2026-07-01", 1150, "2026-09-09", "now", "2026-07-21"],
  ["2026-07-01", 1150, "2026-09-10", "late", "2026-07-21"],
] as const)("fleet(...) after a reading on %s of %d h, on %s, is %s", (date, h, on, group, due) => {
  const entry = entryOf(plain, steady(date, h), { on });
  expect(entry).toMatchObject({ group, due: { date: due, by: "hours" } });
});

test("fleet(...) is later where nothing falls due in the days looked ahead", () => {
  const entry = entryOf(plain, [changed("2026-11-20", 1000)], { within: 20 });
  expect(entry).toMatchObject({ group: "later", due: { date: "2026-12-23", by: "hours" }, hours: { from: "duty" } });
});

test("fleet(...) leaves a nuisance alone until its day where it runs right, and one that stops the work not", () => {
  const rows = [changed("2026-10-20", 1000), { date: "2026-11-10", h: 1105, gauge: 9e3 }];
  expect(entryOf(heron, rows, {}, { stakes: "a nuisance" }).group).toBe("left alone");
  expect(entryOf(heron, rows, {}, { stakes: "stops the work" }).group).toBe("within");
  expect(entryOf(heron, rows).group).toBe("within"); // not stated counts as stopping the work
  // Over the clean limit of 20 kPa it does not run right.
  const high = [rows[0] as Row, { date: "2026-11-10", h: 1105, gauge: 25e3 }];
  expect(entryOf(heron, high, {}, { stakes: "a nuisance" }).group).toBe("within");
});

test("fleet(...): a gauge at the limit at change makes the elements before the pump due on the day it was read", () => {
  const entry = entryOf(plain, [changed("2026-11-01", 1000), { date: "2026-11-20", h: 1095, gauge: 40e3 }]);
  expect(entry).toMatchObject({ group: "now", due: { date: "2026-11-20", by: "gauge" } });
  expect(entry.change).toEqual(["prefilter A", "prefilter B"]);
  expect(entry.cautions).toContainEqual({ code: "gauge at the change limit", value: 40e3, limit: 40e3 });
});

test("fleet(...): a gauge over the clean limit with elements nearly new is not their soil, and due now", () => {
  const rows = [changed("2026-11-01", 1000), { date: "2026-11-05", h: 1020, gauge: 22e3 }];
  expect(entryOf(plain, rows)).toMatchObject({ group: "now", due: { by: "gauge" } });
  expect(entryOf(plain, rows).cautions).toContainEqual({
    code: "gauge over the clean limit",
    value: 22e3,
    limit: 20e3,
  });
  const later = [changed("2026-11-01", 1000), { date: "2026-11-20", h: 1095, gauge: 22e3 }];
  expect(entryOf(plain, later).cautions.map(({ code }) => code)).toEqual(["restriction not followed"]);
});

test("fleet(...): a gauge reading in the row of a change was read before it", () => {
  const before = { ...changed("2026-11-20", 1095), gauge: 45e3 };
  expect(entryOf(plain, [changed("2026-11-01", 1000), before])).toMatchObject({ group: "within", gauge: null });
});

test("fleet(...): a gauge of a machine fed by gravity is not used, and said so", () => {
  const generator = demoSystem("generator");
  const entry = entryOf(generator, [changed("2026-11-01", 400), { date: "2026-11-20", gauge: 45e3 }]);
  expect(entry.cautions).toContainEqual({ code: "gauge not used" });
  expect(entry.group).toBe("later");
});

test("fleet(...): what starves with new elements is not said to be due for it", () => {
  const entry = entryOf(demoSystem("heron-finer"), [changed("2026-11-20", 1000)]);
  expect(entry).toMatchObject({ group: "within", due: { by: "hours" }, cautions: [{ code: "starves clean" }] });
});

test("fleet(...): each element falls due by its own change, and those of a week go together", () => {
  const rows = [
    changed("2026-09-01", 1000),
    changed("2026-09-05", 1020, "Fine Filter"),
    { date: "2026-10-01", h: 1150 },
  ];
  const entry = entryOf(plain, rows, { on: "2026-10-02" });
  expect(entry.elements.map(({ element, changed: day }) => [element, day])).toEqual([
    ["prefilter A", "2026-09-01"],
    ["prefilter B", "2026-09-01"],
    ["fine filter", "2026-09-05"],
  ]);
  expect(entry.change).toEqual(["prefilter A", "prefilter B", "fine filter"]);
  const apart = [
    changed("2026-09-01", 1000),
    changed("2026-09-25", 1120, "fine filter"),
    { date: "2026-10-01", h: 1150 },
  ];
  expect(entryOf(plain, apart, { on: "2026-10-02" }).change).toEqual(["prefilter A", "prefilter B"]);
});

test("fleet(...) cannot say, with the reason, and leaves no machine out", () => {
  const reasonsOf = (system: System, rows: readonly Row[], more: Partial<FleetMachine> = {}) => {
    const entry = entryOf(system, rows, {}, more);
    return [entry.group, ...entry.reasons.map(({ code }) => code)];
  };
  const { duty: _duty, ...noDuty } = plain;
  const { service: _service, ...noService } = plain;
  expect(reasonsOf(plain, [])).toEqual(["cannot say", "last change unknown"]);
  expect(reasonsOf(noDuty, [changed("2026-11-01", 1000)])).toEqual(["cannot say", "hours unknown"]);
  expect(reasonsOf(noService, [changed("2026-11-01", 1000)])).toEqual(["cannot say", "no interval"]);
  expect(reasonsOf(plain, [changed("2026-12-01", 1000)])).toEqual(["cannot say", "log dated ahead"]);
  expect(reasonsOf(plain, [changed("2026-11-01", 9, "prefilter C")])).toContain("no such element");
  expect(reasonsOf(plain, [changed("2026-11-01", 9), { date: "2026-11-09", h: 8 }])).toContain("runs backwards");
  expect(reasonsOf(plain, [], { system: null })).toEqual(["cannot say", "file at fault"]);
  expect(reasonsOf(plain, [], { barred: { code: "log at fault", line: 7 } })).toEqual(["cannot say", "log at fault"]);
  expect(fleet([], [], { on: "2026-11-25" }).entries).toEqual([]);
});

test("fleet(...): what is late by the calendar is late though its hours are not known", () => {
  const { duty: _duty, ...noDuty } = plain;
  const entry = entryOf(noDuty, [changed("2025-11-01", 1000)]);
  expect(entry).toMatchObject({ group: "late", due: { by: "calendar" }, reasons: [{ code: "hours unknown" }] });
});

test("fleet(...): hours at an undated change count on the scale of the first meter", () => {
  const rows: Row[] = [
    { date: "2026-06-01", h: 1100 },
    { date: "2026-07-01", h: 1250 },
  ];
  const { calendar: _calendar, ...service } = plain.service as NonNullable<System["service"]>;
  const entry = entryOf({ ...plain, service }, rows, { on: "2026-07-02" }, { changed: { hours: 1000 * hour } });
  expect(entry.due).toMatchObject({ date: "2026-07-01", by: "hours" });
});

test("fleet(...) counts parts by what the shelf calls them, again and again within the days, and says when to order", () => {
  const shelf = [
    { part: "element P25", element: "prefilter A", system: null, onHand: 3, delivery: 10 * 24 * hour },
    { part: "element P25", element: "prefilter B", system: "one.yaml", onHand: null, delivery: null },
  ];
  // Due on 21 July, 9 September and 29 October: three times two prefilters, three fine filters.
  const { parts } = entryOf(plain, steady("2026-07-01", 1150), { on: "2026-07-02", within: 120, shelf });
  const [prefilter, fine] = parts;
  expect(prefilter).toMatchObject({
    part: "element P25",
    count: 6,
    machines: 1,
    first: "2026-07-21",
    onHand: 3,
    short: 3,
  });
  expect(prefilter?.orderBy).toBe("2026-08-30"); // the fourth is needed on 9 September, and takes ten days
  expect(fine).toMatchObject({
    part: "fine filter",
    style: "cartridge",
    count: 3,
    onHand: null,
    short: 3,
    orderBy: null,
  });
});

test("fleet(...) names machines of the log that are not listed", () => {
  const { unlisted } = fleet([machineOf("one", plain)], [rowOf({ ...changed("2026-11-01", 9), machine: "two" })], {
    on: "2026-11-25",
  });
  expect(unlisted).toEqual([{ machine: "two", rows: 1 }]);
});

test("fleet(...) works a system out once, however many machines have it or a copy of it", () => {
  const lives = vi.fn(() => Float64Array.of(100 * hour, 1000 * hour, Number.NaN, Infinity));
  const machines = ["one", "two", "three"].map((name) => machineOf(name, structuredClone(plain)));
  const log = machines.map(({ name }) => ({ ...rowOf(changed("2026-11-20", 1000)), machine: name }));
  const { entries } = fleet(machines, log, { on: "2026-11-25", lives });
  expect(lives).toHaveBeenCalledTimes(1);
  // 250 h are run by its day; one of the three draws that made a system is met before.
  expect(entries.map(({ chance }) => chance)).toEqual([1 / 3, 1 / 3, 1 / 3]);
});

test("fleet(...) orders by group, then what stops the work, then the day", () => {
  const machines = [
    machineOf("mild", plain, { stakes: "a nuisance" }),
    machineOf("soon", plain),
    machineOf("sooner", plain, { stakes: "stops the work" }),
  ];
  const log = [
    { ...rowOf(changed("2026-11-01", 9)), machine: "mild" },
    { ...rowOf(changed("2026-11-20", 9)), machine: "soon" },
    { ...rowOf(changed("2026-11-10", 9)), machine: "sooner" },
  ];
  const { entries } = fleet(machines, log, { on: "2026-11-25" });
  expect(entries.map(({ machine, group }) => `${machine} ${group}`)).toEqual([
    "sooner within",
    "soon within",
    "mild within",
  ]);
});

test("fleet([], log, options) is a list of nothing", () => {
  expect(fleet([], [], { on: "2026-11-25" })).toEqual({
    question: "fleet",
    on: "2026-11-25",
    within: 90,
    entries: [],
    parts: [],
    unlisted: [],
  });
});

test("fleet(...) of a machine whose file is at fault knows nothing else of it", () => {
  const { entries } = fleet([machineOf("one", plain, { system: null, stakes: "a nuisance" })], [], {
    on: "2026-11-25",
  });
  expect(entries).toEqual([
    {
      machine: "one",
      system: "one.yaml",
      stakes: "a nuisance",
      group: "cannot say",
      due: null,
      change: [],
      elements: [],
      hours: null,
      distance: null,
      gauge: null,
      chance: null,
      reasons: [{ code: "file at fault" }],
      cautions: [],
    },
  ]);
});

test("fleet(...) has no answer for a system that is refused, and says why; any other error is not hidden", () => {
  const answer = (error: Error) =>
    fleet([machineOf("one", plain)], [], {
      on: "2026-11-25",
      lives: () => {
        throw error;
      },
    });
  const refused = new InputError("pump", "flow", "more than 0 m3/s", 0);
  expect(answer(refused).entries[0]?.reasons).toEqual([{ code: "no answer", message: refused.message }]);
  expect(() => answer(new TypeError("a mistake of ours"))).toThrow("a mistake of ours");
});

test("fleet(...) judges a machine without rows, and draws nothing unless asked", () => {
  const entry = entryOf(plain, [], {}, { changed: { date: "2026-11-20", hours: 1000 * hour } });
  expect(entry).toMatchObject({ group: "within", chance: null, reasons: [] });
});
