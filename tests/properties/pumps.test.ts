import type { SupplyModel } from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aPassage } from "../support/arbitraries.js";
import { uniform } from "../support/random.js";
import { aFixedPump, anEngineFuel, aSupply } from "../support/supplies.js";
import { runs } from "./runs.js";
import { HAIR, modelOf } from "./supplyLaws.js";

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
