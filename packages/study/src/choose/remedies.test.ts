import type { System, SystemPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { remediesOf } from "./remedies.js";

const line = (name: string, bore: number, length = 2) => ({ part: "line", name, bore, length }) as SystemPart;
const filter = (name: string, more: object = {}) => ({ part: "filter", name, ...more }) as SystemPart;
const bank = (...branches: SystemPart[][]) => ({ part: "bank", name: "bank", branches }) as unknown as SystemPart;
const systemOf = (more: object) =>
  ({
    tanks: [{ name: "tank", path: [], vent: { kind: "open" }, fullDepth: 1, lowDepth: 0.5 }],
    suction: [],
    delivery: [],
    pump: { kind: "fixed" },
    ...more,
  }) as unknown as System;
const always = [
  { kind: "warmer fuel", by: 10 },
  { kind: "lower pump", by: 0.3 },
];

test("remediesOf(bare system) warms the fuel and lowers the pump; where fuel boils it cools it, and without a pump lifts the tank", () => {
  expect(remediesOf(systemOf({}), false)).toEqual(always);
  expect(remediesOf(systemOf({ pump: { kind: "none" } }), true)).toEqual([
    { kind: "cooler fuel", by: 10 },
    { kind: "higher tank", by: 0.3 },
  ]);
});

test("remediesOf(system) opens a vent that is not open, and fills a tank run below half", () => {
  const tanks = [
    { name: "port", path: [], vent: { kind: "blocked" }, fullDepth: 1, lowDepth: 0.2 },
    { name: "starboard", path: [], vent: { kind: "open" }, fullDepth: 1, lowDepth: 0.5 },
  ];
  expect(remediesOf(systemOf({ tanks }), false).slice(0, -2)).toEqual([
    { kind: "open vent", tank: "port" },
    { kind: "fuller tank", tank: "port", from: 0.2, to: 0.5 },
  ]);
});

test("remediesOf(system) widens all lines of one bore on one side together, and shortens each by a quarter", () => {
  const bores = { suction: [line("a", 0.01), line("b", 0.01), line("c", 0.02)], delivery: [line("d", 0.01)] };
  const all = remediesOf(systemOf(bores), false);
  const wider = all.flatMap((one) => (one.kind === "wider bore" ? [[one.side, one.from, one.parts]] : []));
  expect(wider).toEqual([
    ["suction", 0.01, ["a", "b"]],
    ["suction", 0.02, ["c"]],
    ["delivery", 0.01, ["d"]],
  ]);
  const runs = all.filter(({ kind }) => kind === "shorter run");
  expect(runs).toHaveLength(4);
  expect(runs[0]).toEqual({ kind: "shorter run", part: "a", from: 2, to: 1.5 });
});

test("remediesOf(system) takes half of some fittings away, and of one, that one", () => {
  const bends = (count: number) => ({ part: "fitting", name: `${count}`, count }) as SystemPart;
  const found = remediesOf(systemOf({ suction: [bends(5), bends(1)] }), false);
  expect(found.filter(({ kind }) => kind === "fewer fittings")).toEqual([
    { kind: "fewer fittings", part: "5", from: 5, to: 2 },
    { kind: "fewer fittings", part: "1", from: 1, to: 0 },
  ]);
});

test("remediesOf(system) cleans what is soiled and opens what is shut off", () => {
  const suction = [
    filter("clean", { restriction: 1 }),
    filter("dirty", { restriction: 3 }),
    filter("off", { blocked: true }),
  ];
  expect(remediesOf(systemOf({ suction }), false).slice(0, 2)).toEqual([
    { kind: "clean element", part: "dirty", restriction: 3 },
    { kind: "open branch", part: "off" },
  ]);
});

test("remediesOf(system) adds a branch and area to filters side by side at once, and to any other by itself", () => {
  const mixed = bank([filter("c"), filter("d")], [filter("e")]);
  const path = [filter("in tank")];
  const tanks = [{ name: "tank", path, vent: { kind: "open" }, fullDepth: 1, lowDepth: 0.5 }];
  const suction = [bank([filter("a")], [line("l", 0.01), filter("b")]), mixed];
  const found = remediesOf(systemOf({ tanks, suction, delivery: [filter("fine")] }), false);
  const groups = (kind: string) => found.flatMap((one) => (one.kind === kind && "parts" in one ? [one.parts] : []));
  const expected = [["in tank"], ["a", "b"], ["c"], ["d"], ["e"], ["fine"]];
  expect(groups("one more branch")).toEqual(expected);
  expect(groups("larger element")).toEqual(expected);
});

test("remediesOf(heron) names no change twice", () => {
  const all = remediesOf(demoSystem("heron"), false).map((one) => JSON.stringify(one));
  expect(new Set(all).size).toBe(all.length);
});
