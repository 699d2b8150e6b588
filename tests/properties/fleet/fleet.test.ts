import type { LogEntry } from "@thirstline/spec/system";
import { dateOf, dayOf, type FleetEntry, type FleetGroup, fleet } from "@thirstline/study";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aLog, demoSystem, FIRST, machineOf, unpredicted } from "../../support/fleets.js";

const heron = demoSystem("heron");
const lorry = demoSystem("lorry");
const generator = demoSystem("generator");
const systems = [heron, unpredicted(heron), unpredicted(lorry), generator];
const firstOf = ["prefilter A", "prefilter A", "prefilter P15", "bowl filter B10"];

const aMachine = (name: string) =>
  fc.integer({ min: 0, max: systems.length - 1 }).chain((at) =>
    fc.record({
      machine: fc
        .constantFrom(null, "a nuisance" as const, "stops the work" as const)
        .map((stakes) => machineOf(name, systems[at] as (typeof systems)[number], { stakes })),
      log: aLog(name, firstOf[at] ?? ""),
    }),
  );

const on = (days: number) => dateOf(dayOf(FIRST) + 570 + days);

test("fleet(machines, log, options): a machine more changes no other's entry", () => {
  fc.assert(
    fc.property(aMachine("one"), aMachine("two"), aMachine("three"), (one, two, three) => {
      const both = fleet([one.machine, two.machine], [...one.log, ...two.log], { on: on(0) });
      const all = fleet(
        [three.machine, two.machine, one.machine],
        [...two.log, ...three.log, ...one.log].sort((left, right) => (left.date < right.date ? -1 : 1)),
        { on: on(0) },
      );
      const entryOf = (entries: readonly FleetEntry[], name: string) => entries.find(({ machine }) => machine === name);
      for (const name of ["one", "two"]) expect(entryOf(all.entries, name)).toEqual(entryOf(both.entries, name));
      expect(all.entries).toHaveLength(3);
    }),
    { numRuns: 25 },
  );
});

/** Nothing can be said, or less pressing, first. */
const URGENCY: Readonly<Record<FleetGroup, number>> = {
  "cannot say": -1,
  later: 0,
  "left alone": 1,
  within: 2,
  now: 3,
  late: 4,
};

test("fleet(machines, log, { on }): a later day never makes an entry less pressing, with the same log", () => {
  const met = new Set<FleetGroup>();
  fc.assert(
    fc.property(aMachine("one"), fc.array(fc.nat(900), { minLength: 2, maxLength: 5 }), ({ machine, log }, days) => {
      const groups = days
        .sort((left, right) => left - right)
        .map((day) => fleet([machine], log, { on: on(day) }).entries[0]?.group ?? "cannot say");
      for (const group of groups) met.add(group);
      const ranks = groups.map((group) => URGENCY[group]);
      expect(ranks).toEqual([...ranks].sort((left, right) => left - right));
    }),
    { numRuns: 80 },
  );
  expect(met).toContain("late"); // the case was met, and so was its opposite
  expect(met.size).toBeGreaterThan(2);
});

test("fleet(machines, log, options): the day due is that of the limit that comes first of all its elements'", () => {
  fc.assert(
    fc.property(aMachine("one"), ({ machine, log }) => {
      const [entry] = fleet([machine], log, { on: on(0) }).entries;
      const dates = entry?.elements.flatMap(({ limits }) => limits.flatMap(({ date }) => date ?? [])) ?? [];
      expect(dates.length).toBeGreaterThan(0);
      expect(entry?.due?.date).toBe([...dates].sort()[0]);
    }),
    { numRuns: 40 },
  );
});

test("fleet(machines, log, options): at a steady rate the day due is the least of interval, distance and calendar", () => {
  const hour = 3600;
  fc.assert(
    fc.property(
      fc.record({
        hoursADay: fc.integer({ min: 1, max: 20 }),
        kmADay: fc.integer({ min: 10, max: 900 }),
        interval: fc.integer({ min: 20, max: 3000 }),
        distance: fc.integer({ min: 1000, max: 90_000 }),
        calendar: fc.integer({ min: 30, max: 800 }),
      }),
      ({ hoursADay, kmADay, interval, distance, calendar }) => {
        const service = { interval: interval * hour, distance: distance * 1000, calendar: calendar * 24 * hour };
        const machine = machineOf("one", { ...unpredicted(heron), service });
        const row = (days: number, element: boolean) => ({
          machine: "one",
          date: dateOf(dayOf(FIRST) + days),
          hours: (500 + days * hoursADay) * hour,
          distance: (9000 + days * kmADay) * 1000,
          event: element ? ({ kind: "changed", element: null } as const) : ({ kind: "reading" } as const),
        });
        const [entry] = fleet([machine], [row(0, true), row(20, false)], { on: on(0) }).entries;
        const wanted = Math.min(Math.floor(interval / hoursADay), Math.floor(distance / kmADay), calendar);
        expect(entry?.due?.date).toBe(dateOf(dayOf(FIRST) + wanted));
      },
    ),
  );
});

test("fleet(machines, log, options): nothing is due after the manual's longest interval, however clean", () => {
  fc.assert(
    fc.property(aMachine("one"), ({ machine, log }) => {
      const [entry] = fleet([machine], log, { on: on(0) }).entries;
      for (const { limits } of entry?.elements ?? []) {
        const longest = limits.flatMap(({ latest }) => latest ?? []).sort()[0];
        if (longest !== undefined) expect((entry?.due?.date ?? "9999") <= longest).toBe(true);
      }
    }),
    { numRuns: 40 },
  );
});

test("fleet(machines, log, options): a gauge reading brings a machine's day nearer, never further", () => {
  fc.assert(
    fc.property(fc.integer({ min: 10, max: 60 }), fc.double({ min: 0, max: 80e3, noNaN: true }), (days, gauge) => {
      const first: LogEntry = { machine: "one", date: FIRST, hours: 0, event: { kind: "changed", element: null } };
      const day = dateOf(dayOf(FIRST) + days);
      const last: LogEntry = { machine: "one", date: day, hours: days * 5 * 3600, event: { kind: "reading" } };
      const dueOf = (log: LogEntry[]) =>
        fleet([machineOf("one", heron)], log, { on: on(0) }).entries[0]?.due?.date ?? "9999";
      expect(dueOf([first, { ...last, gauge }]) <= dueOf([first, last])).toBe(true);
    }),
    { numRuns: 40 },
  );
});
