import { frictionFactor, fuelState, LAMINAR_END, line, MOST_ROUGH, solve, TURBULENT_START } from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aFlowSize, aFuel, aLineShape, aPassage, aRelativeRoughness } from "../support/arbitraries.js";
import { logUniform, uniform } from "../support/random.js";
import { apart } from "./pressures.js";
import { runs } from "./runs.js";

const ROUNDING = 1e-14;

/** Flow, m3/s, at a Reynolds number. */
function flowAt(reynolds: number, bore: number, kinematicViscosity: number): number {
  return (reynolds * Math.PI * bore * kinematicViscosity) / 4;
}

test("solve(line, fuel).drop(flow) doubles with the viscosity in laminar flow", () => {
  fc.assert(
    fc.property(aLineShape, aFuel, logUniform(1e-6, LAMINAR_END), (shape, fuel, reynolds) => {
      const flow = flowAt(reynolds, shape.bore, fuel.kinematicViscosity);
      const thicker = fuelState({ ...fuel, kinematicViscosity: 2 * fuel.kinematicViscosity });
      const ratio = solve(line(shape), thicker).drop(flow) / solve(line(shape), fuel).drop(flow);
      expect(apart(ratio, 2)).toBeLessThanOrEqual(ROUNDING);
    }),
    runs(300),
  );
});

test("solve(line, fuel).drop(flow) is 16 times larger in half the bore, in laminar flow", () => {
  fc.assert(
    fc.property(aLineShape, aFuel, logUniform(1e-6, LAMINAR_END / 2), (shape, fuel, reynolds) => {
      const flow = flowAt(reynolds, shape.bore, fuel.kinematicViscosity);
      const narrow = { ...shape, bore: shape.bore / 2, roughness: shape.roughness / 2 };
      const ratio = solve(line(narrow), fuel).drop(flow) / solve(line(shape), fuel).drop(flow);
      expect(apart(ratio, 16)).toBeLessThanOrEqual(ROUNDING);
    }),
    runs(300),
  );
});

test("solve(line, fuel).drop(flow) does not feel the roughness in laminar flow", () => {
  fc.assert(
    fc.property(aLineShape, aFuel, logUniform(1e-6, LAMINAR_END - 1), (shape, fuel, reynolds) => {
      const flow = flowAt(reynolds, shape.bore, fuel.kinematicViscosity);
      expect(solve(line(shape), fuel).drop(flow)).toBe(solve(line({ ...shape, roughness: 0 }), fuel).drop(flow));
    }),
    runs(200),
  );
});

test("solve(line, fuel).drop(flow) doubles with the length at any flow", () => {
  fc.assert(
    fc.property(aLineShape, aFuel, aPassage, aFlowSize, (shape, fuel, passage, flow) => {
      const longer = solve(line({ ...shape, length: 2 * shape.length }), fuel, { passage }).drop(flow);
      expect(longer).toBe(2 * solve(line(shape), fuel, { passage }).drop(flow));
    }),
    runs(300),
  );
});

test("solve(line, fuel).drop(flow) grows in step with density at one kinematic viscosity, turbulent or not", () => {
  fc.assert(
    fc.property(aLineShape, aFuel, aPassage, aFlowSize, uniform(1, 2), (shape, fuel, passage, flow, times) => {
      const heavier = fuelState({ ...fuel, density: times * fuel.density });
      const ratio =
        solve(line(shape), heavier, { passage }).drop(flow) / solve(line(shape), fuel, { passage }).drop(flow);
      expect(apart(ratio, times)).toBeLessThanOrEqual(ROUNDING);
    }),
    runs(300),
  );
});

test("solve(line, fuel).drop(flow) quadruples with the flow where the wall's roughness alone decides", () => {
  fc.assert(
    fc.property(aLineShape, aFuel, uniform(0.001, MOST_ROUGH), (shape, fuel, rough) => {
      const rougher = { ...shape, roughness: rough * shape.bore };
      const flow = flowAt(1e12, shape.bore, fuel.kinematicViscosity);
      const { drop } = solve(line(rougher), fuel);
      // Colebrook–White's smooth term is below 2e-8 of the rough one at Re 1e12.
      expect(apart(drop(2 * flow) / drop(flow), 4)).toBeLessThanOrEqual(1e-7);
    }),
    runs(100),
  );
});

test("solve(line, fuel) has one friction factor at one Reynolds number and roughness over bore, in any line and fuel", () => {
  const friction = (
    shape: { length: number; bore: number; roughness: number },
    fuel: ReturnType<typeof fuelState>,
    flow: number,
  ) => {
    const velocity = flow / ((Math.PI / 4) * shape.bore ** 2);
    return (2 * solve(line(shape), fuel).drop(flow) * shape.bore) / (shape.length * fuel.density * velocity ** 2);
  };
  fc.assert(
    fc.property(aLineShape, aLineShape, aFuel, aFuel, logUniform(1e-3, 1e9), (one, other, fuel, another, reynolds) => {
      const rough = Math.min(MOST_ROUGH, one.roughness / one.bore);
      const alike = { ...other, roughness: rough * other.bore };
      const first = friction(one, fuel, flowAt(reynolds, one.bore, fuel.kinematicViscosity));
      const second = friction(alike, another, flowAt(reynolds, alike.bore, another.kinematicViscosity));
      expect(apart(first, second)).toBeLessThanOrEqual(ROUNDING);
      expect(apart(first, frictionFactor(reynolds, rough))).toBeLessThanOrEqual(ROUNDING);
    }),
    runs(400),
  );
});

/** What a line's drop is in step with: friction factor times Reynolds number squared. */
function costAt(reynolds: number, rough: number): number {
  return frictionFactor(reynolds, rough) * reynolds ** 2;
}

test("frictionFactor(reynolds, roughness) times reynolds squared grows all through the passage, for every roughness", () => {
  const inside = uniform(LAMINAR_END, TURBULENT_START);
  fc.assert(
    fc.property(aRelativeRoughness, inside, inside, (rough, one, other) => {
      fc.pre(Math.abs(one - other) > 1e-6);
      expect(costAt(Math.max(one, other), rough)).toBeGreaterThan(costAt(Math.min(one, other), rough));
    }),
    runs(1000),
  );
});

test.each([LAMINAR_END, TURBULENT_START])(
  "frictionFactor(reynolds, roughness) has no step and no bend at %i",
  (border) => {
    fc.assert(
      fc.property(aRelativeRoughness, (rough) => {
        const slopes = (step: number) => {
          const here = costAt(border, rough);
          return [(here - costAt(border - step, rough)) / step, (costAt(border + step, rough) - here) / step] as const;
        };
        // A bend would leave the two sides apart however short the step; a curve brings them together in step with it. The
        // curvature of the passage is below 2 per Reynolds number squared, for every roughness to 0.05.
        for (const step of [1, 0.1, 0.01]) {
          const [before, after] = slopes(step);
          expect(Math.abs(after - before)).toBeLessThanOrEqual(4 * step);
        }
      }),
      runs(300),
    );
  },
);

test("solve(line, fuel, { passage: early }).drop(flow) is never smaller than with the smooth passage", () => {
  fc.assert(
    fc.property(aLineShape, aFuel, logUniform(1000, 10000), (shape, fuel, reynolds) => {
      const flow = flowAt(reynolds, shape.bore, fuel.kinematicViscosity);
      const early = solve(line(shape), fuel, { passage: "early" }).drop(flow);
      expect(early / solve(line(shape), fuel).drop(flow)).toBeGreaterThanOrEqual(1 - ROUNDING);
    }),
    runs(1000),
  );
});
