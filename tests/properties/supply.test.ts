import { type FuelState, filter, type Limits, marginsOf, type Supply, series, tank } from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aPassage } from "../support/arbitraries.js";
import { logUniform } from "../support/random.js";
import { aDemand, anAmbientPressure, anEngineFuel, aSupply, someLimits } from "../support/supplies.js";
import { apart } from "./pressures.js";
import { runs } from "./runs.js";
import { anEnd, HAIR, modelOf } from "./supplyLaws.js";
import { frozen, numbersIn } from "./values.js";

/** A filter to be restricted by its name. */
function sheet(restriction: number) {
  return filter({ name: "sheet", media: { area: 0.5, thickness: 6e-4, permeability: 2e-13 }, restriction });
}

test("SupplyModel.state(demand) has a vacuum that never falls as demand grows", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, aPassage, anEnd, aDemand, aDemand, (supply, fuel, passage, end, one, other) => {
      const model = modelOf(supply, fuel, passage, end);
      const less = model.state(Math.min(one, other)).vacuum;
      const more = model.state(Math.max(one, other)).vacuum;
      if (more !== less) expect(more - less).toBeGreaterThanOrEqual(-HAIR * (Math.abs(less) + supply.ambientPressure));
    }),
    runs(400),
  );
});

// Where fuel runs back into a low tank, a growing demand slows it down there, and the kinetic part of the pressure with
// it: the lowest static pressure on that path may rise. So the vapour margin is monotone once no tank is fed backward.
test("marginsOf(model, limits) never rise with demand, the vapour margin as long as no tank is fed backward", () => {
  fc.assert(
    fc.property(
      aSupply,
      anEngineFuel,
      aPassage,
      someLimits,
      aDemand,
      aDemand,
      (supply, fuel, passage, limits, one, other) => {
        const model = modelOf(supply, fuel, passage);
        const [less, more] = [Math.min(one, other), Math.max(one, other)];
        const backward = model.descent(less).tanks.some(({ flow }) => flow < 0);
        for (const [limit, margin] of marginsOf(model, limits)) {
          if (limit === "vapour" && backward) continue;
          const [before, after] = [margin(less), margin(more)];
          const scale = limit === "pump capacity" ? more + Math.abs(before) : supply.ambientPressure + Math.abs(before);
          if (after !== before) expect(after - before, limit).toBeLessThanOrEqual(HAIR * scale);
        }
      },
    ),
    runs(400),
  );
});

test("SupplyModel answers every valid supply without NaN", () => {
  fc.assert(
    fc.property(
      aSupply,
      anEngineFuel,
      aPassage,
      anEnd,
      someLimits,
      aDemand,
      (supply, fuel, passage, end, limits, demand) => {
        const blocked = { ...supply, tanks: supply.tanks.map((one) => tank({ ...one, vent: { kind: "blocked" } })) };
        for (const one of [supply, blocked]) {
          const model = modelOf(one, fuel, passage, end);
          const margins = [...marginsOf(model, limits).values()].map((margin) => margin(demand));
          expect(numbersIn([model.state(demand), model.state(0), margins]).filter(Number.isNaN)).toEqual([]);
          expect(numbersIn(model.descent(demand)).filter(Number.isNaN)).toEqual([]);
        }
      },
    ),
    runs(300),
  );
});

test("SupplyModel.descent(demand) ends at the pressures state(demand) states", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, aPassage, aDemand, (supply, fuel, passage, demand) => {
      const model = modelOf(supply, fuel, passage);
      const { vacuum, feedPressure } = model.state(demand);
      const { suction, delivery } = model.descent(demand);
      const scale = supply.ambientPressure + Math.abs(vacuum) + Math.abs(feedPressure ?? 0);
      const inlet = suction.at(-1)?.pressure ?? Number.NaN;
      expect(Math.abs(supply.ambientPressure - vacuum - inlet)).toBeLessThanOrEqual(HAIR * scale);
      if (delivery.length === 0) return;
      const outlet = delivery.at(-1)?.pressure ?? Number.NaN;
      expect(Math.abs((feedPressure ?? 0) + supply.ambientPressure - outlet)).toBeLessThanOrEqual(HAIR * scale);
    }),
    runs(300),
  );
});

test("SupplyModel.intake.lowest(flow) is the lowest point of descent(flow)", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, aPassage, aDemand, (supply, fuel, passage, flow) => {
      const { intake } = modelOf(supply, fuel, passage);
      const described = intake.descent(flow).lowest?.pressure ?? -Infinity;
      expect(apart(intake.lowest(flow), described)).toBeLessThanOrEqual(HAIR);
    }),
    runs(400),
  );
});

test("SupplyModel.vacuum(flow) is the same at any altitude, and the lowest pressure follows the air's", () => {
  fc.assert(
    fc.property(aSupply, anAmbientPressure, anEngineFuel, aPassage, aDemand, (supply, air, fuel, passage, flow) => {
      const here = modelOf(supply, fuel, passage);
      const there = modelOf({ ...supply, ambientPressure: air }, fuel, passage);
      const scale = supply.ambientPressure + Math.abs(here.vacuum(flow)) + Math.abs(here.intake.lowest(flow));
      expect(Math.abs(there.vacuum(flow) - here.vacuum(flow))).toBeLessThanOrEqual(10 * HAIR * scale);
      const shift = there.intake.lowest(flow) - here.intake.lowest(flow);
      expect(Math.abs(shift - (air - supply.ambientPressure))).toBeLessThanOrEqual(10 * HAIR * scale);
    }),
    runs(200),
  );
});

test("SupplyModel.restrict(restrictions) gives the figures of filters restricted when the model was made", () => {
  fc.assert(
    fc.property(
      aSupply,
      anEngineFuel,
      aPassage,
      aDemand,
      logUniform(1, 1e4),
      (supply, fuel, passage, demand, times) => {
        const named = { ...supply, suction: series(supply.suction, sheet(1)) };
        const made = modelOf({ ...supply, suction: series(supply.suction, sheet(times)) }, fuel, passage);
        const model = modelOf(named, fuel, passage);
        const before = model.state(demand);
        model.restrict(new Map([["sheet", times]]));
        expect(model.state(demand)).toEqual(made.state(demand));
        model.restrict(new Map());
        expect(model.state(demand)).toEqual(before);
      },
    ),
    runs(200),
  );
});

test("judging a supply freezes nothing and changes nothing: limits, supply and fuel may be frozen", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, someLimits, aDemand, (supply, fuel, limits, demand) => {
      const read = (one: Supply, of: FuelState, to: Limits) => {
        const model = modelOf(one, of, "smooth");
        return [model.state(demand), [...marginsOf(model, to)].map(([limit, margin]) => [limit, margin(demand)])];
      };
      expect(read(frozen(supply), frozen(fuel), frozen(limits))).toEqual(read(supply, fuel, limits));
    }),
    runs(100),
  );
});
