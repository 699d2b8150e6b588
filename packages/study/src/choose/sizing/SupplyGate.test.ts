import { fuelState } from "@thirstline/core";
import { build, type CatalogueElement, type System, type SystemPart } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, litresAnHour, plainSystem, viscosity, WARM } from "../../../../../tests/support/plainSystem.js";
import { Bench } from "./Bench.js";
import { lasts, mostFlows } from "./elementFacts.js";
import type { SearchGiven } from "./SearchKinds.js";
import { SlipGate } from "./SlipGate.js";
import { circuitOf, isSpread, SupplyGate } from "./SupplyGate.js";
import { arranged, stackOf } from "./stack.js";
import { firstLimit, LIMIT_ORDER } from "./supplyLimits.js";
import { Tally } from "./Tally.js";

const HEAD = 830 * 9.80665;
const screen: SystemPart = { part: "strainer", name: "screen", aperture: 1e-4, wire: 6e-5, area: 1e-3 };
const estimated = elementOf("estimated", {
  drop: 1e3,
  filter: { medium: { by: "rating", size: 10e-6, kind: "nominal", area: 0.5, thickness: 6e-4 } },
});
const { filter: known } = elementOf("known", { drop: 1e3 });
const hose: SystemPart = { part: "line", name: "hose", length: 1, bore: 0.02, roughness: 1e-6 };
const [lift] = plainSystem.suction as [SystemPart];
const bank = (...branches: SystemPart[][]): SystemPart => ({ part: "bank", name: "bank", branches });

test("isSpread(built) is of a system with an estimated medium or a strainer anywhere", () => {
  const spread = (more: Partial<System>) => isSpread(build({ ...plainSystem, suction: [lift], ...more }));
  const onTank = (path: readonly SystemPart[]) => ({ tanks: plainSystem.tanks.map((tank) => ({ ...tank, path })) });
  for (const part of [estimated.filter, screen]) {
    expect(spread({ suction: [part] })).toBe(true);
    expect(spread({ suction: [lift, bank([known], [hose, part])] })).toBe(true);
    expect(spread({ delivery: [part] })).toBe(true);
    expect(spread(onTank([part]))).toBe(true);
  }
  expect(spread({ suction: [lift, known], delivery: [bank([known], [hose])], ...onTank([lift]) })).toBe(false);
});

test("circuitOf(stack, filter) is of that filter alone", () => {
  const system = { ...plainSystem, delivery: [known] };
  expect(circuitOf(stackOf(system, "suction"), known)).toMatchObject({
    suction: { kind: "series", items: [{ name: "known" }] },
    delivery: null,
  });
});

describe("SupplyGate of a machine in round figures", () => {
  const gateOf = (elements: readonly CatalogueElement[], more: Partial<System> = {}, counts = 2) =>
    SupplyGate.of(stackOf({ ...plainSystem, ...more }, "suction"), null, { temperatures: [WARM], elements, counts });

  test("adds up drops at each condition's flow: all of it through one, half through each of two", () => {
    const gate = gateOf([elementOf("a", { drop: 4e3 }), elementOf("b", { drop: 1e3 })]);
    expect(gate.conditions.map(({ flow }) => Math.round(flow / litresAnHour))).toEqual([200, 240, 240]);
    expect([...gate.none]).toEqual([0, 0, 0]);
    const near = (...drops: number[]) => drops.map((drop) => expect.closeTo(drop, 6));
    const one = gate.with(gate.none, 0, 1);
    expect([...one]).toEqual(near(4e3, 4.8e3, 4.8e3));
    expect([...gate.with(gate.none, 0, 2)]).toEqual(near(2e3, 2.4e3, 2.4e3));
    expect([...gate.with(one, 1, 1)]).toEqual(near(5e3, 6e3, 6e3));
    expect([...one]).toEqual(near(4e3, 4.8e3, 4.8e3));
  });

  test("finds broken what a drop goes over, each limit at its own flow, and calls a hundredth of a Pa too close", () => {
    const judged = (clean: number, other: number) => {
      const { broken, close } = gateOf([]).judge(Float64Array.of(clean, other, other));
      return [...broken, ...(close ? ["close"] : [])];
    };
    expect(judged(0, 0)).toEqual([]);
    expect(judged(15e3 - HEAD - 0.02, 0)).toEqual([]);
    expect(judged(15e3 - HEAD + 0.02, 0)).toEqual(["vacuum clean"]);
    expect(judged(15e3 - HEAD, 0)).toEqual(["close"]);
    expect(judged(0, 30e3 - HEAD + 0.02)).toEqual(["vacuum at change"]);
    expect(judged(16e3, 30e3 - HEAD)).toEqual(["vacuum clean", "close"]);
    expect(judged(16e3, 80e3)).toEqual(["vacuum clean", "vacuum at change", "feed pressure"]);
  });

  test("judges at both ends where an element or the machine is known only between two, else once", () => {
    const ends = (gate: SupplyGate) => [...new Set(gate.conditions.map(({ end }) => end))];
    const sure = elementOf("sure", { drop: 1e3 });
    expect(ends(gateOf([sure]))).toEqual(["middle"]);
    expect(ends(gateOf([sure, estimated]))).toEqual(["low", "high"]);
    expect(ends(gateOf([sure], { suction: [lift, screen] }))).toEqual(["low", "high"]);
    expect(ends(gateOf([], { suction: [lift] }))).toEqual(["middle"]);
    const gate = gateOf([estimated]);
    const drops = gate.with(gate.none, 0, 1);
    expect(gate.conditions.map(({ end }) => end)).toEqual(["low", "low", "low", "high", "high", "high"]);
    expect(drops[3] ?? 0).toBeGreaterThan(1.5 * (drops[0] ?? Infinity));
  });
});

describe("SlipGate of a machine in round figures", () => {
  const swept = 400 * litresAnHour;
  const slip = { flow: swept / 10, rise: 80e3, dynamicViscosity: viscosity };
  const pump: System["pump"] = { kind: "fixed", flow: swept, relief: 120e3, reliefTo: "tank", slip };
  const gateOf = (elements: readonly CatalogueElement[], more: Partial<System> = {}) =>
    SlipGate.of(stackOf({ ...plainSystem, pump, ...more }, "suction"), null, { temperatures: [WARM], elements });
  const moved = (rise: number) => swept - (swept / 10 / 80e3) * rise;
  /** Element whose drop at 200 L/h is `linear` and `square`, Pa. */
  const bent = (linear: number, square: number) => {
    const flow = 200 * litresAnHour;
    const points = [1, 2].map((times) => ({ drop: linear * times + square * times ** 2, flow: flow * times }));
    return elementOf("bent", {
      drop: 1,
      filter: { medium: { by: "flow test", points, dynamicViscosity: viscosity, density: 830 } },
    });
  };

  test("has for each element what grows with the flow and with its square, shared by those side by side", () => {
    const gate = gateOf([bent(3e3, 1e3), bent(1e3, 0)]);
    const flow = 200 * litresAnHour;
    const near = (linear: number, square: number) => [
      expect.closeTo(linear / flow, -2),
      expect.closeTo(square / flow ** 2, -6),
    ];
    expect([...gate.none]).toEqual([0, 0]);
    expect([...gate.with(gate.none, 0, 1)]).toEqual(near(3e3, 1e3));
    expect([...gate.with(gate.none, 0, 2)]).toEqual(near(1.5e3, 250));
    expect([...gate.with(gate.with(gate.none, 0, 2), 1, 1)]).toEqual(near(2.5e3, 250));
    expect([...gate.none]).toEqual([0, 0]);
  });

  test("judges the clean limit at what is moved, the other with a fifth more, and tells what is too close", () => {
    const judged = (linear: number, square = 0) => {
      const { broken, close } = gateOf([]).judge(Float64Array.of(linear, square));
      return [...broken, ...(close ? ["close"] : [])];
    };
    const clean = (15e3 - HEAD) / moved(120e3 + 15e3);
    expect(judged(clean * (1 - 1e-5))).toEqual([]);
    expect(judged(clean * (1 + 1e-5))).toEqual(["vacuum clean"]);
    expect(judged(clean)).toEqual(["close"]);
    expect(judged(0, clean / moved(120e3 + 15e3))).toEqual(["close"]);
    // 1.2 a Q is the room, at a Q less of rise than that.
    const room = (30e3 - HEAD) / 1.2;
    const change = room / moved(120e3 + HEAD + room);
    expect(judged(change * (1 - 1e-5))).toEqual(["vacuum clean"]);
    expect(judged(change * (1 + 1e-5))).toEqual(["vacuum clean", "vacuum at change"]);
  });

  test("judges both ends where an element is known only between two, and ranks by the likely figure", () => {
    const gate = gateOf([estimated, elementOf("sure", { drop: 1e3 })]);
    expect(gate.none).toHaveLength(6);
    expect(gateOf([estimated], { suction: [lift] }).none).toHaveLength(6);
    expect(gateOf([], { suction: [lift, screen] }).none).toHaveLength(6);
    const [middle = 0, , low = 0, , high = 0] = gate.with(gate.none, 0, 1);
    expect(low).toBeLessThan(middle);
    expect(high).toBeGreaterThan(middle);
    const at = (end: number) => {
      const flow = moved(120e3 + HEAD) / (1 + (swept / 10 / 80e3) * end);
      return HEAD + end * flow;
    };
    expect(gate.vacuum(gate.with(gate.none, 0, 1))).toBeCloseTo(at(middle), 2);
    const limits = (most: number) => ({ vacuumClean: most, vacuumAtChange: 80e3 });
    const broken = (most: number) => {
      const own = gateOf([estimated], { limits: limits(most) });
      return own.judge(own.with(own.none, 0, 1)).broken.has("vacuum clean");
    };
    expect([broken(at(high) - 5), broken(at(high) + 5)]).toEqual([true, false]);
  });
});

describe("firstLimit(system, temperatures)", () => {
  const of = (drop: number, more: Partial<System> = {}, temperatures = [WARM]) =>
    firstLimit({ ...plainSystem, suction: [lift, elementOf("own", { drop }).filter], ...more }, temperatures);
  const open = { limits: { vacuumClean: 30e3, vacuumAtChange: 30e3 } };

  test("is none where all hold with a fifth in hand, the clean limit with none", () => {
    expect([of(15e3 - HEAD - 1), of(15e3 - HEAD + 1)]).toEqual([null, "vacuum clean"]);
    const fifth = (30e3 - HEAD) / 1.2;
    expect([of(fifth - 1, open), of(fifth + 1, open)]).toEqual([null, "vacuum at change"]);
  });

  test("is the pump's capacity, the feed pressure or the vapour where those do not hold", () => {
    const pump = (flow: number): Partial<System> => ({
      pump: { ...plainSystem.pump, flow: flow * litresAnHour } as never,
    });
    expect([of(1e3, pump(239)), of(1e3, pump(241))]).toEqual(["pump capacity", null]);
    const feed = (feedPressure: number) => ({ limits: { ...plainSystem.limits, feedPressure } });
    expect([of(1e3, feed(80e3 - HEAD - 1.2e3 + 1)), of(1e3, feed(80e3 - HEAD - 1.2e3 - 1))]).toEqual([
      "feed pressure",
      null,
    ]);
    const none = {
      pump: { kind: "fixed", flow: 1e-3, relief: 1e6, reliefTo: "inlet" },
      limits: { vacuumClean: 2e5, vacuumAtChange: 2e5 },
    } as const;
    const left = (101325 - HEAD - fuelState(build(plainSystem).fuel, { temperature: WARM }).vapourPressure) / 1.2;
    expect([of(left - 1, none), of(left + 1, none)]).toEqual([null, "vapour"]);
  });

  test("is the first in one order of all that do not hold at any temperature", () => {
    expect(LIMIT_ORDER).toEqual(["pump capacity", "vacuum clean", "vacuum at change", "feed pressure", "vapour"]);
    expect(of(28e3)).toBe("vacuum clean");
    expect(of(28e3, { pump: { ...plainSystem.pump, flow: 210 * litresAnHour } as never })).toBe("pump capacity");
    expect(of(6e3, {}, [WARM, 263.15])).toBe("vacuum clean");
    expect(of(6e3, {}, [263.15, WARM])).toBe("vacuum clean");
    expect(of(6e3)).toBeNull();
  });

  test("is judged at both ends of what is known only between two", () => {
    const { suction } = arranged(stackOf(plainSystem, "suction"), {
      stages: [{ element: estimated, count: 1 }],
      bore: null,
    });
    const gate = SupplyGate.of(stackOf(plainSystem, "suction"), null, {
      temperatures: [WARM],
      elements: [estimated],
      counts: 1,
    });
    const clean = gate.with(gate.none, 0, 1)[3] ?? Number.NaN;
    const at = (vacuumClean: number) =>
      firstLimit({ ...plainSystem, suction, limits: { vacuumClean, vacuumAtChange: 90e3 } }, [WARM]);
    expect([at(HEAD + clean + 1), at(HEAD + clean - 1)]).toEqual([null, "vacuum clean"]);
  });
});

describe("elementFacts", () => {
  test("mostFlows(stack, bore, temperatures) is the most over them: the demand, or what a pump moves that relieves to the tank", () => {
    const demand = { power: 100e3, specificConsumption: 200 / 3.6e9, return: 0 };
    const of = (more: Partial<System>, side: "suction" | "delivery" = "suction", temperatures = [WARM]) =>
      mostFlows(stackOf({ ...plainSystem, delivery: [known], ...more }, side), null, temperatures) / litresAnHour;
    const toTank: System["pump"] = { kind: "fixed", flow: 400 * litresAnHour, relief: 80e3, reliefTo: "tank" };
    expect(of({})).toBeCloseTo(200, 9);
    expect(of({ pump: toTank })).toBeCloseTo(400, 9);
    expect(of({ pump: toTank }, "delivery")).toBeCloseTo(200, 9);
    // The burn is a mass, and warm fuel is lighter.
    expect(of({ demand }, "suction", [263.15, 300])).toBe(of({ demand }, "suction", [300]));
    expect(of({ demand }, "delivery", [263.15, 300])).toBeGreaterThan(of({ demand }, "delivery", [263.15]));
  });

  test("lasts(system, interval) is of one that meets no limit before it, and of none whose life is not known", () => {
    const suction = [lift, elementOf("own", { drop: 10e3 }).filter];
    // 11.86 kPa are left: 593 g, 296 h and a few grains more.
    const last = (hours: number, more: object = {}) => lasts({ ...plainSystem, suction, ...more }, hours * 3600);
    expect([last(290), last(310)]).toEqual([true, false]);
    expect(last(290, { duty: undefined })).toBe(false);
  });
});

describe("Bench of a machine in round figures", () => {
  const given = (elements: readonly CatalogueElement[], more: Partial<System> = {}): SearchGiven => ({
    stack: stackOf({ ...plainSystem, ...more }, "suction"),
    elements,
    parallel: 2,
    stages: 2,
    bores: [null],
    temperatures: [WARM],
    code: null,
    rating: null,
    interval: 3600,
  });
  const faultOf = (elements: readonly CatalogueElement[], counts: readonly number[], more: Partial<System> = {}) => {
    const bench = new Bench(given(elements, more), null);
    const tally = new Tally();
    const node = counts.reduce((before, count, element) => bench.with(before, element, count), bench.start);
    const fault = bench.fault(node, tally);
    return { fault, bySums: tally.bySums, byModel: tally.byModel, vacuum: bench.vacuum(node), drop: bench.drop(node) };
  };

  test("judges by sums, and by the whole model where a sum comes too close", () => {
    expect(faultOf([elementOf("a", { drop: 6e3 })], [1])).toMatchObject({ fault: null, bySums: 1, byModel: 0 });
    expect(faultOf([elementOf("a", { drop: 15e3 - HEAD })], [1])).toMatchObject({ bySums: 0, byModel: 1 });
    expect(faultOf([elementOf("a", { drop: 15e3 - HEAD - 0.005 })], [1])).toMatchObject({ fault: null, byModel: 1 });
    expect(faultOf([elementOf("a", { drop: 15e3 - HEAD + 0.005 })], [1])).toMatchObject({
      fault: "vacuum clean",
      byModel: 1,
    });
  });

  test("refuses what carries more than its maker allows before all else", () => {
    const limited = (mostFlow: number, drop = 1e3) => elementOf("a", { drop, mostFlow: mostFlow * litresAnHour });
    expect(faultOf([limited(199)], [1])).toMatchObject({ fault: "most flow", bySums: 0, byModel: 0 });
    expect(faultOf([limited(201)], [1]).fault).toBeNull();
    expect(faultOf([limited(99, 60e3)], [2]).fault).toBe("most flow");
    expect(faultOf([limited(101)], [2]).fault).toBeNull();
    // Only the last stage is asked: those before it were asked when they came.
    expect(faultOf([limited(50), elementOf("b", { drop: 1e3 })], [1, 1]).fault).toBeNull();
  });

  test("has drop and vacuum of its stages", () => {
    const { vacuum, drop } = faultOf([elementOf("a", { drop: 2e3 }), elementOf("b", { drop: 1e3 })], [2, 1]);
    expect(vacuum).toBeCloseTo(HEAD + 2e3, 3);
    expect(drop).toBeCloseTo(2e3 + 2 * 2.4e3, 3);
  });
});
