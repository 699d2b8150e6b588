import type { System, SystemPart } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, litresAnHour, plainSystem } from "../../../../../tests/support/plainSystem.js";
import { isAdditive, keeps, orderFacts, resistances, slipsToTank } from "./OrderFacts.js";
import { stackOf } from "./stack.js";

const HOUR = 3600;
const line: SystemPart = { part: "line", name: "line", length: 1, bore: 0.02, roughness: 1e-6 };
const { filter } = elementOf("fine", { drop: 3e3 });
const bank = (...branches: SystemPart[][]): SystemPart => ({ part: "bank", name: "bank", branches });
const slipping: System["pump"] = {
  kind: "fixed",
  flow: 400 * litresAnHour,
  relief: 80e3,
  reliefTo: "tank",
  slip: { flow: 40 * litresAnHour, rise: 80e3, dynamicViscosity: 830 * 3e-6 },
};
const tanksWith = (...path: SystemPart[]) => plainSystem.tanks.map((tank) => ({ ...tank, path }));

test.each([
  ["15/13/10", "15/13/10", true],
  ["14/13/10", "15/13/10", true],
  ["16/13/10", "15/13/10", false],
  ["15/13/11", "15/13/10", false],
  ["15/14/10", "15/13/10", false],
])("keeps(code, asked) of %s where %s is asked is %s", (code, asked, kept) => expect(keeps(code, asked)).toBe(kept));

describe("isAdditive(stack)", () => {
  const additive = (more: Partial<System>, side: "suction" | "delivery" = "suction") =>
    isAdditive(stackOf({ ...plainSystem, ...more }, side));

  test("is of the suction side alone", () => {
    expect(additive({ delivery: [filter] })).toBe(true);
    expect(additive({ delivery: [filter] }, "delivery")).toBe(false);
  });

  test.each<[string, Partial<System>, boolean]>([
    ["nothing behind the pump", {}, true],
    ["a line and filters in a row", { delivery: [line, filter, elementOf("two", { drop: 1 }).filter] }, true],
    ["a bank", { delivery: [line, bank([filter], [line])] }, false],
    ["a bank after a line and a filter", { delivery: [line, filter, bank([line], [line])] }, false],
    ["a terminal drop there", { delivery: [line, { ...filter, terminalDrop: 50e3 }] }, false],
    ["no terminal drop to speak of", { delivery: [{ ...filter, terminalDrop: 0 }] }, true],
  ])("with %s", (_, more, expected) => expect(additive(more)).toBe(expected));

  test.each<[string, SystemPart[], boolean]>([
    ["a line", [line], true],
    ["a filter behind a line", [line, filter], false],
    ["a bank", [bank([line], [line]), line], false],
  ])("with %s on a tank's own way", (_, path, expected) => {
    expect(additive({ tanks: tanksWith(...path) })).toBe(expected);
    expect(additive({ tanks: [...tanksWith(), ...tanksWith(...path)] })).toBe(expected);
    expect(additive({ tanks: tanksWith(...path), delivery: [filter] })).toBe(expected);
  });
});

test("slipsToTank(system) is of a fixed pump that slips and relieves to the tank alone", () => {
  const { slip: _, ...tight } = slipping as Extract<System["pump"], { kind: "fixed" }>;
  const curve: System["pump"] = { kind: "curve", points: [{ flow: 0, rise: 1e5 }] };
  const pumps = [slipping, tight, { ...slipping, reliefTo: "inlet" }, curve, { kind: "none" }] as System["pump"][];
  expect(pumps.map((pump) => slipsToTank({ ...plainSystem, pump }))).toEqual([true, false, false, false, false]);
});

test("resistances(system) are those of the filters behind the pump, drop over flow and viscosity, by name", () => {
  const other = elementOf("coarse", { drop: 500 }).filter;
  // 1/m3: 3 kPa over 200 L/h of 2.49 mPa s.
  const fine = 3e3 / (200 * litresAnHour) / (830 * 3e-6);
  const found = (delivery?: SystemPart[]) => [...resistances({ ...plainSystem, ...(delivery ? { delivery } : {}) })];
  expect(found()).toEqual([]);
  expect(found([])).toEqual([]);
  expect(found([line])).toEqual([]);
  expect(found([filter])).toEqual([["fine", expect.closeTo(fine, -6)]]);
  expect(found([line, filter, line, other])).toEqual([
    ["fine", expect.closeTo(fine, -6)],
    ["coarse", expect.closeTo(fine / 6, -6)],
  ]);
  expect(fine).toBeGreaterThan(1e10);
});

describe("orderFacts(stack, elements, interval, additive)", () => {
  const elements = [elementOf("first", { drop: 1e3 }), elementOf("second", { drop: 2e3 })];
  const facts = (more: Partial<System> = {}, additive = true, of = elements) =>
    orderFacts(stackOf({ ...plainSystem, ...more }, "suction"), of, 100 * HOUR, additive);

  test("has the code of the fuel behind the last: betas of 1000 take ten scale numbers off each", () => {
    const deliveredFuel = { code: "24/22/19" };
    expect(facts({ deliveredFuel }, true, elements.slice(0, 1)).code).toBe("14/12/9");
    expect(facts({ deliveredFuel }).code).toBe("4/2/0");
  });

  test("has each element as it is followed, a stage by its first, and the others by their names", () => {
    const { elements: followed } = facts({ delivery: [filter] });
    expect([...followed.keys()]).toEqual(["stage 1 · 1", "stage 2 · 1", "fine"]);
    for (const [name, element] of followed) expect(element).toMatchObject({ name, soil: 0 });
  });

  test("has what each has caught by the end of the interval: 200 L/h of 10 mg/L, nearly all of it by the first", () => {
    const { caught } = facts({ delivery: [filter] });
    const [first = 0, second = 0] = caught?.most.stages ?? [];
    const fine = caught?.most.others.get("fine") ?? 0;
    expect(first + second + fine).toBeCloseTo(0.2, 4);
    expect(first).toBeGreaterThan(0.98 * 0.2);
    expect(second).toBeGreaterThan(100 * fine);
    expect(fine).toBeGreaterThan(0);
    expect([...(caught?.most.others.keys() ?? [])]).toEqual(["fine"]);
    expect(caught?.least).toBe(caught?.most);
  });

  test("has it however soon the elements would fill or the limits be met", () => {
    const tight = { vacuumClean: 1, vacuumAtChange: 1, feedPressure: 1e6 };
    const full = elements.map(({ filter: own, ...one }) => ({ ...one, filter: { ...own, terminalDrop: 1 } }));
    expect(facts({ limits: tight, suction: [] }, true, full).caught?.most.stages).toEqual(facts().caught?.most.stages);
  });

  test("has no such thing where sums do not tell, or water swells an element", () => {
    expect(facts({}, false).caught).toBeNull();
    expect(facts({}, false).code).toBe(facts().code);
    const [dry] = elements;
    const absorbing = elementOf("absorber", { drop: 1e3, filter: { absorbs: { water: 0.5, restriction: 3 } } });
    const wet = { deliveredFuel: { ...plainSystem.deliveredFuel, water: 0.2 } };
    expect(facts(wet, true, dry ? [dry, absorbing] : []).caught).toBeNull();
    expect(facts(wet, true).caught).not.toBeNull();
  });

  test("of a pump that slips to the tank has the least and the most, between which the pump's own flow catches", () => {
    const { caught } = facts({ pump: slipping, delivery: [filter] });
    const { least, most } = caught ?? {
      least: { stages: [], others: new Map() },
      most: { stages: [], others: new Map() },
    };
    expect(least.stages[0] ?? 0).toBeLessThan(most.stages[0] ?? 0);
    expect(least.stages[0] ?? 0).toBeGreaterThan(0);
    // What goes round once more leaves less to what stands behind the pump: that has caught most where least goes round.
    expect(most.others.get("fine")).toBeGreaterThan(least.others.get("fine") ?? Infinity);
  });
});
