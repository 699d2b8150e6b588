import { type BankProfile, type Circuit, type ProfileEntry, parallel, solve } from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aFlow, aFlowSize, aFuel, aPassage } from "../support/arbitraries.js";
import { aCircuit, everything, someBranches } from "../support/circuits.js";
import { banksIn, flowsInto, headOf, sumOfDrops } from "./pressures.js";
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
