import { type EndJudgement, type Grade, judge, type Limits, type Supply, SupplyModel, series } from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aFrictionPart } from "../support/arbitraries.js";
import { uniform } from "../support/random.js";
import { aDemand, anEngineFuel, aPump, aSingleTank, aSupply, someLimits } from "../support/supplies.js";
import { runs } from "./runs.js";

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
      for (const end of ["lowEnd", "middle", "highEnd"] as const) {
        expect(RANK[after[end].grade]).toBeLessThanOrEqual(RANK[before[end].grade]);
      }
    }),
    runs(150),
  );
});

// Of one tank and a suction path without banks: inside a bank the vapour limit has the exception above.
test("judge(supply, …) is never worse at the low end of every band than at the high one", () => {
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
        const { grade, lowEnd, middle, highEnd } = judge(supply, fuel, limits, demand);
        expect(RANK[lowEnd.grade]).toBeLessThanOrEqual(RANK[middle.grade]);
        expect(RANK[middle.grade]).toBeLessThanOrEqual(RANK[highEnd.grade]);
        expect(grade).toBe(highEnd.grade === "starves" && lowEnd.grade !== "starves" ? "unsettled" : highEnd.grade);
      },
    ),
    runs(150),
  );
});

test("judge(supply, …) is never better than the worse of both ends, whichever that is; unsettled where one starves", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, someLimits, aDemand, (supply, fuel, limits, demand) => {
      const { grade, lowEnd, highEnd } = judge(supply, fuel, limits, demand);
      const worst = Math.max(RANK[lowEnd.grade], RANK[highEnd.grade]);
      if (lowEnd.grade !== highEnd.grade && worst === RANK.starves) expect(grade).toBe("unsettled");
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
      const { lowEnd, middle, highEnd } = judge(supply, fuel, limits, demand);
      for (const end of [lowEnd, middle, highEnd]) expect(end.grade).toBe(gradeOf(end));
    }),
    runs(100),
  );
});

const RANK: Readonly<Record<Grade | "unsettled", number>> = { holds: 0, tight: 1, unsettled: 2, starves: 3 };

function gradeOf({ broken, ceilings: all, overCleanLimit }: EndJudgement): Grade {
  const others = all.filter(({ limit }) => limit !== "vacuum clean");
  if (broken.length > 0 || others.some(({ inHand }) => inHand < 0)) return "starves";
  return overCleanLimit || others.some(({ inHand }) => inHand < 0.2) ? "tight" : "holds";
}
