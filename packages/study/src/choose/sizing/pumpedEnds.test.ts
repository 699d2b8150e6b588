import { type FixedPump, SupplyModel } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { elementOf, litresAnHour, plainSystem, viscosity, WARM } from "../../../../../tests/support/plainSystem.js";
import { factsOf, type LifeFacts } from "../../life/factsOf.js";
import { leastPumped, mostPumped } from "./pumpedEnds.js";

const swept = 400 * litresAnHour;
/** It loses a tenth of what it sweeps against 80 kPa. */
const pump: System["pump"] = {
  kind: "fixed",
  flow: swept,
  relief: 120e3,
  reliefTo: "tank",
  slip: { flow: 40 * litresAnHour, rise: 80e3, dynamicViscosity: viscosity },
};
const HEAD = 830 * 9.80665;
const hose = { part: "line", name: "hose", length: 1, bore: 0.02, roughness: 1e-6 } as const;
const slipOf = (rise: number) => ((40 * litresAnHour) / 80e3) * rise;

/** What a life is followed by, with a pump that slips; `depth` of fuel over the pick-up, m, against the metre of rise. */
function givenOf(more: Partial<System> = {}, depth = 0) {
  const delivery = [elementOf("behind", { drop: 1e3 }).filter];
  const tanks = plainSystem.tanks.map((tank) => ({ ...tank, lowDepth: depth, fullDepth: depth + 1 }));
  return (factsOf({ ...plainSystem, delivery, pump, tanks, ...more }) as LifeFacts).given;
}
const flowOf = (given: ReturnType<typeof givenOf>, demand = 0) =>
  new SupplyModel(given.supply, {
    fuel: given.points[0]?.fuel as SupplyModel["fuel"],
    passage: "smooth",
    end: "middle",
  }).suctionFlow(demand);

test("mostPumped(given) has the pump draw against the metre alone, however much its elements cost", () => {
  for (const drop of [1e3, 20e3]) {
    const given = givenOf({ suction: [...plainSystem.suction.slice(0, 1), elementOf("own", { drop }).filter] });
    const most = swept - slipOf(120e3 + HEAD);
    expect(flowOf(mostPumped(given)) / most).toBeCloseTo(1, 6);
    expect(flowOf(given)).toBeLessThan(most);
    expect(mostPumped(given)).toMatchObject({ elements: given.elements, horizon: given.horizon });
  }
});

test("mostPumped(given) lets nothing but elements be: a line keeps its drop", () => {
  const suction = [...plainSystem.suction, { ...hose, bore: 0.004 }];
  const alone = givenOf({ suction: [...plainSystem.suction.slice(0, 1), { ...hose, bore: 0.004 }] });
  expect(flowOf(mostPumped(givenOf({ suction }))) / flowOf(alone)).toBeCloseTo(1, 6);
  const only = givenOf({ suction: plainSystem.suction.slice(1) });
  expect(flowOf(mostPumped(only)) / (swept - slipOf(120e3))).toBeCloseTo(1, 6);
});

test("leastPumped(given) has it draw against the vacuum limit at change besides what the metre costs", () => {
  const least = leastPumped(givenOf());
  expect((least.supply.pump as FixedPump).relief).toBeCloseTo(120e3 + 30e3, 6);
  expect(flowOf(least) / (swept - slipOf(150e3 + HEAD))).toBeCloseTo(1, 6);
});

test("leastPumped(given) does not count fuel that stands over the pump as help", () => {
  const flooded = leastPumped(givenOf({}, 3));
  // Three metres of fuel less the one it climbs.
  expect((flooded.supply.pump as FixedPump).relief).toBeCloseTo(150e3 + 2 * HEAD, 4);
  expect(flowOf(flooded) / (swept - slipOf(150e3))).toBeCloseTo(1, 6);
});

test("leastPumped(given) is never more than the pump moves before that limit is broken", () => {
  const drops = [1e3, 5e3, 10e3].map((drop) =>
    givenOf({ suction: [...plainSystem.suction.slice(0, 1), elementOf("own", { drop }).filter] }),
  );
  for (const given of drops) {
    const least = leastPumped(given);
    expect(flowOf(least)).toBeLessThan(flowOf(given));
    expect(flowOf(mostPumped(given))).toBeGreaterThan(flowOf(given));
    expect(least.supply.delivery).toBe(given.supply.delivery);
  }
});

test("leastPumped(given) moves the demand alone where no limit is stated, or a season is too cold to be judged", () => {
  const demand = 100 * litresAnHour;
  const { vacuumAtChange: _, ...open } = givenOf().limits;
  const unlimited = leastPumped({ ...givenOf(), limits: open });
  expect((unlimited.supply.pump as FixedPump).relief).toBeGreaterThan(1e14);
  expect(flowOf(unlimited, demand)).toBe(demand);
  const seasons = [
    { name: "warm", share: 0.5, temperature: WARM },
    { name: "waxed", share: 0.5, temperature: 243.15 },
  ];
  const duty = { hoursADay: 4, daysAYear: 250, seasons };
  expect(flowOf(leastPumped(givenOf({ duty })), demand)).toBe(demand);
  const mild = { ...duty, seasons: seasons.map((one) => ({ ...one, temperature: WARM })) };
  expect(flowOf(leastPumped(givenOf({ duty: mild })), demand)).toBeGreaterThan(demand);
});
