import { type BandEnd, type Circuit, type FuelState, type Passage, solve } from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { compile } from "../../packages/core/src/circuit/compile.js";
import { aFlow, aFlowSize, aFuel, aPassage } from "../support/arbitraries.js";
import { aCircuit, aFrictionCircuit, everything } from "../support/circuits.js";
import { logUniform } from "../support/random.js";
import { runs } from "./runs.js";
import { frozen, numbersIn } from "./values.js";

const anEnd = fc.constantFrom<BandEnd>("low", "middle", "high");

test("solve(circuit, fuel) answers every valid input: no NaN, no throw, and a finite drop of what lets fuel pass", () => {
  const pressure = fc.tuple(logUniform(1e-6, 1e12), fc.boolean()).map(([size, minus]) => (minus ? -size : size));
  fc.assert(
    fc.property(
      aCircuit(everything),
      aFuel,
      aPassage,
      anEnd,
      aFlow,
      pressure,
      (circuit, fuel, passage, end, flow, p) => {
        const solved = solve(circuit, fuel, { passage, end });
        const drop = solved.drop(flow);
        expect(drop).not.toBeNaN();
        if (flow > 0) expect(Number.isFinite(drop)).toBe(true);
        expect(Number.isFinite(solved.flow(p))).toBe(true);
        expect(Number.isFinite(solved.drop(0))).toBe(true);
        expect(numbersIn([solved.profile(flow), solved.profile(0)]).some(Number.isNaN)).toBe(false);
      },
    ),
    runs(1500),
  );
});

test("solve(circuit, fuel) changes neither circuit nor fuel: frozen ones serve", () => {
  fc.assert(
    fc.property(aCircuit(everything), aFuel, aPassage, aFlow, (circuit, fuel, passage, flow) => {
      const thawed = solve(circuit, fuel, { passage }).drop(flow);
      const solved = solve(frozen(circuit), frozen(fuel), frozen({ passage }));
      expect(solved.drop(flow)).toBe(thawed);
      solved.flow(1000);
      solved.profile(flow);
    }),
    runs(200),
  );
});

test("solve(circuit, fuel) remembers nothing: the same call gives the same bits, whatever was asked before", () => {
  fc.assert(
    fc.property(aCircuit(everything), aFuel, aPassage, aFlow, aFlow, (circuit, fuel, passage, flow, another) => {
      const asked = solve(circuit, fuel, { passage });
      const [drop, back] = [asked.drop(flow), asked.flow(another * 1e6)];
      asked.drop(another);
      asked.flow(flow * 1e6);
      asked.profile(another);
      asked.drop(0);
      const fresh = solve(circuit, fuel, { passage });
      for (const solved of [asked, fresh]) {
        expect(solved.flow(another * 1e6)).toBe(back);
        expect(solved.drop(flow)).toBe(drop);
      }
      expect(asked.profile(flow)).toEqual(fresh.profile(flow));
    }),
    runs(300),
  );
});

test("the solver's slope is that of the drop, to 1e-5, and between the slopes on both sides where it bends", () => {
  fc.assert(
    fc.property(aFrictionCircuit, aFuel, aFlow, (circuit, fuel, flow) => {
      expectSlope(circuit, fuel, "smooth", flow);
    }),
    runs(500),
  );
});

test("the solver's slope is that of the drop with check valves and shut branches too", () => {
  const holding = { checkValves: true, shutBranches: true };
  // Friction must show beside the opening pressures for a difference quotient to mean anything.
  fc.assert(
    fc.property(aCircuit(holding), aFuel, logUniform(1e-4, 1), (circuit, fuel, flow) => {
      expectSlope(circuit, fuel, "smooth", flow);
    }),
    runs(500),
  );
});

test("solve(circuit, fuel, { end }).drop(flow) grows from the low end of every band over the middle to the high", () => {
  fc.assert(
    fc.property(aFrictionCircuit, aFuel, aPassage, aFlowSize, (circuit, fuel, passage, flow) => {
      const [low, middle, high] = (["low", "middle", "high"] as const).map((end) =>
        solve(circuit, fuel, { passage, end }).drop(flow),
      ) as [number, number, number];
      expect(middle).toBeGreaterThanOrEqual(low * (1 - 1e-13));
      expect(high).toBeGreaterThanOrEqual(middle * (1 - 1e-13));
    }),
    runs(400),
  );
});

/** A difference over a hundred-thousandth of the flow; what its own rounding is worth is allowed for. */
function expectSlope(circuit: Circuit, fuel: FuelState, passage: Passage, flow: number): void {
  const { run } = compile(circuit, { fuel, passage, end: "middle" });
  const step = 1e-5 * Math.abs(flow);
  const [before, here, after] = [flow - step, flow, flow + step].map((one) => run.friction(one)) as [
    number,
    number,
    number,
  ];
  const sides = [(here - before) / step, (after - here) / step] as const;
  run.friction(flow);
  const allowed = 1e-5 * run.slope + (1e-13 * Math.abs(here)) / step;
  expect(run.slope).toBeGreaterThanOrEqual(Math.min(...sides) - allowed);
  expect(run.slope).toBeLessThanOrEqual(Math.max(...sides) + allowed);
}
