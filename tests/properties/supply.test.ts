import {
  type BandEnd,
  type FuelState,
  filter,
  type Limits,
  marginsOf,
  type Passage,
  type Supply,
  SupplyModel,
  series,
  solve,
  tank,
} from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aPassage, logUniform, uniform } from "../support/arbitraries.js";
import {
  aDemand,
  aFixedPump,
  anAmbientPressure,
  anEngineFuel,
  aSingleTank,
  aSupply,
  someLimits,
  someTanks,
} from "../support/supplies.js";
import { apart } from "./pressures.js";
import { runs } from "./runs.js";
import { frozen, numbersIn } from "./values.js";

const anEnd = fc.constantFrom<BandEnd>("low", "middle", "high");

/** A filter to be restricted by its name. */
function sheet(restriction: number) {
  return filter({ name: "sheet", media: { area: 0.5, thickness: 6e-4, permeability: 2e-13 }, restriction });
}

/** Pressures come about as sums of heads, drops and the air's own, Pa; a rounding of those is no change. */
const HAIR = 1e-12;

function modelOf(supply: Supply, fuel: FuelState, passage: Passage, end: BandEnd = "middle"): SupplyModel {
  return new SupplyModel(supply, { fuel, passage, end });
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

test("SupplyModel.descent(demand) of several tanks lets them carry the suction flow together, to 1e-12", () => {
  fc.assert(
    fc.property(aSupply, someTanks, anEngineFuel, aPassage, aDemand, (supply, tanks, fuel, passage, demand) => {
      const model = modelOf({ ...supply, tanks }, fuel, passage);
      const { suctionFlow } = model.state(demand);
      const flows = model.descent(demand).tanks.map(({ flow }) => flow);
      const sum = flows.reduce((total, flow) => total + flow, 0);
      expect(Math.abs(sum - suctionFlow)).toBeLessThanOrEqual(1e-12 * Math.max(...flows.map(Math.abs)));
    }),
    runs(400),
  );
});

test("SupplyModel.descent(demand) feeds a tank backward just where the joint's pressure is above its own", () => {
  fc.assert(
    fc.property(aSupply, someTanks, anEngineFuel, aPassage, aDemand, (supply, tanks, fuel, passage, demand) => {
      const { joint, tanks: shares } = modelOf({ ...supply, tanks }, fuel, passage).descent(demand);
      const hair = HAIR * Math.abs(joint) * 10;
      for (const { tank: one, flow, source } of shares) {
        const rest = solve(one.path ?? series(), fuel, { passage }).drop(0);
        // At rest a check valve holds its opening pressure; backward it holds anything.
        if (flow > 0) expect(source - rest).toBeGreaterThanOrEqual(joint - hair);
        else expect(source - rest).toBeLessThanOrEqual(joint + hair);
      }
    }),
    runs(400),
  );
});

test("SupplyModel.descent(demand) takes half from each of two equal tanks", () => {
  fc.assert(
    fc.property(aSupply, someTanks, anEngineFuel, aPassage, aDemand, (supply, [one], fuel, passage, demand) => {
      fc.pre(one !== undefined);
      const model = modelOf({ ...supply, tanks: [one, one] }, fuel, passage);
      const { suctionFlow } = model.state(demand);
      for (const { flow } of model.descent(demand).tanks)
        expect(apart(flow, suctionFlow / 2)).toBeLessThanOrEqual(1e-13);
    }),
    runs(200),
  );
});

test("SupplyModel.state(demand) of one tank has more vacuum the harder its vent opens, and the head it stands for", () => {
  fc.assert(
    fc.property(
      aSupply,
      aSingleTank,
      anEngineFuel,
      aPassage,
      aDemand,
      uniform(0, 5e3),
      (supply, one, fuel, passage, flow, held) => {
        const open = { ...supply, tanks: [tank({ ...one, vent: { kind: "open" } })] };
        const spring = { ...supply, tanks: [tank({ ...one, vent: { kind: "spring", opening: held } })] };
        const more = modelOf(spring, fuel, passage).vacuum(flow) - modelOf(open, fuel, passage).vacuum(flow);
        const scale = supply.ambientPressure + Math.abs(modelOf(open, fuel, passage).vacuum(flow));
        expect(Math.abs(more - held)).toBeLessThanOrEqual(HAIR * scale);
      },
    ),
    runs(200),
  );
});

test("SupplyModel.state(demand) with every vent blocked draws against nothing: vacuum Infinity", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, aPassage, aDemand, (supply, fuel, passage, demand) => {
      const tanks = supply.tanks.map((one) => tank({ ...one, vent: { kind: "blocked" } }));
      const { vacuum, feedPressure } = modelOf({ ...supply, tanks }, fuel, passage).state(demand);
      expect(vacuum).toBe(Infinity);
      expect(feedPressure).toBe(supply.pump.kind === "pulse" ? null : -Infinity);
    }),
    runs(100),
  );
});

// Only among tanks of one head: a low tank takes fuel, so blocking its vent may even help.
test("SupplyModel.state(demand) has no less vacuum when one of several tanks of one head has its vent blocked", () => {
  const alike = someTanks.map((tanks) => tanks.map((one) => tank({ ...one, depth: 1, vent: { kind: "open" } })));
  fc.assert(
    fc.property(aSupply, alike, anEngineFuel, aPassage, aDemand, (supply, tanks, fuel, passage, flow) => {
      const [first, ...others] = tanks;
      fc.pre(first !== undefined);
      const fewer = [tank({ ...first, vent: { kind: "blocked" } }), ...others];
      const all = modelOf({ ...supply, tanks }, fuel, passage).vacuum(flow);
      const less = modelOf({ ...supply, tanks: fewer }, fuel, passage).vacuum(flow);
      expect(less - all).toBeGreaterThanOrEqual(-HAIR * (supply.ambientPressure + Math.abs(all)));
    }),
    runs(200),
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

test("SupplyModel.state(demand) with relief to the tank has one vacuum until demand is more than the pump moves", () => {
  fc.assert(
    fc.property(
      aSupply,
      aFixedPump("tank"),
      anEngineFuel,
      aPassage,
      uniform(0, 1),
      uniform(0, 1),
      (supply, pump, fuel, passage, one, other) => {
        const model = modelOf({ ...supply, pump }, fuel, passage);
        const moved = model.suctionFlow(0);
        expect(model.state(one * moved).vacuum).toBe(model.state(other * moved).vacuum);
        expect(model.suctionFlow(2 * moved + 1e-9)).toBe(2 * moved + 1e-9);
        expect(Math.abs(model.state(one * moved).relief - (1 - one) * moved)).toBeLessThanOrEqual(HAIR * moved);
      },
    ),
    runs(200),
  );
});

test("SupplyModel.state(demand) of a fixed pump whose slip goes to nothing is that of one without slip", () => {
  const either = fc.oneof(aFixedPump("inlet"), aFixedPump("tank"));
  fc.assert(
    fc.property(aSupply, either, anEngineFuel, aPassage, uniform(0, 0.99), (supply, pump, fuel, passage, share) => {
      fc.pre(pump.kind === "fixed");
      const hardly = { flow: 1e-15 * pump.flow, rise: 1e5, dynamicViscosity: fuel.density * fuel.kinematicViscosity };
      const [tight, slipping] = [null, hardly].map((slip) =>
        modelOf({ ...supply, pump: { ...pump, slip } }, fuel, passage).state(share * pump.flow),
      ) as [Numbers, Numbers];
      const scale = Math.abs(tight.vacuum) + Math.abs(tight.feedPressure ?? 0) + supply.ambientPressure;
      // What slips is the rise over 1e5 Pa, in 1e-15 of the flow; the vacuum answers with up to its square.
      const allowed = (HAIR + (1e-14 * scale) / 1e5) * scale;
      expect(Math.abs(slipping.vacuum - tight.vacuum)).toBeLessThanOrEqual(allowed);
      expect(Math.abs((slipping.feedPressure ?? 0) - (tight.feedPressure ?? 0))).toBeLessThanOrEqual(allowed);
    }),
    runs(200),
  );
});

type Numbers = ReturnType<SupplyModel["state"]>;

test("SupplyModel.state(demand) takes the rise at a demand from the pump's curve: at its points, and between them", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, aPassage, uniform(0, 1), (supply, fuel, passage, share) => {
      const { pump } = supply;
      fc.pre(pump.kind === "curve");
      const model = modelOf(supply, fuel, passage);
      const hair = HAIR * (pump.points[0]?.rise ?? 0);
      pump.points.forEach((point, at) => {
        expect(Math.abs((model.state(point.flow).pumpRise ?? Number.NaN) - point.rise)).toBeLessThanOrEqual(hair);
        const next = pump.points[at + 1];
        if (!next) return;
        const between = model.state(point.flow + share * (next.flow - point.flow)).pumpRise ?? Number.NaN;
        expect(Math.abs(between - (point.rise + share * (next.rise - point.rise)))).toBeLessThanOrEqual(hair);
      });
    }),
    runs(300),
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
