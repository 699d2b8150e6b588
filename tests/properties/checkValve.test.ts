import { type Circuit, type PartProfile, type ProfileEntry, parallel, series, solve } from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aCheckValve, aFlow, aFlowSize, aFrictionPart, aFuel, aPassage } from "../support/arbitraries.js";
import { aCircuit } from "../support/circuits.js";
import { uniform } from "../support/random.js";
import { headOf, ULP } from "./pressures.js";
import { runs } from "./runs.js";

const withValves = { rises: 30, checkValves: true, shutBranches: true };

/** Something behind a check valve: nothing passes it backwards, however its own valves stand. */
const guarded = fc.tuple(aCircuit(withValves, 2), aCheckValve).map(([circuit, valve]) => series(circuit, valve));

test("solve(series(circuit, check valve), fuel) lets no drop drive fuel backward", () => {
  fc.assert(
    fc.property(guarded, aFuel, aPassage, aFlowSize, uniform(-1e7, 1e7), (circuit, fuel, passage, flow, pressure) => {
      const solved = solve(circuit, fuel, { passage });
      expect(solved.drop(-flow)).toBe(-Infinity);
      expect(solved.flow(pressure)).toBeGreaterThanOrEqual(0);
    }),
    runs(300),
  );
});

test("solve(series(circuit, check valve), fuel).flow(p) is 0 up to drop(0), the opening pressure and head, and not above", () => {
  fc.assert(
    fc.property(guarded, aFuel, aPassage, uniform(0, 1e6), (circuit, fuel, passage, less) => {
      const { drop, flow } = solve(circuit, fuel, { passage });
      const opens = drop(0);
      const scale = Math.abs(opens) + Math.abs(headOf(circuit, fuel));
      // Opening pressure and head are added up, so where exactly it opens is known to one rounding of them.
      expect(flow(opens - less - ULP * scale)).toBe(0);
      expect(flow(opens + 1 + 1e-9 * scale)).toBeGreaterThan(0);
    }),
    runs(300),
  );
});

test("solve(circuit, fuel).profile(flow) carries nothing backward through a check valve, in any bank", () => {
  fc.assert(
    fc.property(aCircuit(withValves), aFuel, aPassage, aFlow, (circuit, fuel, passage, flow) => {
      const solved = solve(circuit, fuel, { passage });
      fc.pre(Number.isFinite(solved.drop(flow)));
      for (const { part, flow: own } of partsIn(solved.profile(flow))) {
        if (part.kind === "valve" && part.oneWay) expect(own).toBeGreaterThanOrEqual(0);
      }
    }),
    runs(500),
  );
});

test("solve(parallel(two-way, one-way), fuel) leaves backward flow to the two-way branch, whatever guards the other", () => {
  const oneWay = fc.oneof(
    guarded.map(level),
    fc.tuple(guarded, guarded).map(([a, b]) => parallel(level(a), level(b))),
  );
  fc.assert(
    fc.property(aFrictionPart, oneWay, aFuel, aPassage, aFlowSize, (twoWay, other, fuel, passage, flow) => {
      const alone = solve(twoWay, fuel, { passage }).drop(-flow);
      const bank = solve(parallel(twoWay, other), fuel, { passage });
      expect(Math.abs(bank.drop(-flow) - alone)).toBeLessThanOrEqual(1e-14 * Math.abs(alone));
      expect(Math.abs(bank.flow(alone) + flow)).toBeLessThanOrEqual(1e-10 * flow);
    }),
    runs(300),
  );
});

test("solve(parallel(check valves), fuel).drop(0) is the least opening pressure, as for one valve alone", () => {
  fc.assert(
    fc.property(fc.array(aCheckValve, { minLength: 2, maxLength: 5 }), aFuel, (valves, fuel) => {
      const openings = valves.map((valve) => solve(valve, fuel).drop(0));
      const bank = solve(parallel(...valves), fuel);
      expect(bank.drop(0)).toBe(Math.min(...openings));
      expect(bank.flow(Math.min(...openings))).toBe(0);
    }),
    runs(100),
  );
});

/** The circuit without its rises, so that it may be a branch beside one that does not rise. */
function level(circuit: Circuit): Circuit {
  switch (circuit.kind) {
    case "series":
      return series(...circuit.items.filter(({ kind }) => kind !== "rise").map(level));
    case "parallel":
      return parallel(...circuit.branches.map(level));
    default:
      return circuit;
  }
}

function partsIn(entries: readonly ProfileEntry[]): PartProfile[] {
  return entries.flatMap((entry) => (entry.kind === "part" ? [entry] : entry.branches.flatMap(partsIn)));
}
