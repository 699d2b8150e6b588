import {
  binCount,
  codeOfDistribution,
  countFrom,
  countsPerMl,
  distributionFromCode,
  distributionFromCounts,
  distributionFromMass,
  massOf,
  mixDistributions,
  parseCode,
  printCode,
  sizeEdges,
} from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { between, logBetween, someCounts, someFuel } from "./some.js";

const sphere = (size: number) => (Math.PI / 6) * 2650 * size ** 3;

const made = (...given: Parameters<typeof distributionFromCounts>) => {
  const found = distributionFromCounts(...given);
  if (!found.known) throw new Error(found.reason);
  return found;
};

const someCutoffs = fc.record({ from: between(0.7e-6, 4e-6), to: between(14.1e-6, 150e-6) });

test("sizeEdges rise, at least forty to a decade, through the sizes of codes, dusts and betas", () => {
  expect(sizeEdges).toHaveLength(binCount + 1);
  for (let bin = 0; bin < binCount; bin++) {
    const ratio = (sizeEdges[bin + 1] ?? 0) / (sizeEdges[bin] ?? 0);
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThanOrEqual(10 ** (1 / 40) * (1 + 1e-12));
  }
  for (const size of [1e-6, 2e-6, 4e-6, 5e-6, 6e-6, 10e-6, 14e-6, 20e-6, 40e-6, 80e-6, 120e-6]) {
    expect(sizeEdges).toContain(size);
  }
});

test("distributionFromCounts(counts, cutoffs) gives the counts back, whatever the cutoffs", () => {
  fc.assert(
    fc.property(someCounts, someCutoffs, (counts, cutoffs) => {
      const back = countsPerMl(made(counts, cutoffs));
      expect(back.at4 / counts.at4).toBeCloseTo(1, 12);
      expect(back.at6 / counts.at6).toBeCloseTo(1, 12);
      expect(back.at14 / counts.at14).toBeCloseTo(1, 12);
    }),
  );
});

test("distributionFromCounts(counts) is straight in log count over log size, and keeps the slope below", () => {
  fc.assert(
    fc.property(someCounts, (counts) => {
      const fuel = made(counts);
      const slope = Math.log(counts.at6 / counts.at4) / Math.log(6 / 4);
      for (const size of [1, 2, 3, 5]) {
        const line = counts.at4 * (size / 4) ** slope * 1e6;
        expect(countFrom(fuel, size / 1e6) / line).toBeCloseTo(1, 11);
      }
      const upper = Math.log(counts.at14 / counts.at6) / Math.log(14 / 6);
      expect(countFrom(fuel, 10e-6) / (counts.at6 * (10 / 6) ** upper * 1e6)).toBeCloseTo(1, 11);
    }),
  );
});

test("distributionFromCounts(counts, cutoffs) has nothing beyond the cutoffs, and no negative bin", () => {
  fc.assert(
    fc.property(someCounts, someCutoffs, (counts, cutoffs) => {
      const { counts: bins, masses } = made(counts, cutoffs);
      for (let bin = 0; bin < binCount; bin++) {
        const outside = (sizeEdges[bin + 1] ?? 0) <= cutoffs.from || (sizeEdges[bin] ?? 0) >= cutoffs.to;
        if (outside) expect([bins[bin], masses[bin]]).toEqual([0, 0]);
        expect(bins[bin]).toBeGreaterThanOrEqual(0);
      }
    }),
  );
});

test("every bin's mass lies between that of its particles at the lower edge and at the upper", () => {
  fc.assert(
    fc.property(someFuel, ({ counts, masses }) => {
      for (let bin = 0; bin < binCount; bin++) {
        const [low, high] = [sizeEdges[bin] ?? 0, sizeEdges[bin + 1] ?? 0];
        const [count, mass] = [counts[bin] ?? 0, masses[bin] ?? 0];
        expect(mass).toBeGreaterThanOrEqual(count * sphere(low) * (1 - 1e-9));
        expect(mass).toBeLessThanOrEqual(count * sphere(high) * (1 + 1e-9));
      }
    }),
  );
});

test("distributionFromCounts(counts).extrapolated are shares of the mass beyond 4 and 14 um", () => {
  fc.assert(
    fc.property(someCounts, (counts) => {
      const fuel = made(counts);
      // Cut off at the outer counts themselves as far as may be, next to nothing is extrapolated.
      const bare = made(counts, { from: 4e-6, to: 14.0001e-6 });
      const counted = massOf(fuel) * (1 - fuel.extrapolated.below - fuel.extrapolated.above);
      const beyond = bare.extrapolated.above * massOf(bare);
      expect((counted - (massOf(bare) - beyond)) / massOf(fuel)).toBeCloseTo(0, 11);
      expect(bare.extrapolated.below).toBe(0);
      for (const share of [fuel.extrapolated.below, fuel.extrapolated.above]) {
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
      }
    }),
  );
});

test("distributionFromCounts(counts) of a slope of exactly 3, where mass is even over log size, is no special case", () => {
  const at = (slope: number) => massOf(made({ at4: 1000, at6: 1000 * 1.5 ** -slope, at14: 1000 * 3.5 ** -slope }));
  expect(at(3) / at(3 + 1e-9)).toBeCloseTo(1, 7);
  expect(at(3) / at(3 - 1e-9)).toBeCloseTo(1, 7);
});

test("distributionFromCounts(counts) does without one of the three sizes, not without two", () => {
  const line = { at4: 1000, at6: 1000 * 1.5 ** -2.5, at14: 1000 * 3.5 ** -2.5 };
  const whole = made(line);
  for (const size of ["at4", "at6", "at14"] as const) {
    const { [size]: _, ...others } = line;
    // With all three on one line any two draw it; above the last size the rest is shared out to that size's own count.
    expect(
      countsPerMl(made(others))[size === "at14" ? "at4" : size] / line[size === "at14" ? "at4" : size],
    ).toBeCloseTo(1, 12);
    expect(massOf(made(others)) / massOf(whole)).toBeGreaterThan(0.95);
    expect(distributionFromCounts({ [size]: 100 })).toEqual({ known: false, reason: "too few sizes counted" });
  }
});

test("distributionFromCode(code, end) has the code at the upper and middle counts, and the next lower at the lower", () => {
  const steps = fc.record({ at14: fc.integer({ min: 1, max: 12 }), six: fc.nat(5), four: fc.nat(3) });
  fc.assert(
    fc.property(steps, ({ at14, six, four }) => {
      const numbers = [at14 + six + four, at14 + six, at14];
      const code = parseCode(numbers.join("/"));
      const codeAt = (end: "upper" | "middle" | "lower") => {
        const fuel = distributionFromCode(code, end);
        return fuel.known ? printCode(codeOfDistribution(fuel)) : fuel.reason;
      };
      expect(codeAt("upper")).toBe(numbers.join("/"));
      expect(codeAt("middle")).toBe(numbers.join("/"));
      expect(codeAt("lower")).toBe(numbers.map((number) => number - 1).join("/"));
    }),
  );
});

test.each([
  [">28/20/14", "upper", "no such limit"],
  ["2/1/0", "lower", "no such limit"],
  ["2/1/0", "middle", "no such limit"],
  ["*/16/-", "upper", "too few sizes counted"],
  ["20/14/10", "upper", "more than 1 g/L of solids"],
  ["28/28/28", "upper", "more than 1 g/L of solids"],
] as const)("distributionFromCode(%s, %s) has no answer: %s", (code, end, reason) => {
  expect(distributionFromCode(parseCode(code), end)).toEqual({ known: false, reason });
});

test("distributionFromCode(code) goes by two sizes where the third was not counted, and says where few were", () => {
  const fuel = distributionFromCode(parseCode("*/16/>=13"));
  if (!fuel.known) throw new Error(fuel.reason);
  expect(countsPerMl(fuel).at6).toBeCloseTo(640, 9);
  expect(countsPerMl(fuel).at14).toBeCloseTo(80, 9);
  expect(fuel.fewCounted).toBe(true);
  const sure = distributionFromCode(parseCode("18/16/13"));
  expect(sure.known && sure.fewCounted).toBe(false);
});

test("massOf(distributionFromMass({ mass, dust })) is the mass", () => {
  fc.assert(
    fc.property(logBetween(1e-9, 1), fc.constantFrom("A2 fine", "A3 medium", "A4 coarse"), (mass, dust) => {
      expect(massOf(distributionFromMass({ mass, dust })) / mass).toBeCloseTo(1, 13);
    }),
  );
  expect(massOf(distributionFromMass({ mass: 0 }))).toBe(0);
});

test("countFrom(distribution, size) never grows with size", () => {
  fc.assert(
    fc.property(someFuel, between(0.7e-6, 150e-6), between(0.7e-6, 150e-6), (fuel, one, other) => {
      const [small, large] = [Math.min(one, other), Math.max(one, other)];
      expect(countFrom(fuel, large)).toBeLessThanOrEqual(countFrom(fuel, small) * (1 + 1e-12));
    }),
  );
});

test("mixDistributions(parts) weighs by amount and keeps all soil", () => {
  fc.assert(
    fc.property(someFuel, someFuel, between(0, 10), between(0.01, 10), (one, other, few, many) => {
      const mixed = mixDistributions([
        { amount: few, distribution: one },
        { amount: many, distribution: other },
      ]);
      const total = few * massOf(one) + many * massOf(other);
      expect((massOf(mixed) * (few + many)) / total).toBeCloseTo(1, 12);
    }),
  );
});
