import { series, solve, sweep } from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aFlow, aFlowSize, aFuel, aPassage } from "../support/arbitraries.js";
import { aCircuit, aFrictionCircuit, everything } from "../support/circuits.js";
import { logUniform } from "../support/random.js";
import { apart, banksIn, headOf, sumOfDrops, ULP } from "./pressures.js";
import { runs } from "./runs.js";

test("solve(circuit, fuel).drop(-flow) is -drop(flow) where nothing rises and nothing is one-way", () => {
  fc.assert(
    fc.property(aFrictionCircuit, aFuel, aPassage, aFlow, (circuit, fuel, passage, flow) => {
      const { drop } = solve(circuit, fuel, { passage });
      expect(apart(drop(-flow), -drop(flow))).toBeLessThanOrEqual(1e-13);
    }),
    runs(500),
  );
});

test("solve(circuit, fuel).drop(flow) is strictly larger at a larger flow where nothing is one-way", () => {
  fc.assert(
    fc.property(aFrictionCircuit, aFuel, aPassage, aFlow, logUniform(1e-9, 1e6), (circuit, fuel, passage, flow, by) => {
      const { drop } = solve(circuit, fuel, { passage });
      expect(drop(flow + by * Math.abs(flow))).toBeGreaterThan(drop(flow));
    }),
    runs(500),
  );
});

test("solve(circuit, fuel).drop(flow) is never smaller at a larger flow, with rises and check valves too", () => {
  fc.assert(
    fc.property(aCircuit(everything), aFuel, aPassage, aFlow, aFlow, (circuit, fuel, passage, one, other) => {
      const { drop } = solve(circuit, fuel, { passage });
      const less = drop(Math.min(one, other));
      const more = drop(Math.max(one, other));
      // Heads hide small drops: then the two may differ by a rounding of the head.
      if (more !== less)
        expect(more).toBeGreaterThan(less - 4 * ULP * (Math.abs(less) + Math.abs(headOf(circuit, fuel))));
    }),
    runs(500),
  );
});

test("solve(circuit, fuel).profile(flow) lists drops that add up to drop(flow)", () => {
  fc.assert(
    fc.property(aCircuit(everything), aFuel, aPassage, aFlow, (circuit, fuel, passage, flow) => {
      const { drop, profile } = solve(circuit, fuel, { passage });
      const total = drop(flow);
      const entries = profile(flow);
      const { sum, size } = sumOfDrops(entries);
      if (Number.isFinite(total)) expect(Math.abs(sum - total)).toBeLessThanOrEqual(1e-13 * size);
      else expect(sum).toBe(Infinity); // something on the way holds back
    }),
    runs(500),
  );
});

test("solve(series(...items), fuel).drop(flow) does not depend on the order of the items", () => {
  const items = fc.array(aCircuit(everything, 2), { minLength: 2, maxLength: 6 });
  const reordered = items.chain((some) =>
    fc.tuple(fc.constant(some), fc.shuffledSubarray(some, { minLength: some.length })),
  );
  fc.assert(
    fc.property(reordered, aFuel, aPassage, aFlow, ([some, shuffled], fuel, passage, flow) => {
      const drop = solve(series(...some), fuel, { passage }).drop(flow);
      const again = solve(series(...shuffled), fuel, { passage }).drop(flow);
      // Climbs and falls may cancel, so the sizes added up are the measure, not what is left of them.
      const size = some.reduce((sum, one) => sum + Math.abs(solve(one, fuel, { passage }).drop(flow)), 0);
      if (drop !== again) expect(Math.abs(drop - again)).toBeLessThanOrEqual(1e-13 * size);
    }),
    runs(400),
  );
});

test("solve(series(series(a, b), c), fuel).drop(flow) is that of series(a, b, c), bit for bit", () => {
  const parts = fc.tuple(aCircuit(everything, 1), aCircuit(everything, 1), aCircuit(everything, 1));
  fc.assert(
    fc.property(parts, aFuel, aPassage, aFlow, ([a, b, c], fuel, passage, flow) => {
      const flat = solve(series(a, b, c), fuel, { passage }).drop(flow);
      expect(solve(series(series(a, b), c), fuel, { passage }).drop(flow)).toBe(flat);
      expect(solve(series(a, series(b, c)), fuel, { passage }).drop(flow)).toBe(flat);
    }),
    runs(400),
  );
});

test("solve(circuit, fuel, { passage: early }).drop(flow) is never smaller than with the smooth passage", () => {
  fc.assert(
    fc.property(aCircuit(everything), aFuel, aFlowSize, (circuit, fuel, flow) => {
      const smooth = solve(circuit, fuel, { passage: "smooth" }).drop(flow);
      const early = solve(circuit, fuel, { passage: "early" }).drop(flow);
      if (early !== smooth)
        expect(early - smooth).toBeGreaterThanOrEqual(-1e-13 * (Math.abs(smooth) + Math.abs(headOf(circuit, fuel))));
    }),
    runs(500),
  );
});

test("sweep(solved, flows) is drop at every flow, bit for bit", () => {
  const flows = fc.array(aFlow, { minLength: 1, maxLength: 20 }).map((some) => Float64Array.from(some));
  fc.assert(
    fc.property(aCircuit(everything), aFuel, aPassage, flows, (circuit, fuel, passage, some) => {
      const solved = solve(circuit, fuel, { passage });
      expect(sweep(solved, some)).toEqual(Float64Array.from(some, (flow) => solved.drop(flow)));
    }),
    runs(300),
  );
});

test("a bank inside a profile is listed with as many branches as it has", () => {
  fc.assert(
    fc.property(aCircuit(everything), aFuel, aFlow, (circuit, fuel, flow) => {
      const counts = (one: typeof circuit): number[] =>
        one.kind === "series"
          ? one.items.flatMap(counts)
          : one.kind === "parallel"
            ? [one.branches.length, ...one.branches.flatMap(counts)]
            : [];
      expect(banksIn(solve(circuit, fuel).profile(flow)).map((bank) => bank.branches.length)).toEqual(counts(circuit));
    }),
    runs(200),
  );
});
