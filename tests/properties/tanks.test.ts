import { series, solve, tank } from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aPassage } from "../support/arbitraries.js";
import { uniform } from "../support/random.js";
import { aDemand, anEngineFuel, aSingleTank, aSupply, someTanks } from "../support/supplies.js";
import { apart } from "./pressures.js";
import { runs } from "./runs.js";
import { HAIR, modelOf } from "./supplyLaws.js";

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
