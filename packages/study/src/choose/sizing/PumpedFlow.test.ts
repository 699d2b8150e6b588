import { fuelState } from "@thirstline/core";
import { build, type System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { litresAnHour, plainSystem, viscosity, WARM } from "../../../../../tests/support/plainSystem.js";
import { PumpedFlow } from "./PumpedFlow.js";
import { stackOf } from "./stack.js";

const HEAD = 830 * 9.80665;
const VAPOUR = fuelState(build(plainSystem).fuel, { temperature: WARM }).vapourPressure;
const swept = 400 * litresAnHour;
const demand = 200 * litresAnHour;
/** m3/s that slip back for each Pa of rise. */
const slip = swept / 10 / 80e3;
const pump: System["pump"] = {
  kind: "fixed",
  flow: swept,
  relief: 120e3,
  reliefTo: "tank",
  slip: { flow: swept / 10, rise: 80e3, dynamicViscosity: viscosity },
};
const of = (more: Partial<System> = {}) =>
  PumpedFlow.of(stackOf({ ...plainSystem, pump, ...more }, "suction"), null, {
    temperature: WARM,
    end: "middle",
    passage: "smooth",
  });

/** What is moved through a drop that grows in step with the flow: swept less slip against relief, metre and that drop. */
const moved = (linear: number) => (swept - slip * (120e3 + HEAD)) / (1 + slip * linear);

describe("PumpedFlow.vacuum(drop) in round figures", () => {
  const vacuumOf = (drop: Parameters<PumpedFlow["vacuum"]>[0]) => of().vacuum(drop);

  test("without a drop is the metre's head", () => {
    expect(vacuumOf({ linear: 0, quadratic: 0 })).toBeCloseTo(HEAD, 4);
  });

  test.each([1e6, 1e8, 3e8])("of a linear drop of %d Pa s/m3 is that at what the pump moves then", (linear) => {
    expect(moved(linear)).toBeGreaterThan(demand);
    expect(vacuumOf({ linear, quadratic: 0 })).toBeCloseTo(HEAD + linear * moved(linear), 3);
  });

  test("of a drop that grows with the square of the flow too is the root of a quadratic", () => {
    const [linear, quadratic] = [1e8, 1e12];
    // swept - slip (relief + metre + a Q + b Q2) = Q
    const [a, b, c] = [slip * quadratic, 1 + slip * linear, slip * (120e3 + HEAD) - swept];
    const root = (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
    expect(vacuumOf({ linear, quadratic })).toBeCloseTo(HEAD + (linear + quadratic * root) * root, 3);
  });

  test("of a drop so high that the pump moves less than the demand is that at the demand", () => {
    expect(vacuumOf({ linear: 1e10, quadratic: 0 })).toBeCloseTo(HEAD + 1e10 * demand, 2);
    expect(moved(1e10)).toBeLessThan(demand);
    expect(vacuumOf({ linear: 1e15, quadratic: 0 })).toBeCloseTo(HEAD + 1e15 * demand, -3);
  });

  test("of a pump whose slip leaves nothing is that at the demand", () => {
    const worn = { ...pump, slip: { flow: swept, rise: 80e3, dynamicViscosity: viscosity } } as System["pump"];
    expect(of({ pump: worn }).vacuum({ linear: 1e8, quadratic: 0 })).toBeCloseTo(HEAD + 1e8 * demand, 3);
  });

  test("of a pump with so much fuel over it that no rise is left is that at its swept flow", () => {
    const tanks = plainSystem.tanks.map((tank) => ({ ...tank, lowDepth: 20, fullDepth: 21 }));
    const low = { ...pump, relief: 20e3 } as System["pump"];
    expect(of({ tanks, pump: low }).vacuum({ linear: 1e8, quadratic: 0 })).toBeCloseTo(-19 * HEAD + 1e8 * swept, 3);
  });
});

describe("PumpedFlow.fits(limit, drop, times)", () => {
  test("keeps to the limits that are stated, and to vapour always", () => {
    expect(of().limits).toEqual(["vacuum clean", "vacuum at change", "vapour"]);
    const fuel = { kind: "petrol", class: "EN 228 A", ethanol: 0 } as const;
    expect(of({ fuel, limits: {} }).limits).toEqual(["vapour"]);
    expect(of({ fuel, limits: { vacuumAtChange: 30e3 } }).limits).toEqual(["vacuum at change", "vapour"]);
  });

  /** The linear drop that takes all of a room at so many times what is moved through it. */
  const spending = (room: number, times: number) => {
    // times a Q = room, with Q as moved against a: a = room / (times (S - slip room / times)), S without a drop
    const bare = swept - slip * (120e3 + HEAD);
    return room / times / (bare - (slip * room) / times);
  };

  test.each([
    ["vacuum clean", 15e3 - HEAD, 1],
    ["vacuum clean", 15e3 - HEAD, 1.2],
    ["vacuum at change", 30e3 - HEAD, 1],
    ["vacuum at change", 30e3 - HEAD, 1.2],
    ["vapour", 101325 - HEAD - VAPOUR, 1],
    ["vapour", 101325 - HEAD - VAPOUR, 1.2],
  ] as const)(
    "to %s: a drop fits until it takes the %d Pa that are left, at %d times the flow",
    (limit, room, times) => {
      const flow = of();
      const linear = spending(room, times);
      expect(moved(linear)).toBeGreaterThan(demand);
      const fits = (share: number) => flow.fits(limit, { linear: share * linear, quadratic: 0 }, times);
      expect([0, 0.5, 1 - 1e-5, 1 + 1e-5, 2, 1e3].map(fits)).toEqual(["yes", "yes", "yes", "no", "no", "no"]);
      expect(fits(1)).toBe("too close");
    },
  );

  test("asks at the demand where the pump moves less", () => {
    const flow = of({ demand: { burn: 350 * litresAnHour, return: 0 } });
    const linear = (30e3 - HEAD) / (350 * litresAnHour);
    const fits = (share: number) => flow.fits("vacuum at change", { linear: share * linear, quadratic: 0 }, 1);
    expect(moved(linear)).toBeLessThan(350 * litresAnHour);
    expect([1 - 1e-5, 1, 1 + 1e-5].map(fits)).toEqual(["yes", "too close", "no"]);
  });

  test("asks at the demand of a pump that moves nothing against such a drop", () => {
    const fits = (linear: number) => of().fits("vacuum at change", { linear, quadratic: 0 }, 1);
    expect([1e12, 1e15].map(fits)).toEqual(["no", "no"]);
    const worn = { ...pump, slip: { flow: swept, rise: 80e3, dynamicViscosity: viscosity } } as System["pump"];
    const left = (30e3 - HEAD) / demand;
    const of1 = (share: number) =>
      of({ pump: worn }).fits("vacuum at change", { linear: share * left, quadratic: 0 }, 1);
    expect([1 - 1e-5, 1, 1 + 1e-5].map(of1)).toEqual(["yes", "too close", "no"]);
  });

  test("asks at the swept flow where no rise is left", () => {
    const tanks = plainSystem.tanks.map((tank) => ({ ...tank, lowDepth: 20, fullDepth: 21 }));
    const low = { ...pump, relief: 20e3 } as System["pump"];
    const room = 30e3 + 19 * HEAD;
    const fits = (share: number) =>
      of({ tanks, pump: low, limits: { vacuumClean: 30e3, vacuumAtChange: 30e3 } }).fits(
        "vacuum clean",
        { linear: (share * room) / 4 / swept, quadratic: 0 },
        4,
      );
    expect([1 - 1e-5, 1, 1 + 1e-5].map(fits)).toEqual(["yes", "too close", "no"]);
  });
});
