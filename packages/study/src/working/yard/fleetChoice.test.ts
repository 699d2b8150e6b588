import type { LogEntry, System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { figureLines } from "../../../../../tests/properties/working/figureLines.js";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { demoSystem, machineOf, unpredicted } from "../../../../../tests/support/fleets.js";
import { dayOf } from "../../fleet/day.js";
import type { FleetAnswer } from "../../fleet/FleetAnswer.js";
import type { FleetMachine, FleetOptions } from "../../fleet/FleetMachine.js";
import { fleet } from "../../fleet/fleet.js";
import { proofOf } from "../proof.js";
import { fleetChoice } from "./fleetChoice.js";
import { fleetFigures, fleetWorking } from "./fleetWorking.js";

const HOUR = 3600;
const on = "2026-11-25";

const row = (machine: string, date: string, hours: number, rest: Partial<LogEntry> = {}): LogEntry => ({
  machine,
  date,
  hours: hours * HOUR,
  event: { kind: "reading" },
  ...rest,
});
const changed = (element: string | null = null) => ({ event: { kind: "changed", element } }) as const;

/** Forty lives of 0 to 780 h; of one draw nothing came. */
const lives = () => Float64Array.from({ length: 40 }, (_, at) => (at === 3 ? Number.NaN : at * 20 * HOUR));

/** A yard, its answer, and its figures. */
function yardOf(machines: readonly FleetMachine[], log: readonly LogEntry[], more: Partial<FleetOptions> = {}) {
  const options: FleetOptions = { on, ...more };
  const answer = fleet(machines, log, options);
  return { answer, choice: fleetChoice(machines, log, answer, options) };
}

/** Every figure of a machine that the answer has too, by its name: what it is there, and null where it has none. */
function expected({ entries }: FleetAnswer, at: number): Map<string, number | null> {
  const entry = entries[at];
  if (!entry) throw new Error(`no machine ${at}`);
  const { hours, distance, gauge, chance, due } = entry;
  const all: [string, number | null][] = [
    ["days until it is due", due?.days ?? null],
    ["gauge", gauge?.value ?? null],
    ["chance of a limit before it is due", chance],
  ];
  // A meter that the answer leaves out has figures all the same.
  for (const [of, rate] of [
    ["use", hours],
    ["travel", distance],
  ] as const) {
    if (rate === null) continue;
    const day = (perDay: number | null) => (perDay === null ? null : perDay / 86400);
    all.push(
      [`rate of ${of}`, day(rate.perDay)],
      [`slowest rate of ${of}`, day(rate.least)],
      [`fastest rate of ${of}`, day(rate.most)],
    );
  }
  for (const { element, running, limits } of entry.elements) {
    all.push([`running time of ${element}`, running]);
    for (const { by, date, after } of limits) {
      all.push([`days to the limit of ${element} by ${by}`, date === null ? null : dayOf(date) - dayOf(on)]);
      all.push([`allowed for ${element} by ${by}`, after === Infinity ? null : after]);
    }
  }
  return new Map(all);
}

/** Figures that differ from the answer's, or that do not come out anew. */
function faultsOf({ answer, choice }: ReturnType<typeof yardOf>, at: number): string[] {
  return [...expected(answer, at)].flatMap(([figure, value]) => {
    const step = fleetWorking(choice, { of: `machine ${at}`, figure, asked: {} })?.step;
    const missed = step ? proofOf({ step }).misses.map(({ name }) => `${figure}: ${name}`) : [];
    const near =
      step !== undefined && value !== null && Math.abs(step.value - value) <= 1e-9 * Math.max(1, Math.abs(value));
    return near || (step === undefined && value === null)
      ? missed
      : [...missed, `${figure}: ${step?.value}, not ${value}`];
  });
}

test.each<[what: string, rows: (name: string) => LogEntry[], machine?: Partial<FleetMachine>]>([
  [
    "a year of even use, and elements changed apart",
    (name) => [
      row(name, "2025-12-01", 1000, changed()),
      row(name, "2026-05-01", 1500, changed("fine filter")),
      row(name, "2026-09-01", 1700),
      row(name, "2026-11-20", 1800),
    ],
  ],
  [
    "a new meter",
    (name) => [
      row(name, "2026-06-01", 1000, changed()),
      row(name, "2026-07-15", 1100),
      row(name, "2026-08-01", 3, { event: { kind: "new hour meter" } }),
      row(name, "2026-09-10", 90),
      row(name, "2026-11-20", 250),
    ],
  ],
  [
    "a gauge between the readings of its life",
    (name) => [row(name, "2026-09-20", 1000, changed()), row(name, "2026-11-20", 1140, { gauge: 14e3 })],
  ],
  [
    "a gauge beyond what its life comes to",
    (name) => [row(name, "2026-09-20", 1000, changed()), row(name, "2026-11-20", 1140, { gauge: 24e3 })],
  ],
  [
    "a gauge over the limit at change",
    (name) => [row(name, "2026-11-01", 1000, changed()), row(name, "2026-11-20", 1095, { gauge: 40e3 })],
  ],
  [
    "a gauge read on the day of the change",
    (name) => [
      row(name, "2026-10-01", 990),
      row(name, "2026-11-20", 1095, changed()),
      row(name, "2026-11-20", 1095, { gauge: 24e3 }),
    ],
  ],
  [
    "a gauge that shows no more than when new",
    (name) => [row(name, "2026-10-01", 990, changed()), row(name, "2026-11-20", 1095, { gauge: 1 })],
  ],
  [
    "a change that nobody dated",
    (name) => [row(name, "2026-10-01", 1100), row(name, "2026-11-20", 1200)],
    { changed: { hours: 1000 * HOUR } },
  ],
  ["a machine that stands still", (name) => [row(name, "2026-06-01", 1000, changed()), row(name, "2026-11-20", 1000)]],
  ["no log, and a change before it", () => [], { changed: { date: "2026-09-01", hours: 500 * HOUR } }],
])("fleetWorking(choice, leaf) comes to the answer's figures and proves: heron, %s", (what, rows, machine = {}) => {
  // Following its elements takes long, and says nothing more where no gauge is read with them.
  const heron = what.startsWith("a gauge") ? demoSystem("heron") : unpredicted(demoSystem("heron"));
  const yard = yardOf([machineOf("one", heron, machine)], [...rows("one"), ...rows("another")], { lives });
  expect(yard.choice.members.names.slice(0, 2)).toEqual(["yard", "machine 0"]);
  expect(faultsOf(yard, 0)).toEqual([]);
  // No more than its own and the yard's, whatever else the log holds.
  expect(yard.answer.entries).toHaveLength(1);
});

test("fleetWorking(choice, leaf) comes to the answer's figures and proves where distance and calendar count too", () => {
  const lorry = unpredicted(demoSystem("lorry"));
  const far = (machine: string, date: string, hours: number, km: number, rest: Partial<LogEntry> = {}) =>
    row(machine, date, hours, { distance: km * 1000, ...rest });
  const log = [
    far("far", "2026-05-01", 6000, 200_000, changed()),
    far("far", "2026-07-01", 6200, 210_000),
    far("far", "2026-09-01", 6300, 222_000),
    far("far", "2026-11-20", 6400, 233_000),
    row("by duty", "2026-03-01", 100, changed()),
  ];
  const yard = yardOf([machineOf("far", lorry), machineOf("by duty", lorry)], log);
  const names = yard.answer.entries.map(({ machine }) => machine);
  expect([...names].sort()).toEqual(["by duty", "far"]);
  for (const at of [0, 1]) expect(faultsOf(yard, at)).toEqual([]);
  const of = `machine ${names.indexOf("far")}`;
  const limits = fleetFigures(yard.choice, of).filter((name) => name.startsWith("days to the limit of prefilter P15"));
  expect(limits.map((name) => name.split(" by ")[1]).sort()).toEqual(["calendar", "distance", "hours"]);
});

test.each([
  // Its life comes to an end, so that what is left is read off the way there; new, its elements show some 8 kPa.
  ["a gauge on the way to the end of its life", 12e3, "left-from-reading"],
  ["a gauge that shows no more than new elements", 1, "end of life"],
  ["a gauge over the limit at change", 31e3, "end of life"],
] as const)("fleetWorking(choice, leaf) comes to the answer's figures and proves: lorry, %s", (_, gauge, by) => {
  const { service: __, ...lorry } = demoSystem("lorry");
  const log = [row("one", "2026-09-20", 6000, changed()), row("one", "2026-11-20", 6400, { gauge })];
  const yard = yardOf([machineOf("one", lorry as System)], log);
  expect(faultsOf(yard, 0)).toEqual([]);
  const figure = "allowed for fine filter F4 by restriction";
  const step = fleetWorking(yard.choice, { of: "machine 0", figure, asked: {} })?.step;
  const told = stepLines(step ? [step] : []).join("\n");
  expect(told.includes("left-from-reading")).toBe(by === "left-from-reading");
});

test("fleetWorking(choice, leaf) tells that an element changed ahead of the meter has not run", () => {
  const heron = unpredicted(demoSystem("heron"));
  const known = { changed: { hours: 1300 * HOUR } };
  const { choice } = yardOf(
    [machineOf("one", heron, known)],
    [row("one", "2026-10-01", 1100), row("one", "2026-11-25", 1200)],
  );
  const step = fleetWorking(choice, { of: "machine 0", figure: "running time of fine filter", asked: {} })?.step;
  expect(stepLines(step ? [step] : []).slice(0, 1)).toEqual([
    "running time of fine filter (running time, s) | words none: its change is ahead of what the meter shows: gained since the change | 0",
  ]);
});

test("fleetWorking(choice, leaf) counts the draws that end before the day it is due, by hand", () => {
  const heron = unpredicted(demoSystem("heron"));
  // 2 h a day since the change; the manual's 250 h are over on the 125th day, when 13 of 39 lives are.
  const log = [row("one", "2026-10-01", 1000, changed()), row("one", "2026-11-20", 1100)];
  const { answer, choice } = yardOf([machineOf("one", heron)], log, { lives });
  const due = answer.entries[0]?.due?.days ?? Number.NaN;
  const run = (due + 55) * 2;
  const before = Array.from({ length: 40 }, (_, at) => at).filter((at) => at !== 3 && at * 20 < run).length;
  const step = fleetWorking(choice, { of: "machine 0", figure: "chance of a limit before it is due", asked: {} })?.step;
  expect(step?.value).toBeCloseTo(before / 39, 12);
  const late = yardOf(
    [machineOf("one", heron)],
    [row("one", "2026-01-01", 1000, changed()), row("one", "2026-11-25", 1656)],
    { lives },
  );
  // Past due it is today that counts: 656 h.
  const past = fleetWorking(late.choice, {
    of: "machine 0",
    figure: "chance of a limit before it is due",
    asked: {},
  })?.step;
  expect(late.answer.entries[0]?.due?.days).toBeLessThan(0);
  expect(past?.value).toBeCloseTo(32 / 39, 12);
  const none = yardOf([machineOf("one", heron)], log).choice;
  expect(fleetWorking(none, { of: "machine 0", figure: "chance of a limit before it is due", asked: {} })).toBeNull();
});

test("fleetChoice(machines, log, answer, options) leaves out machines that nothing can be said of", () => {
  const heron = unpredicted(demoSystem("heron"));
  const machines = [
    machineOf("fine", heron),
    machineOf("barred", heron, { barred: { code: "no answer" } as never }),
    { ...machineOf("without a file", heron), system: null },
  ];
  const { answer, choice } = yardOf(machines, [
    row("fine", "2026-10-01", 1000, changed()),
    row("fine", "2026-11-20", 1100),
  ]);
  const at = answer.entries.findIndex(({ machine }) => machine === "fine");
  expect(choice.members.names.filter((name) => name.startsWith("machine"))).toEqual([`machine ${at}`]);
  expect(choice.question).toBe("fleet");
  expect(choice.members.get(`machine ${at}`)).toMatchObject({ name: "fine", system: { name: heron.name } });
  expect(fleetWorking(choice, { of: "machine 9", figure: "gauge", asked: {} })).toBeNull();
});

test("fleetWorking(choice, leaf) of the yard tells how far was looked ahead, and is the yard's where it does not say of which", () => {
  const ahead = (more: Partial<FleetOptions>) => {
    const { choice } = yardOf([], [], more);
    expect(choice.members.get("yard")).toMatchObject({ name: "the yard", system: null });
    return figureLines(choice.members.get("yard")?.own ?? []);
  };
  expect(ahead({})).toEqual([
    "The yard: days looked ahead = 90 | days looked ahead (SI, d) | words common practice, no source:  | 90",
  ]);
  expect(ahead({ within: 30 })).toEqual([
    "The yard: days looked ahead = 30 | days looked ahead (SI, d) | asked within | 30",
  ]);
  const { choice } = yardOf([], []);
  expect(fleetWorking(choice, { figure: "days looked ahead", asked: {} })).toMatchObject({ system: "the yard" });
});

test("partFigures(part) tells what is due, on hand and to order, and says where the shelf is silent", () => {
  const heron = unpredicted(demoSystem("heron"));
  const log = [row("one", "2026-01-01", 1000, changed()), row("one", "2026-11-20", 1240)];
  const shelf = [{ part: "prefilter A", onHand: 0, delivery: 10 * 86400 }] as never;
  const { answer, choice } = yardOf([machineOf("one", heron)], log, { shelf });
  const of = (name: string) => {
    const at = answer.parts.findIndex(({ part }) => part === name);
    return figureLines(choice.members.get(`part ${at}`)?.own ?? []).map((line) => line.replace("Parts to have: ", ""));
  };
  const due = "counted over all machines, each change in the days looked ahead; what is past due is changed today";
  const fine = of("fine filter");
  expect(fine).toEqual([
    `parts due = 1 | fine filter due (plain, 1) | words ${due}:  | 1`,
    "parts to order = 1 | parts to order (plain, 1) | parts-to-order: n fine filter due; h fine filter on hand",
  ]);
  for (const [at, { short }] of answer.parts.entries()) {
    const order = fleetWorking(choice, { of: `part ${at}`, figure: "parts to order", asked: {} })?.step;
    expect(order?.value).toBe(short);
    if (order) expect(proofOf({ step: order }).misses).toEqual([]);
  }
});
