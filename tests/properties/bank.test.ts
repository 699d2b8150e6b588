import { type BankProfile, type Circuit, filter, type ProfileEntry, parallel, series, solve } from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  aCircuit,
  aFlow,
  aFlowSize,
  aFuel,
  aPassage,
  aShutFilter,
  everything,
  someBranches,
} from "../support/arbitraries.js";
import { apart, banksIn, flowsInto, headOf, sumOfDrops } from "./pressures.js";
import { runs } from "./runs.js";

const friction = {};
const noShutBranches = { rises: 30, checkValves: true };

test("solve(circuit, fuel).profile(flow) lets every bank's branches carry its flow together, to 1e-12", () => {
  fc.assert(
    fc.property(aCircuit(everything), aFuel, aPassage, aFlow, (circuit, fuel, passage, flow) => {
      for (const bank of banksIn(solve(circuit, fuel, { passage }).profile(flow)).filter(passes)) {
        const flows = flowsInto(bank);
        const sum = flows.reduce((total, one) => total + one, 0);
        const largest = Math.max(...flows.map(Math.abs));
        expect(Math.abs(sum - bank.flow)).toBeLessThanOrEqual(1e-12 * largest);
      }
    }),
    runs(500),
  );
});

test("solve(circuit, fuel).profile(flow) gives all branches of a bank that flow the bank's drop, to 1e-12", () => {
  fc.assert(
    fc.property(aCircuit(everything), aFuel, aFlow, (circuit, fuel, flow) => {
      for (const { branch, drop } of flowingBranches(solve(circuit, fuel).profile(flow))) {
        const { sum, size } = sumOfDrops(branch);
        expect(Math.abs(sum - drop)).toBeLessThanOrEqual(1e-12 * size);
      }
    }),
    runs(500),
  );
});

// The early passage steps at Re 2300. A branch may stand on that step: its flow then fits every drop from below the step
// to above it, so the law for it is an inclusion, not an equality.
test("solve(circuit, fuel, early).profile(flow) gives branches the bank's drop, or holds them on a step across it", () => {
  fc.assert(
    fc.property(someBranches(friction), aFuel, aFlowSize, (branches, fuel, flow) => {
      const options = { passage: "early" } as const;
      const [bank] = solve(parallel(...branches), fuel, options).profile(flow) as [BankProfile];
      flowsInto(bank).forEach((own, at) => {
        const { drop } = solve(branches[at] as Circuit, fuel, options);
        const shared = bank.drop ?? Number.NaN;
        expect(drop(own * (1 - 1e-12))).toBeLessThanOrEqual(shared * (1 + 1e-12));
        expect(drop(own * (1 + 1e-12))).toBeGreaterThanOrEqual(shared * (1 - 1e-12));
      });
    }),
    runs(500),
  );
});

test("solve(parallel(...), fuel).profile(flow) leaves a branch at rest only where the drop does not open its valves", () => {
  fc.assert(
    fc.property(someBranches(noShutBranches), aFuel, aPassage, aFlow, (branches, fuel, passage, flow) => {
      const [bank] = solve(parallel(...branches), fuel, { passage }).profile(flow) as [BankProfile];
      fc.pre(bank.drop !== null);
      flowsInto(bank).forEach((own, at) => {
        if (own !== 0) return;
        const branch = branches[at] as Circuit;
        const opens = solve(branch, fuel, { passage }).drop(0);
        const scale = Math.abs(opens) + Math.abs(headOf(branch, fuel));
        expect(bank.drop).toBeLessThanOrEqual(opens + 1e-13 * scale);
      });
    }),
    runs(300),
  );
});

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

/** Whether anything can pass a bank the way it is asked to. */
function passes(bank: BankProfile): boolean {
  return bank.drop !== null && bank.flow !== 0;
}

/** Every branch that flows, of every bank in a profile, with the drop its bank states. */
function flowingBranches(entries: readonly ProfileEntry[]) {
  return banksIn(entries)
    .filter(passes)
    .flatMap((bank) => {
      const flows = flowsInto(bank);
      return bank.branches.flatMap((branch, at) =>
        flows[at] === 0 ? [] : [{ branch, drop: bank.drop ?? Number.NaN }],
      );
    });
}
