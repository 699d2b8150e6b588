import {
  bowlDrainInterval,
  cleanDropFactor,
  freeWater,
  separationAt,
  settlingSpeed,
  settlingTime,
  waterThroughStages,
} from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { between, logBetween } from "./some.js";

test("freeWater(given) shares all water out, and none is free below the solubility", () => {
  fc.assert(
    fc.property(between(0, 1), between(0, 5e-4), between(700, 900), (total, solubility, density) => {
      const { dissolved, free } = freeWater({ total, solubility, density });
      expect(dissolved + free).toBeCloseTo(total, 15);
      expect(free).toBeGreaterThanOrEqual(0);
      if (total <= solubility * density) expect(free).toBe(0);
    }),
  );
});

test("separationAt(stated, flow) is the stated efficiency at its flow, and never grows with flow", () => {
  const some = fc.record({ efficiency: between(0, 0.9999), flow: logBetween(1e-6, 1e-3) });
  fc.assert(
    fc.property(some, logBetween(1e-6, 1e-3), logBetween(1e-6, 1e-3), (stated, one, other) => {
      expect(separationAt(stated, stated.flow)).toBeCloseTo(stated.efficiency, 14);
      const [slow, fast] = [Math.min(one, other), Math.max(one, other)];
      expect(separationAt(stated, fast)).toBeLessThanOrEqual(separationAt(stated, slow));
    }),
  );
});

test("separationAt(stated, flow) at twice the flow lets the square root of the share through", () => {
  fc.assert(
    fc.property(between(0, 0.9999), (efficiency) => {
      const passed = 1 - separationAt({ efficiency, flow: 1e-5 }, 2e-5);
      expect(passed ** 2).toBeCloseTo(1 - efficiency, 13);
    }),
  );
});

test("waterThroughStages(given): what came is removed or carried on, stage by stage", () => {
  const someStage = fc.record({
    kind: fc.constantFrom("separator" as const, "absorber" as const),
    separation: fc.record({ efficiency: between(0, 0.99), flow: logBetween(1e-5, 1e-4) }),
  });
  fc.assert(
    fc.property(
      between(0, 0.5),
      logBetween(1e-6, 1e-3),
      fc.array(someStage, { maxLength: 4 }),
      (free, flow, stages) => {
        const results = waterThroughStages({ free, flow, stages });
        let coming = free;
        for (const result of results) {
          expect(result.removed + result.carriedOn).toBeCloseTo(coming, 14);
          expect(result.carriedOn).toBeGreaterThanOrEqual(0);
          expect(result).not.toHaveProperty("drainEvery");
          coming = result.carriedOn;
        }
        expect(results).toHaveLength(stages.length);
      },
    ),
  );
});

test("waterThroughStages(given) gives a bowl its drain interval, and Infinity when no water comes", () => {
  const separation = { efficiency: 0.9, flow: 1e-4 };
  const stage = { kind: "separator", separation, bowl: 2e-4, name: "bowl" } as const;
  const [wet] = waterThroughStages({ free: 0.05, flow: 1e-4, stages: [stage] });
  // 0.2 L of water are 0.1996 kg; 0.045 kg/m3 at 1e-4 m3/s bring it in 44 356 s.
  expect(wet?.drainEvery).toBeCloseTo((2e-4 * 998) / (0.045 * 1e-4), 6);
  expect(wet?.drainEvery).toBe(bowlDrainInterval({ bowl: 2e-4, separated: wet?.removed ?? 0, flow: 1e-4 }));
  expect(wet?.name).toBe("bowl");
  const [dry] = waterThroughStages({ free: 0, flow: 1e-4, stages: [stage] });
  expect(dry?.drainEvery).toBe(Infinity);
});

const diesel = { density: 825, kinematicViscosity: 3e-6 };

test("settlingSpeed(given) is four times larger for twice the size, and rises for what is lighter", () => {
  fc.assert(
    fc.property(logBetween(1e-6, 1e-4), between(700, 3000), (size, density) => {
      const small = settlingSpeed({ size, density, fuel: diesel });
      const large = settlingSpeed({ size: 2 * size, density, fuel: diesel });
      if (!small.known || !large.known) return;
      expect(large.speed).toBeCloseTo(4 * small.speed, 12);
      expect(Math.sign(small.speed)).toBe(Math.sign(density - diesel.density));
      expect(small.tooFastBy).toBeCloseTo((3 / 16) * small.reynolds, 15);
    }),
  );
});

test("settlingSpeed(given) has no answer above a Reynolds number of 1", () => {
  // The Reynolds number grows with the cube of the size; 0.0127 at 100 um makes 1 at 429 um.
  expect(settlingSpeed({ size: 4.2e-4, density: 998, fuel: diesel }).known).toBe(true);
  const large = settlingSpeed({ size: 4.4e-4, density: 998, fuel: diesel });
  expect(large).toMatchObject({ known: false, reason: "Reynolds number above 1" });
  expect(large.reynolds).toBeGreaterThan(1);
});

test("settlingTime(given) is the depth over the speed, a quarter for twice the size, and without end for what rises", () => {
  const drop = { size: 5e-5, density: 998, fuel: diesel };
  fc.assert(
    fc.property(between(0, 20), logBetween(1e-6, 1e-4), (depth, size) => {
      const once = settlingTime({ ...drop, depth, size });
      const large = settlingTime({ ...drop, depth, size: 2 * size });
      const { known, ...found } = settlingSpeed({ ...drop, size });
      if (!once.known || !large.known || !known || !("speed" in found)) throw new Error("not known");
      expect(once.time).toBeCloseTo(depth / found.speed, 6);
      expect(once.time).toBeCloseTo(4 * large.time, 4);
    }),
  );
  expect(settlingTime({ ...drop, depth: 1, density: 700 })).toMatchObject({ known: true, time: Infinity });
  expect(settlingTime({ ...drop, depth: 1, size: 1e-3 })).toMatchObject({ known: false });
  expect(settlingTime({ depth: 1, size: 1e-4, density: 998, fuel: diesel })).toMatchObject({
    time: expect.closeTo(2626, 0),
  });
  expect(() => settlingTime({ ...drop, depth: -1 })).toThrow("settlingTime requires depth to be at least 0 m, got -1");
});

test("cleanDropFactor(given) lies between a rigid sphere's 1 and a bubble's 1.5, and falls with the drop's viscosity", () => {
  fc.assert(
    fc.property(logBetween(1e-6, 10), logBetween(1e-6, 10), logBetween(1.01, 100), (drop, fuel, times) => {
      const factor = cleanDropFactor({ drop, fuel });
      expect(factor).toBeGreaterThanOrEqual(1);
      expect(factor).toBeLessThanOrEqual(1.5);
      expect(cleanDropFactor({ drop: drop * times, fuel })).toBeLessThan(factor);
    }),
  );
  expect(cleanDropFactor({ drop: 1.0016e-3, fuel: 2.475e-3 })).toBeCloseTo(1.3111, 4);
  expect(() => cleanDropFactor({ drop: 0, fuel: 1e-3 })).toThrow(
    "cleanDropFactor requires drop to be more than 0 Pa s",
  );
});
