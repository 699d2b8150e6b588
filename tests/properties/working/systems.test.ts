import type { System } from "@thirstline/spec/system";
import { check, life } from "@thirstline/study";
import { figuresOf, proofOf, workingOf } from "@thirstline/study/working";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aSystem } from "../../support/systems.js";
import { LONG } from "./sampled.js";

/** A life, of a system that core can follow. */
function answered(system: System): ReturnType<typeof life> {
  try {
    return life(system);
  } catch (error) {
    fc.pre(!(error instanceof Error && error.name === "InputError"));
    throw error;
  }
}

test("figuresOf(system) works every figure of check out of formulas that agree with core to 1e-9, units and all", {
  timeout: 120_000,
}, () => {
  fc.assert(
    fc.property(aSystem, (system) => {
      const faults = figuresOf(system).flatMap(({ name, step }) =>
        step ? proofOf({ step }).misses.map((miss) => ({ figure: name, ...miss })) : [],
      );
      expect(faults).toEqual([]);
    }),
    { numRuns: LONG ? 30 : 4, endOnFailure: true },
  );
});

test("workingOf(system, figure) comes to the figures of check", { timeout: 120_000 }, () => {
  fc.assert(
    fc.property(aSystem, (system) => {
      const [point] = check(system).points;
      const same = (name: string, value: number | null | undefined) => {
        const step = workingOf(system, name)?.step;
        if (value === null || value === undefined || !Number.isFinite(value)) expect(step).toBeUndefined();
        else
          expect(Math.abs((step?.value ?? Number.NaN) - value)).toBeLessThanOrEqual(
            1e-9 * Math.max(1, Math.abs(value)),
          );
      };
      same("vacuum", point?.vacuum.middle);
      same("feed pressure", point?.feedPressure?.middle);
      same("lowest pressure", point?.lowest?.pressure.middle);
      same("in hand", point?.inHand.middle);
      same("ceiling at change", point?.ceilings.atChange.flow.middle);
      same("fuel viscosity", point?.fuel.kinematicViscosity);
    }),
    { numRuns: LONG ? 40 : 6, endOnFailure: true },
  );
});

test("workingOf(system, figure) of a life meets its limit, and its soil is what was caught", {
  timeout: 120_000,
}, () => {
  fc.assert(
    fc.property(aSystem, (system) => {
      const { end, elements } = answered(system);
      for (const name of [
        "end of life",
        ...elements.slice(0, 1).map((one) => `resistance over clean of ${one.name}`),
      ]) {
        const working = workingOf(system, name);
        if (name === "end of life") expect(working?.step.value).toBe(end?.time);
        expect(working === null ? [] : proofOf(working).misses).toEqual([]);
      }
    }),
    { numRuns: LONG ? 6 : 1, endOnFailure: true },
  );
});
