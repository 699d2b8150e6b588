import { describe, expect, test } from "vitest";
import { series } from "../../circuit/index.js";
import { fuelState } from "../../fuel/index.js";
import { filter } from "../../parts/index.js";
import { type Supply, tank } from "../../supply/index.js";
import type { LifeGiven } from "./LifeKinds.js";
import { WorstMargins } from "./WorstMargins.js";

const AIR = 100e3;
const DEMAND = 5e-5;
const fuel = fuelState({ density: 830, kinematicViscosity: 3e-6, vapourPressure: 0 });
const VISCOSITY = 830 * 3e-6;
/** A filter that costs a drop at the demand, which grows with its restriction alone. */
const element = (name: string, drop: number) =>
  filter({ name, clean: { drop, flow: DEMAND, dynamicViscosity: VISCOSITY } });

const supply: Supply = {
  ambientPressure: AIR,
  tanks: [tank({ depth: 0 })],
  suction: series(element("a", 2000), element("b", 1000)),
  pump: { kind: "fixed", flow: 8e-5, slip: null, relief: 1e5, reliefTo: "inlet" },
  delivery: null,
};

const of = (more: Partial<LifeGiven> = {}) =>
  WorstMargins.of({ supply, points: [{ fuel, demand: DEMAND }], limits: {}, ...more } as LifeGiven);
const at = (a: number, b: number) =>
  new Map([
    ["a", a],
    ["b", b],
  ]);

describe("WorstMargins", () => {
  test("of a vacuum limit is what is left to it, as a share of the air's pressure", () => {
    const { margin, by, point } = of({ limits: { vacuumAtChange: 20e3 } }).at(at(3, 1));
    // 3 times 2 kPa and 1 kPa; bodies without bores take nothing for the fuel's motion.
    expect(margin * AIR).toBeCloseTo(20e3 - 7e3, 6);
    expect({ by, point }).toEqual({ by: { kind: "limit", limit: "vacuum at change" }, point: 0 });
  });

  test("of the pump's capacity is what is left of its flow, as a share of the demand", () => {
    const { margin, by } = of({ limits: { vacuumAtChange: 90e3 } }).at(at(1, 1));
    expect(by).toEqual({ kind: "limit", limit: "pump capacity" });
    expect(margin).toBeCloseTo((8e-5 - DEMAND) / DEMAND, 6);
  });

  test("of terminal drops are each element's own share that is left", () => {
    const terminals = new Map([
      ["a", 10e3],
      ["b", 4e3],
    ]);
    expect(of({ terminals }).at(at(4, 1))).toEqual({
      margin: expect.closeTo(0.2, 9),
      by: { kind: "terminal drop", element: "a" },
      point: 0,
    });
    expect(of({ terminals }).at(at(1, 3.9)).by).toEqual({ kind: "terminal drop", element: "b" });
  });

  test("names the point where least is left", () => {
    const points = [DEMAND / 2, DEMAND, DEMAND / 4].map((demand) => ({ fuel, demand }));
    expect(of({ points, limits: { vacuumAtChange: 20e3 } }).at(at(8, 1)).point).toBe(1);
  });

  test("hold until a limit is passed, and just at it", () => {
    const margins = of({ terminals: new Map([["a", 10e3]]) });
    expect(margins.hold(at(4.999, 1))).toBe(true);
    expect(margins.hold(at(5.001, 1))).toBe(false);
  });

  test("that are broken are asked alone, with those of unbroken points left out", () => {
    const points = [DEMAND / 10, DEMAND].map((demand) => ({ fuel, demand }));
    const terminals = new Map([
      ["a", 10e3],
      ["b", 4e3],
    ]);
    const broken = of({ points, terminals, limits: { vacuumAtChange: 90e3 } }).brokenBy(at(6, 1));
    expect(broken.at(at(4, 4.5))).toMatchObject({ by: { kind: "terminal drop", element: "a" }, point: 1 });
    expect(broken.hold(at(4, 100))).toBe(true);
    expect(broken.hold(at(5.1, 1))).toBe(false);
  });

  test("of which none is broken have nothing to say", () => {
    const none = of({ terminals: new Map([["a", 10e3]]) }).brokenBy(at(1, 1));
    expect(none.at(at(100, 100)).margin).toBe(Infinity);
    expect(none.hold(at(100, 100))).toBe(true);
  });
});
