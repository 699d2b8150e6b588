import {
  type Ceiling,
  ceilings,
  type EndJudgement,
  type Filter,
  type FuelState,
  filter,
  type Grade,
  judge,
  type LimitName,
  type Limits,
  line,
  marginsOf,
  type Passage,
  parallel,
  rise,
  type Supply,
  SupplyModel,
  series,
  solve,
  tank,
} from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aFilter, aFrictionPart, logUniform, uniform } from "../support/arbitraries.js";
import {
  aDemand,
  anAmbientPressure,
  anEngineFuel,
  aPath,
  aPulsePump,
  aPump,
  aSingleTank,
  aSupply,
  someLimits,
} from "../support/supplies.js";
import { apart } from "./pressures.js";
import { runs } from "./runs.js";

const HAIR = 1e-12;

/** Margins of both passages, by limit. */
function marginsBoth(supply: Supply, fuel: FuelState, limits: Limits) {
  return (["smooth", "early"] as const).map((passage: Passage) =>
    marginsOf(new SupplyModel(supply, { fuel, passage, end: "middle" }), limits),
  );
}

/** Whether fuel runs back into a tank at no demand; then the lowest pressure on its way may rise with demand. */
function fedBackward(supply: Supply, fuel: FuelState): boolean {
  const { intake } = new SupplyModel(supply, { fuel, passage: "smooth", end: "middle" });
  return intake.descent(0).tanks.some(({ flow }) => flow < 0);
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
        const hair = limit === "pump capacity" ? HAIR * (flow + demand) : 10 * HAIR * (supply.ambientPressure + 1e5);
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

// Two exceptions, both of the vapour limit, which looks at places on the way and not at its end. Inside a bank (or on one
// of several tanks' paths) more restriction sends flow another way, and a hump on the branch it leaves is relieved. And a
// pump that slips moves less through a relief to the tank when the inlet is harder to draw from, which relieves a hump
// before the filter. So the law for vapour is one of the suction path itself, with a pump that does not do that.
test("ceilings(supply, …) never rise when a filter on the suction path restricts more", () => {
  fc.assert(
    fc.property(
      aSupply,
      aFilter,
      anEngineFuel,
      someLimits,
      aDemand,
      logUniform(1, 1e3),
      (supply, element, fuel, limits, demand, times) => {
        const before = ceilings(
          { ...supply, suction: series(supply.suction, element) },
          fuel,
          limits,
          demand,
          "middle",
        );
        const plugged = restricted(element, times);
        const after = ceilings({ ...supply, suction: series(supply.suction, plugged) }, fuel, limits, demand, "middle");
        const { pump } = supply;
        const slipsToTank = pump.kind === "fixed" && pump.reliefTo === "tank" && pump.slip !== null;
        expectNoneRose(before, after, slipsToTank || fedBackward(supply, fuel) ? ["vapour"] : []);
      },
    ),
    runs(300),
  );
});

test("ceilings(supply, …), vapour apart, never rise when a filter inside a bank restricts more", () => {
  fc.assert(
    fc.property(
      aSupply,
      aFilter,
      aFrictionPart,
      anEngineFuel,
      someLimits,
      aDemand,
      logUniform(1, 1e3),
      (supply, element, beside, fuel, limits, demand, times) => {
        const ceilingsWith = (one: Filter) =>
          ceilings(
            { ...supply, suction: series(parallel(one, beside), supply.suction) },
            fuel,
            limits,
            demand,
            "middle",
          );
        expectNoneRose(ceilingsWith(element), ceilingsWith(restricted(element, times)), ["vapour"]);
      },
    ),
    runs(300),
  );
});

test("ceilings(supply, …) of vapour may rise when a filter behind a hump in one branch restricts more", () => {
  const fuel = { density: 700, kinematicViscosity: 5e-7, vapourPressure: 60e3, cautions: [] };
  const up = line({ length: 2, bore: 0.003, roughness: 0 });
  const element = (restriction: number) =>
    filter({ media: { area: 0.1, thickness: 5e-4, permeability: 1e-12 }, restriction });
  const ceilingWith = (restriction: number) => {
    const over = series(rise({ height: 4 }), up, rise({ height: -4 }), element(restriction));
    const supply: Supply = {
      ambientPressure: 101325,
      tanks: [tank({ depth: 0 })],
      suction: parallel(over, line({ length: 10, bore: 0.01, roughness: 0 })),
      pump: { kind: "none" },
      delivery: null,
    };
    return ceilings(supply, fuel, {}, 1e-5, "middle").find(({ limit }) => limit === "vapour")?.flow ?? Number.NaN;
  };
  expect(ceilingWith(1e5)).toBeGreaterThan(1.05 * ceilingWith(1));
});

// Nor with fuel running back into a low tank: more resistance on that tank's path keeps more fuel for the engine.
test("ceilings(supply, fuel, limits, demand, low) are never below those of the high end, vapour apart", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, someLimits, aDemand, (supply, fuel, limits, demand) => {
      fc.pre(!fedBackward(supply, fuel));
      const [low, middle, high] = (["low", "middle", "high"] as const).map((end) =>
        ceilings(supply, fuel, limits, demand, end),
      ) as [Ceiling[], Ceiling[], Ceiling[]];
      expectNoneRose(low, middle, ["vapour"]);
      expectNoneRose(middle, high, ["vapour"]);
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

test("judge(supply, …) is never worse under limits that ask for less", () => {
  const two = someLimits.chain((limits) =>
    fc
      .tuple(fc.constant(limits), uniform(0, 20e3), uniform(0, 20e3), fc.nat(7))
      .map(([strict, more, less, dropped]) => {
        const { vacuumClean, vacuumAtChange, feedPressure } = strict;
        const loose: Limits = {
          ...(vacuumClean === undefined || dropped & 1 ? {} : { vacuumClean: vacuumClean + more }),
          ...(vacuumAtChange === undefined || dropped & 2 ? {} : { vacuumAtChange: vacuumAtChange + more }),
          ...(feedPressure === undefined || dropped & 4 ? {} : { feedPressure: Math.max(0, feedPressure - less) }),
        };
        return [strict, loose] as const;
      }),
  );
  fc.assert(
    fc.property(aSupply, anEngineFuel, two, aDemand, (supply, fuel, [strict, loose], demand) => {
      const before = judge(supply, fuel, strict, demand);
      const after = judge(supply, fuel, loose, demand);
      expect(RANK[after.grade]).toBeLessThanOrEqual(RANK[before.grade]);
      for (const end of ["good", "middle", "bad"] as const) {
        expect(RANK[after[end].grade]).toBeLessThanOrEqual(RANK[before[end].grade]);
      }
    }),
    runs(150),
  );
});

// Of one tank and a suction path without banks: inside a bank the vapour limit has the exception above.
test("judge(supply, …) is never worse at the good end of every band than at the bad one", () => {
  const plainPath = fc.array(aFrictionPart, { minLength: 1, maxLength: 6 }).map((parts) => series(...parts));
  fc.assert(
    fc.property(
      aSingleTank,
      plainPath,
      aPump,
      anEngineFuel,
      someLimits,
      aDemand,
      (one, suction, pump, fuel, limits, demand) => {
        fc.pre(!(pump.kind === "fixed" && pump.reliefTo === "tank" && pump.slip !== null));
        const supply: Supply = { ambientPressure: 101325, tanks: [one], suction, pump, delivery: null };
        const { grade, good, middle, bad } = judge(supply, fuel, limits, demand);
        expect(RANK[good.grade]).toBeLessThanOrEqual(RANK[middle.grade]);
        expect(RANK[middle.grade]).toBeLessThanOrEqual(RANK[bad.grade]);
        expect(grade).toBe(bad.grade === "starves" && good.grade !== "starves" ? "unsettled" : bad.grade);
      },
    ),
    runs(150),
  );
});

test("judge(supply, …) is never better than the worse of both ends, whichever that is; unsettled where one starves", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, someLimits, aDemand, (supply, fuel, limits, demand) => {
      const { grade, good, bad } = judge(supply, fuel, limits, demand);
      const worst = Math.max(RANK[good.grade], RANK[bad.grade]);
      if (good.grade !== bad.grade && worst === RANK.starves) expect(grade).toBe("unsettled");
      else expect(RANK[grade]).toBe(worst);
    }),
    runs(100),
  );
});

test("judge(supply, …) calls broken what the gauges at that demand show, with one passage or the other", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, someLimits, aDemand, (supply, fuel, limits, demand) => {
      const broken = new Set(judge(supply, fuel, limits, demand).middle.broken.map(({ limit }) => limit));
      const states = (["smooth", "early"] as const).map((passage) =>
        new SupplyModel(supply, { fuel, passage, end: "middle" }).state(demand),
      );
      const { vacuumAtChange, feedPressure = 0 } = limits;
      const sure = 1e-6 * supply.ambientPressure; // further off than rounding, on whichever side
      if (vacuumAtChange !== undefined) {
        const most = Math.max(...states.map(({ vacuum }) => vacuum)) - vacuumAtChange;
        if (Math.abs(most) > sure) expect(broken.has("vacuum at change")).toBe(most > 0);
      }
      if (states.every((state) => state.feedPressure !== null)) {
        const least = Math.min(...states.map((state) => state.feedPressure ?? 0)) - feedPressure;
        // The pump's own side of it: its rise at that demand is what its flow allows, so either limit may carry the news.
        if (least < -sure) expect(broken.has("feed pressure") || broken.has("pump capacity")).toBe(true);
        if (least > sure) expect(broken.has("feed pressure")).toBe(false);
      }
    }),
    runs(250),
  );
});

test("judge(supply, …) starves where a limit is broken, holds where none is within a fifth, and is tight between", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, someLimits, aDemand, (supply, fuel, limits, demand) => {
      const { good, middle, bad } = judge(supply, fuel, limits, demand);
      for (const end of [good, middle, bad]) expect(end.grade).toBe(gradeOf(end));
    }),
    runs(100),
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
      const flows = (["smooth", "early"] as const).map((passage) => solve(path, fuel, { passage }).flow(head));
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

const RANK: Readonly<Record<Grade | "unsettled", number>> = { holds: 0, tight: 1, unsettled: 2, starves: 3 };

function gradeOf({ broken, ceilings: all, overCleanLimit }: EndJudgement): Grade {
  const others = all.filter(({ limit }) => limit !== "vacuum clean");
  if (broken.length > 0 || others.some(({ inHand }) => inHand < 0)) return "starves";
  return overCleanLimit || others.some(({ inHand }) => inHand < 0.2) ? "tight" : "holds";
}

/** The filter with its medium so many times harder to pass. */
function restricted(element: Filter, times: number): Filter {
  return { ...element, restriction: element.restriction * times };
}

function expectNoneRose(before: readonly Ceiling[], after: readonly Ceiling[], except: readonly LimitName[]): void {
  before.forEach(({ limit, flow }, at) => {
    if (!except.includes(limit)) expect(after[at]?.flow, limit).toBeLessThanOrEqual(flow * (1 + 1e-9));
  });
}
