import type { System, SystemPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { type Spot, spotsOf } from "./spots.js";

const part = (kind: SystemPart["part"], name: string, more: object = {}) =>
  ({ part: kind, name, ...more }) as SystemPart;
const line = (name: string) => part("line", name);
const filter = (name: string) => part("filter", name);
const rise = (height: number) => part("rise", "rise", { height });
const bank = (name: string, ...branches: SystemPart[][]) => part("bank", name, { branches });
const tank = (name: string, fullDepth: number, ...path: SystemPart[]) => ({ name, fullDepth, path });
const machine = (more: object): System =>
  ({
    fuel: { kind: "diesel" },
    pump: { kind: "fixed" },
    tanks: [tank("day tank", 1)],
    suction: [],
    ...more,
  }) as unknown as System;

/** Each part with its side, its neighbours, how high a full tank stands over it, and its bank. */
const placesOf = (system: System) =>
  spotsOf(system).map((spot: Spot) => [
    spot.part.name,
    spot.side,
    spot.from,
    spot.to,
    Number(spot.head.toFixed(9)),
    spot.bank?.part.name ?? null,
  ]);

test("spotsOf(heron) has every part in the order the fuel meets it, those of a bank after the bank", () => {
  expect(placesOf(demoSystem("heron"))).toEqual([
    ["tank line", "suction", "port tank", "elbows", 1.1, null],
    ["elbows", "suction", "tank line", "prefilter A and prefilter B", 1.1, null],
    [expect.any(String), "suction", "elbows", "prefilter A and prefilter B", 1.1, null],
    [expect.any(String), "suction", "elbows", "pump line", 0.2, null],
    ["prefilter A", "suction", "elbows", "pump line", 0.2, expect.any(String)],
    ["prefilter B", "suction", "elbows", "pump line", 0.2, expect.any(String)],
    ["pump line", "suction", "prefilter A and prefilter B", "the lift pump", 0.2, null],
    ["delivery line", "delivery", "the lift pump", "fine filter", 0.2, null],
    ["fine filter", "delivery", "delivery line", "the injection pump", 0.2, null],
  ]);
});

test("spotsOf(system) counts heads of several tanks each from its own, and behind their joint from the highest", () => {
  const tanks = [tank("left", 0.5, rise(0.2), line("left hose")), tank("right", 0.9, line("right hose"), rise(-0.1))];
  expect(placesOf(machine({ tanks, suction: [rise(0.3), filter("A")], delivery: [filter("C")] }))).toEqual([
    ["rise", "suction", "left", "left hose", 0.5, null],
    // What is next to it is the filter: a change of height is no neighbour.
    ["left hose", "suction", "left", "A", 0.3, null],
    ["right hose", "suction", "right", "A", 0.9, null],
    ["rise", "suction", "right hose", "A", 0.9, null],
    ["rise", "suction", "the joint of the tanks", "A", 1, null],
    ["A", "suction", "the joint of the tanks", "the lift pump", 0.7, null],
    ["C", "delivery", "the lift pump", "the injection pump", 0.7, null],
  ]);
});

test("spotsOf(system) ends a tank's path at the pump where nothing stands before it", () => {
  expect(placesOf(machine({ tanks: [tank("day tank", 1, filter("A"))] }))).toEqual([
    ["A", "suction", "day tank", "the lift pump", 1, null],
  ]);
  expect(placesOf(machine({ pump: { kind: "none" }, suction: [filter("A")] }))).toEqual([
    ["A", "suction", "day tank", "the engine", 1, null],
  ]);
});

test("spotsOf(system) counts what a bank climbs once, and calls it by the filters in it", () => {
  const pair = bank("pair", [rise(0.2), filter("A")], [rise(0.2), line("by-pass")]);
  expect(placesOf(machine({ suction: [line("hose"), pair, rise(0.1), filter("B")] }))).toEqual([
    ["hose", "suction", "day tank", "A", 1, null],
    ["pair", "suction", "hose", "B", 1, null],
    ["rise", "suction", "hose", "A", 1, "pair"],
    ["A", "suction", "hose", "B", 0.8, "pair"],
    ["rise", "suction", "hose", "by-pass", 1, "pair"],
    ["by-pass", "suction", "hose", "B", 0.8, "pair"],
    ["rise", "suction", "A", "B", 0.8, null],
    ["B", "suction", "A", "the lift pump", 0.7, null],
  ]);
});

test("spotsOf(system) calls a bank without a filter by its own name", () => {
  const hoses = bank("twin hoses", [line("one")], [line("other")]);
  expect(placesOf(machine({ suction: [hoses, filter("A")] })).at(-1)).toEqual([
    "A",
    "suction",
    "twin hoses",
    "the lift pump",
    1,
    null,
  ]);
});

test("spotsOf(system) gives each part the row it stands in, and the branches of a bank theirs", () => {
  const branches = [[filter("A")], [filter("B")]];
  const suction = [bank("pair", ...branches)];
  const [pair, a, b] = spotsOf(machine({ suction }));
  expect([pair?.row, a?.row, b?.row]).toEqual([suction, branches[0], branches[1]]);
  expect(a?.bank).toBe(pair);
});
