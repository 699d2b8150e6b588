import type { System, SystemPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { cardNames, changeable, changedOf, elementOf } from "./changedOf.js";
import { emptiedLines, volumesOf } from "./volumesOf.js";

const part = (kind: SystemPart["part"], name: string, more: object = {}) =>
  ({ part: kind, name, ...more }) as unknown as SystemPart;
const filter = (name: string, more: object = {}) => part("filter", name, { blocked: false, reversed: false, ...more });
const screen = (name: string) => part("strainer", name);
/** A litre: 1 m of a square decimetre's bore area, by its own length. */
const line = (name: string) => part("line", name, { length: 4 / Math.PI, bore: 0.1 ** 1.5 });
const bank = (...branches: SystemPart[][]) => part("bank", "bank", { branches });
const machine = (...suction: SystemPart[]): System =>
  ({
    name: "Bench",
    fuel: { kind: "diesel" },
    pump: { kind: "fixed" },
    tanks: [{ name: "tank", fullDepth: 1, path: [] }],
    suction,
  }) as unknown as System;
const elementsOf = (system: System, ...names: string[]) =>
  changedOf(system, names).map((spot) => elementOf(spot, changeable(system)));

test("elementOf(spot, all) is what the file says of a filter, and nulls for what it does not", () => {
  const common = { side: "suction", from: "tank", to: "the lift pump", head: 1, beside: [], standby: [] };
  const said = { style: "bowl", body: 1e-3, bowl: 2e-4, prefill: "allowed", reversed: true };
  expect(elementsOf(machine(filter("A", said)))).toEqual([{ ...common, ...said, name: "A" }]);
  const unsaid = { style: null, body: null, bowl: null, prefill: null, reversed: false };
  expect(elementsOf(machine(filter("A")))).toEqual([{ ...common, ...unsaid, name: "A" }]);
  expect(elementsOf(machine(screen("S")))).toEqual([{ ...common, ...unsaid, style: "screen", name: "S" }]);
});

test("elementOf(spot, all) tells which of its bank fuel can go through meanwhile, and which are shut off", () => {
  const system = machine(
    bank([filter("A"), filter("A2")], [filter("B", { blocked: true })], [screen("S"), filter("C")]),
    bank([filter("D")], [line("hose")]),
  );
  const [a] = elementsOf(system, "A");
  expect(a).toMatchObject({ beside: ["C"], standby: ["B"] });
  expect(elementsOf(system, "D")[0]).toMatchObject({ beside: [], standby: [] });
  // A screen of a bank is cleaned, and no element beside it is told of.
  expect(elementsOf(system, "S")[0]).toMatchObject({ beside: [], standby: [], reversed: false });
});

test("changedOf(system, names) is all that can be changed, or those named, in the order the fuel meets them", () => {
  const system = machine(screen("S"), line("hose"), filter("A"), filter("B"));
  expect(cardNames(system)).toEqual(["S", "A", "B"]);
  expect(changedOf(system, ["B", "S"]).map((one) => one.part.name)).toEqual(["S", "B"]);
  expect(() => changedOf(system, ["hose"])).toThrow(
    'card requires at to be a filter of Bench, one of "S", "A", "B", got "hose"',
  );
});

const emptied = (system: System, ...names: string[]) => emptiedLines(changedOf(system, names)).map(({ name }) => name);
test("emptiedLines(changed) goes from an element as far as the next thing that keeps fuel back", () => {
  const cock = part("fitting", "cock", { kind: "ball valve" });
  const elbows = part("fitting", "elbows", { kind: "elbow 90" });
  const stops: readonly (readonly [SystemPart, boolean])[] = [
    [cock, true],
    [part("valve", "check valve", { oneWay: true }), true],
    [filter("B"), true],
    [bank([filter("B")], [line("other")]), true],
    [elbows, false],
    [part("valve", "valve", { oneWay: false }), false],
    [part("rise", "rise", { height: 1 }), false],
    [screen("S"), false],
  ];
  for (const [stop, keepsBack] of stops) {
    const system = machine(line("far"), stop, line("near"), filter("A"), line("after"), stop, line("last"));
    const all = ["near", ...(keepsBack ? [] : ["far"]), "after", ...(keepsBack ? [] : ["last"])];
    expect(emptied(system, "A"), stop.name).toEqual(all);
  }
});

test("emptiedLines(changed) goes on beside a bank where every branch of it is opened", () => {
  const system = machine(
    line("before"),
    bank([line("to A"), filter("A")], [filter("B"), line("from B")]),
    line("behind"),
  );
  expect(emptied(system, "A")).toEqual(["to A"]);
  expect(emptied(system, "A", "B")).toEqual(["to A", "before", "behind", "from B"]);
});

test("volumesOf(changed) is of bodies, or bowls where no body is stated, and of the lines beside", () => {
  const system = machine(
    line("hose"),
    filter("A", { body: 1e-3, bowl: 2e-4 }),
    line("pipe"),
    filter("B", { bowl: 3e-4 }),
    filter("C"),
  );
  const found = volumesOf(changedOf(system, []));
  expect(found.bodies).toBeCloseTo(1.3e-3, 12);
  expect(found.lines).toBeCloseTo(2e-3, 12);
  expect(found.unknown).toEqual(["B", "C"]);
});

test("volumesOf(changed) of what is lifted out of a tank, or of a screen, is none", () => {
  const none = { bodies: 0, unknown: [], lines: 0 };
  const pickUp = machine(filter("A", { style: "in-tank", body: 1e-3 }), line("hose"));
  expect(volumesOf(changedOf(pickUp, []))).toEqual(none);
  expect(volumesOf(changedOf(machine(screen("S"), line("hose")), []))).toEqual(none);
});

test("emptiedLines(changed) leaves full what stands beside a bank with a branch that is not opened, whatever is opened elsewhere", () => {
  const system = machine(filter("C"), line("before"), bank([filter("A")], [filter("B")]), line("behind"));
  expect(emptied(system, "C", "A")).toEqual(["before"]);
});
