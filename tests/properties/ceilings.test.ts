import {
  type Ceiling,
  ceilings,
  type FuelState,
  type Limits,
  marginsOf,
  type Passage,
  type Supply,
  SupplyModel,
  solve,
  tank,
} from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { uniform } from "../support/random.js";
import {
  aDemand,
  anAmbientPressure,
  anEngineFuel,
  aPath,
  aPulsePump,
  aSingleTank,
  aSupply,
  someLimits,
} from "../support/supplies.js";
import { apart } from "./pressures.js";
import { runs } from "./runs.js";
import { expectNoneRose, fedBackward, HAIR } from "./supplyLaws.js";

/** What a pump moves less, m3/s, for so much more pressure, Pa, against it. */
function flowOf({ pump }: Supply, fuel: FuelState, pressure: number): number {
  if (pump.kind === "pulse") return (pump.flow * pressure) / pump.suction;
  if (pump.kind !== "fixed" || !pump.slip) return 0;
  const thinner = pump.slip.dynamicViscosity / (fuel.density * fuel.kinematicViscosity);
  return (pump.slip.flow / pump.slip.rise) * thinner * pressure;
}

/** Margins of both passages, by limit. */
function marginsBoth(supply: Supply, fuel: FuelState, limits: Limits) {
  return (["smooth", "early"] as const).map((passage: Passage) =>
    marginsOf(new SupplyModel(supply, { fuel, passage, end: "middle" }), limits),
  );
}

test("ceilings(supply, fuel, limits, demand) are flows at which the limit just holds, with either passage", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, someLimits, aDemand, (supply, fuel, limits, demand) => {
      const backward = fedBackward(supply, fuel);
      const both = marginsBoth(supply, fuel, limits);
      for (const { limit, flow } of ceilings(supply, fuel, limits, demand, "middle")) {
        if (limit === "vapour" && backward) continue;
        const at = (share: number) =>
          Math.min(...both.map((margins) => margins.get(limit)?.(share * flow) ?? Number.NaN));
        // A margin counts as met to a rounding of the pressures, or flows, it is the difference of.
        const pressureHair = 10 * HAIR * (supply.ambientPressure + 1e5);
        const hair =
          limit === "pump capacity" ? HAIR * (flow + demand) + flowOf(supply, fuel, pressureHair) : pressureHair;
        if (flow === Infinity) expect(both.every((margins) => (margins.get(limit)?.(1) ?? 0) >= 0)).toBe(true);
        else if (flow === 0)
          expect(Math.min(...both.map((margins) => margins.get(limit)?.(1e-15) ?? 0))).toBeLessThan(hair);
        else {
          expect(at(1), limit).toBeGreaterThanOrEqual(-hair);
          expect(at(1 + 1e-6), limit).toBeLessThan(hair);
        }
      }
    }),
    runs(400),
  );
});

test("ceilings(supply, fuel, limits, demand) do not depend on the demand they are asked at, nor its order of size", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, someLimits, aDemand, aDemand, (supply, fuel, limits, one, other) => {
      fc.pre(!fedBackward(supply, fuel));
      const first = ceilings(supply, fuel, limits, one, "middle");
      const second = ceilings(supply, fuel, limits, other, "middle");
      first.forEach(({ limit, flow }, at) => {
        expect(second[at]?.limit).toBe(limit);
        if (flow > 1e-15) expect(apart(second[at]?.flow ?? Number.NaN, flow), limit).toBeLessThanOrEqual(1e-6);
      });
    }),
    runs(200),
  );
});

test("ceilings(supply, …) of vapour never rise with less air pressure", () => {
  fc.assert(
    fc.property(aSupply, anAmbientPressure, anEngineFuel, aDemand, (supply, air, fuel, demand) => {
      fc.pre(!fedBackward(supply, fuel));
      // Relief to the tank of a slipping pump: its flow is set by gauge pressures, so it does not move with the air's.
      const [low, high] = [air, supply.ambientPressure]
        .sort((a, b) => a - b)
        .map((ambientPressure) =>
          ceilings({ ...supply, ambientPressure }, fuel, {}, demand, "middle").filter(
            ({ limit }) => limit === "vapour",
          ),
        ) as [Ceiling[], Ceiling[]];
      expectNoneRose(high, low, []);
    }),
    runs(200),
  );
});

test("ceilings(supply of one tank, …) never rise when its vent opens harder", () => {
  fc.assert(
    fc.property(
      aSupply,
      aSingleTank,
      anEngineFuel,
      someLimits,
      aDemand,
      uniform(0, 5e3),
      (supply, one, fuel, limits, demand, held) => {
        const withVent = (vent: typeof one.vent) =>
          ceilings({ ...supply, tanks: [tank({ ...one, vent })] }, fuel, limits, demand, "middle");
        const { pump } = supply;
        const slipsToTank = pump.kind === "fixed" && pump.reliefTo === "tank" && pump.slip !== null;
        const open = withVent({ kind: "open" });
        const spring = withVent({ kind: "spring", opening: held });
        expectNoneRose(open, spring, slipsToTank ? ["vapour"] : []);
        for (const { limit, flow } of withVent({ kind: "blocked" }))
          if (limit !== "pump capacity") expect(flow).toBe(0);
      },
    ),
    runs(200),
  );
});

test("ceilings(gravity supply, …) of feed pressure is the flow the head drives through the path", () => {
  fc.assert(
    fc.property(aPath, anEngineFuel, uniform(0.1, 3), aDemand, (path, fuel, depth, demand) => {
      const supply: Supply = {
        ambientPressure: 101325,
        tanks: [tank({ depth })],
        suction: path,
        pump: { kind: "none" },
        delivery: null,
      };
      const feed = ceilings(supply, fuel, {}, demand, "middle").find(({ limit }) => limit === "feed pressure");
      const head = fuel.density * 9.80665 * depth;
      // The gauge's zero is a difference of absolute pressures, so the head that drives is known to a rounding of those.
      const drive = head + HAIR * (supply.ambientPressure + head);
      const flows = (["smooth", "early"] as const).map((passage) => solve(path, fuel, { passage }).flow(drive));
      // Moving fuel keeps some of the head as velocity, so the gauge is at 0 a little below the flow friction allows.
      expect(feed?.flow).toBeLessThanOrEqual(Math.max(0, Math.min(...flows)) * (1 + 1e-9));
      const { feedPressure } = new SupplyModel(supply, { fuel, passage: "smooth", end: "middle" }).state(
        feed?.flow ?? 0,
      );
      if ((feed?.flow ?? 0) > 0) expect(feedPressure).toBeGreaterThanOrEqual(-1e-6);
    }),
    runs(200),
  );
});

test("ceilings(supply with a pulse pump, …) of capacity is where demand meets what the vacuum leaves of its flow", () => {
  fc.assert(
    fc.property(aSupply, aPulsePump, anEngineFuel, aDemand, (supply, pump, fuel, demand) => {
      fc.pre(pump.kind === "pulse");
      const pulsed = { ...supply, pump };
      const flow =
        ceilings(pulsed, fuel, {}, demand, "middle").find(({ limit }) => limit === "pump capacity")?.flow ?? 0;
      fc.pre(flow > 0);
      const models = (["smooth", "early"] as const).map(
        (passage) => new SupplyModel(pulsed, { fuel, passage, end: "middle" }),
      );
      const left = (at: number) =>
        pump.flow * (1 - Math.max(0, ...models.map((model) => model.vacuum(at))) / pump.suction);
      expect(left(flow) - flow).toBeGreaterThanOrEqual(-1e-9 * pump.flow);
      expect(left(flow * (1 + 1e-6)) - flow * (1 + 1e-6)).toBeLessThan(1e-9 * pump.flow);
    }),
    runs(200),
  );
});
