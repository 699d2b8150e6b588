import type { ShelfPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { dateOf } from "./day.js";
import type { Judged } from "./fleetEntry.js";
import { fleetParts } from "./fleetParts.js";

const DAY = 24 * 3600;
const window = { on: 1000, within: 90 };
const limit = (day: number, more: object = {}) => ({ by: "hours", day, after: 250, ...more });
const element = (name: string, limits: readonly object[], figures = "") => ({
  state: { element: { name, style: "spin-on", figures } },
  limits,
});
/** A machine of a system whose meters gain 5 and 100 a day. */
const machine = (name: string, elements: readonly object[], more: { group?: string; system?: string } = {}) =>
  ({
    entry: { machine: name, system: more.system ?? "a.yaml", group: more.group ?? "within" },
    elements,
    hours: { rate: { perDay: 5 } },
    distance: { rate: { perDay: 100 } },
  }) as unknown as Judged;
const shelfPart = (part: string, name: string, more: Partial<ShelfPart> = {}): ShelfPart => ({
  part,
  element: name,
  system: null,
  onHand: null,
  delivery: null,
  ...more,
});
const parts = (judged: readonly Judged[], shelf: readonly ShelfPart[] = []) => fleetParts(judged, shelf, window);
const counts = (...given: Parameters<typeof parts>) => parts(...given).map(({ part, count }) => [part, count]);

test("fleetParts(judged, shelf, window) is what falls due within it, with all that is missing", () => {
  expect(parts([machine("one", [element("A", [limit(1089)])])])).toEqual([
    {
      part: "A",
      style: "spin-on",
      systems: ["a.yaml"],
      count: 1,
      machines: 1,
      first: dateOf(1089),
      onHand: null,
      delivery: null,
      short: 1,
      orderBy: null,
    },
  ]);
});

test.each([
  [[limit(1090)], 1],
  [[limit(1091)], 0],
  [[limit(Infinity)], 0],
  [[], 0],
  // 250 at 5 a day are 50 days, so again on 1080 and no more; from the last day of the window backwards, too.
  [[limit(1030)], 2],
  [[limit(1040)], 2],
  [[limit(1041)], 1],
  // What is past due is changed today, and again after 50 days.
  [[limit(900)], 2],
  // The shorter of what lasts: 2000 at 100 a day are 20 days.
  [[limit(1030), limit(1050, { by: "distance", after: 2000 })], 4],
  [[limit(1030, { after: null })], 1],
  // Faster than a day counts a day.
  [[limit(1088, { after: 1 })], 3],
])("fleetParts(judged, shelf, window) of the limits %j counts %i", (limits, count) => {
  const found = counts([machine("one", [element("A", limits)])]);
  expect(found).toEqual(count === 0 ? [] : [["A", count]]);
});

test("fleetParts(judged, shelf, window) counts once what stands still", () => {
  const still = { ...machine("one", [element("A", [limit(1030)])]), hours: { rate: { perDay: 0 } } } as Judged;
  expect(counts([still])).toEqual([["A", 1]]);
  expect(counts([{ ...still, hours: null, distance: null }])).toEqual([["A", 1]]);
  const travels = { ...machine("one", [element("A", [limit(1030, { by: "distance" })])]), distance: null } as Judged;
  expect(counts([travels])).toEqual([["A", 1]]);
});

test("fleetParts(judged, shelf, window) leaves out a machine of which nothing can be said", () => {
  expect(counts([machine("one", [element("A", [limit(1089)])], { group: "cannot say" })])).toEqual([]);
});

test("fleetParts(judged, shelf, window) is one part where the shelf says so, or name, style and figures are the same", () => {
  const of = (name: string, system: string, figures = "") =>
    machine(`${name} ${system} ${figures}`, [element(name, [limit(1089)], figures)], { system });
  const same = [of("A", "b.yaml"), of("A", "a.yaml"), of("A", "a.yaml", "finer"), of("B", "a.yaml")];
  expect(parts(same).map(({ part, systems, machines, count }) => [part, systems, machines, count])).toEqual([
    ["A", ["a.yaml", "b.yaml"], 2, 2],
    ["A", ["a.yaml"], 1, 1],
    ["B", ["a.yaml"], 1, 1],
  ]);
  const shelf = [shelfPart("P25", "A"), shelfPart("P25", "B"), shelfPart("P30", "A", { system: "b.yaml" })];
  expect(parts(same, shelf).map(({ part, systems, count }) => [part, systems, count])).toEqual([
    ["P25", ["a.yaml"], 3],
    ["P30", ["b.yaml"], 1],
  ]);
  // A part of another system is none of this one's.
  expect(counts([of("A", "c.yaml")], [shelfPart("P30", "A", { system: "b.yaml" })])).toEqual([["A", 1]]);
  expect(counts([of("A", "c.yaml")], [shelfPart("P30", "C")])).toEqual([["A", 1]]);
});

test("fleetParts(judged, shelf, window) says what is missing, and by when to order it", () => {
  const yard = [machine("one", [element("A", [limit(1020)])]), machine("two", [element("A", [limit(1010)])])];
  // Due on days 1010, 1020, 1060 and 1070.
  const found = (onHand: number | null, delivery: number | null) =>
    parts(yard, [
      shelfPart("P0", "B", { onHand: 9 }),
      shelfPart("P25", "A"),
      shelfPart("P25", "Z", { onHand, delivery }),
    ])[0];
  expect(found(null, null)).toMatchObject({ count: 4, first: dateOf(1010), onHand: null, short: 4, orderBy: null });
  expect(found(1, 10 * DAY)).toMatchObject({ onHand: 1, delivery: 10 * DAY, short: 3, orderBy: dateOf(1010) });
  expect(found(2, 9.5 * DAY)).toMatchObject({ short: 2, orderBy: dateOf(1050) });
  expect(found(null, 10 * DAY)).toMatchObject({ short: 4, orderBy: dateOf(1000) });
  expect(found(4, 10 * DAY)).toMatchObject({ short: 0, orderBy: null });
  expect(found(9, 10 * DAY)).toMatchObject({ onHand: 9, short: 0, orderBy: null });
});

test("fleetParts(judged, shelf, window) puts first what is most missing, then what is most due, then by name", () => {
  const many = (name: string, count: number) =>
    Array.from({ length: count }, (_, at) => machine(`${name} ${at}`, [element(name, [limit(1089)])]));
  const yard = [...many("D", 1), ...many("C", 1), ...many("B", 3), ...many("A", 2), ...many("E", 4)];
  const shelf = [shelfPart("E", "E", { onHand: 4 }), shelfPart("B", "B", { onHand: 1 })];
  expect(parts(yard, shelf).map(({ part, short, count }) => [part, short, count])).toEqual([
    ["B", 2, 3],
    ["A", 2, 2],
    ["C", 1, 1],
    ["D", 1, 1],
    ["E", 0, 4],
  ]);
});

test("fleetParts(judged, shelf, window) does not take for an element a part that is only called as that is", () => {
  const shelf = [shelfPart("A", "Z", { onHand: 9, delivery: DAY })];
  expect(parts([machine("one", [element("A", [limit(1089)])])], shelf)[0]).toMatchObject({
    onHand: null,
    delivery: null,
    short: 1,
  });
});
