import { type BankProfile, type Circuit, filter, parallel, series, solve } from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aFlow, aFlowSize, aFuel, aPassage } from "../support/arbitraries.js";
import { aCircuit, everything, someBranches } from "../support/circuits.js";
import { aShutFilter } from "../support/filters.js";
import { apart, flowsInto, headOf } from "./pressures.js";
import { runs } from "./runs.js";

const noShutBranches = { rises: 30, checkValves: true };

test("solve(parallel(a, a, …), fuel) lets each of n equal branches carry flow/n, at the drop of one at flow/n", () => {
  fc.assert(
    fc.property(
      aCircuit(noShutBranches, 2),
      aFuel,
      aPassage,
      aFlowSize,
      fc.integer({ min: 2, max: 8 }),
      (branch, fuel, passage, flow, n) => {
        const bank = solve(parallel(...Array.from({ length: n }, () => branch)), fuel, { passage });
        const [entry] = bank.profile(flow) as [BankProfile];
        for (const own of flowsInto(entry)) expect(apart(own, flow / n)).toBeLessThanOrEqual(1e-13);
        const one = solve(branch, fuel, { passage }).drop(flow / n);
        const scale = Math.abs(one) + Math.abs(headOf(branch, fuel));
        expect(Math.abs(bank.drop(flow) - one)).toBeLessThanOrEqual(1e-13 * scale);
      },
    ),
    runs(400),
  );
});

test("solve(parallel(...branches, another), fuel).drop(flow) is never larger than without it, nor smaller backward", () => {
  const three = someBranches(everything).filter((branches) => branches.length > 2);
  fc.assert(
    fc.property(three, aFuel, aPassage, aFlow, (branches, fuel, passage, flow) => {
      const fewer = solve(parallel(...branches.slice(0, -1)), fuel, { passage }).drop(flow);
      const more = solve(parallel(...branches), fuel, { passage }).drop(flow);
      if (more === fewer) return;
      const scale = Math.abs(more) + Math.abs(headOf(branches[0] as Circuit, fuel));
      expect((more - fewer) * Math.sign(flow)).toBeLessThanOrEqual(1e-13 * scale);
    }),
    runs(500),
  );
});

test("solve(parallel(...branches, shut), fuel) has the drops of the bank without it, bit for bit, and 0 in the shut one", () => {
  const open = someBranches({ checkValves: true });
  fc.assert(
    fc.property(open, aShutFilter, aFuel, aPassage, aFlow, (branches, shut, fuel, passage, flow) => {
      const without = solve(parallel(...branches), fuel, { passage });
      const withShut = solve(parallel(...branches, series(branches[0] as Circuit, shut)), fuel, { passage });
      expect(withShut.drop(flow)).toBe(without.drop(flow));
      const [entry] = withShut.profile(flow) as [BankProfile];
      const [entryWithout] = without.profile(flow) as [BankProfile];
      expect(flowsInto(entry)).toEqual([...flowsInto(entryWithout), 0]);
    }),
    runs(400),
  );
});

test("solve(parallel(open, shut), fuel).drop(flow) is that of the open branch alone", () => {
  fc.assert(
    fc.property(
      aCircuit({ checkValves: true }, 2),
      aShutFilter,
      aFuel,
      aPassage,
      aFlow,
      (open, shut, fuel, passage, flow) => {
        const alone = solve(open, fuel, { passage }).drop(flow);
        expect(apart(solve(parallel(open, shut), fuel, { passage }).drop(flow), alone)).toBeLessThanOrEqual(1e-14);
      },
    ),
    runs(400),
  );
});

test("solve(parallel(...), fuel) with every branch shut lets nothing pass: drop Infinity, flow 0", () => {
  fc.assert(
    fc.property(fc.array(aShutFilter, { minLength: 2, maxLength: 4 }), aFuel, aFlowSize, (branches, fuel, flow) => {
      const solved = solve(series(parallel(...branches), filter({ media: sheet })), fuel);
      expect(solved.shut).toBe(true);
      expect(solved.drop(flow)).toBe(Infinity);
      expect(solved.drop(-flow)).toBe(-Infinity);
      expect(solved.flow(1e6)).toBe(0);
    }),
    runs(50),
  );
});

const sheet = { area: 0.5, thickness: 6e-4, permeability: 2e-13 };

test("solve(parallel(parallel(a, b), c), fuel).drop(flow) is that of parallel(a, b, c)", () => {
  fc.assert(
    fc.property(
      someBranches(noShutBranches, 1).filter((branches) => branches.length > 2),
      aFuel,
      aPassage,
      aFlow,
      (branches, fuel, passage, flow) => {
        const [a, b, ...rest] = branches as [Circuit, Circuit, ...Circuit[]];
        const flat = solve(parallel(a, b, ...rest), fuel, { passage }).drop(flow);
        const nested = solve(parallel(parallel(a, b), ...rest), fuel, { passage }).drop(flow);
        const scale = Math.abs(flat) + Math.abs(headOf(a, fuel));
        if (nested !== flat) expect(Math.abs(nested - flat)).toBeLessThanOrEqual(1e-13 * scale);
      },
    ),
    runs(500),
  );
});

test("solve(parallel(...branches), fuel) does not depend on the order of the branches", () => {
  const reordered = someBranches(everything).chain((some) =>
    fc.tuple(fc.constant(some), fc.shuffledSubarray(some, { minLength: some.length })),
  );
  fc.assert(
    fc.property(reordered, aFuel, aPassage, aFlow, ([some, shuffled], fuel, passage, flow) => {
      const drop = solve(parallel(...some), fuel, { passage }).drop(flow);
      const again = solve(parallel(...shuffled), fuel, { passage }).drop(flow);
      const scale = Math.abs(drop) + Math.abs(headOf(some[0] as Circuit, fuel));
      if (again !== drop) expect(Math.abs(again - drop)).toBeLessThanOrEqual(1e-13 * scale);
    }),
    runs(300),
  );
});
