import { type Circuit, type FuelState, type Passage, rise, series, solve } from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aFlow, aFlowSize, aFuel, aPassage } from "../support/arbitraries.js";
import { aCircuit, aFrictionCircuit, everything } from "../support/circuits.js";
import { logUniform, uniform } from "../support/random.js";
import { headOf, ULP } from "./pressures.js";
import { runs } from "./runs.js";

/**
 * flow(drop(q)) = q to 1e-10 of q, plus what one rounding of the drop costs at that slope.
 *
 * How the second part is bounded: a drop in a double stands for all pressures within one unit in the last place of
 * |drop| + |head|, since it is friction and head added up. Every flow whose drop lies in there is as right as q itself.
 * So a flow further off than 1e-10 is put in again, and must give the drop back to that one rounding. Slopes are not
 * needed, and it holds where they vanish, jump or change faster than the rounding.
 */
function expectUndone(circuit: Circuit, fuel: FuelState, passage: Passage, q: number): void {
  const solved = solve(circuit, fuel, { passage });
  const drop = solved.drop(q);
  if (!Number.isFinite(drop)) return; // backward against a check valve: no drop to undo
  const back = solved.flow(drop);
  if (Math.abs(back - q) <= 1e-10 * Math.abs(q)) return;
  const rounding = ULP * (Math.abs(drop) + Math.abs(headOf(circuit, fuel)));
  const miss = Math.abs(solved.drop(back) - drop);
  expect(miss, `flow(drop(${q})) is ${back}`).toBeLessThanOrEqual(rounding);
}

test("solve(circuit, fuel).flow(drop(q)) is q where there is friction only", () => {
  fc.assert(
    fc.property(aFrictionCircuit, aFuel, aPassage, aFlow, (circuit, fuel, passage, q) => {
      const { drop, flow } = solve(circuit, fuel, { passage });
      // No head to hide in: 1e-10 without any allowance.
      expect(Math.abs(flow(drop(q)) - q)).toBeLessThanOrEqual(1e-10 * Math.abs(q));
    }),
    runs(800),
  );
});

test("solve(circuit, fuel).flow(drop(q)) is q with rises, check valves and shut branches", () => {
  fc.assert(fc.property(aCircuit(everything), aFuel, aPassage, aFlow, expectUndone), runs(800));
});

test("solve(circuit, fuel).flow(drop(q)) is q through a head of up to 10 km", () => {
  fc.assert(
    fc.property(aFrictionCircuit, aFuel, aPassage, aFlow, uniform(-1e4, 1e4), (circuit, fuel, passage, q, height) => {
      expectUndone(series(circuit, rise({ height })), fuel, passage, q);
    }),
    runs(500),
  );
});

test("solve(circuit, fuel).flow(p) is a flow beside which, 1e-10 to either side, the drop passes p, on a step too", () => {
  const pressure = fc.tuple(logUniform(1e-6, 1e9), fc.boolean()).map(([size, minus]) => (minus ? -size : size));
  fc.assert(
    fc.property(aFrictionCircuit, aFuel, aPassage, pressure, (circuit, fuel, passage, p) => {
      const { drop, flow } = solve(circuit, fuel, { passage });
      const q = flow(p);
      const [less, more] = [drop(q * (1 - 1e-10)), drop(q * (1 + 1e-10))].sort((a, b) => a - b);
      expect(p).toBeGreaterThanOrEqual(less ?? Infinity);
      expect(p).toBeLessThanOrEqual(more ?? -Infinity);
    }),
    runs(500),
  );
});

test("solve(circuit, fuel).flow(p) is never smaller at a larger drop", () => {
  fc.assert(
    fc.property(
      aCircuit(everything),
      aFuel,
      aPassage,
      aFlowSize,
      aFlowSize,
      uniform(0, 1e5),
      (circuit, fuel, passage, one, other, more) => {
        const { drop, flow } = solve(circuit, fuel, { passage });
        const low = drop(Math.min(one, other));
        const less = flow(low);
        expect(flow(low + more)).toBeGreaterThanOrEqual(less * (1 - 1e-10));
      },
    ),
    runs(300),
  );
});
