import {
  bankEfficiency,
  binCount,
  captureOf,
  caughtMass,
  countFrom,
  dirtierThan,
  distributionFromMass,
  type Efficiency,
  massOf,
  type ParticleDistribution,
  throughFilter,
  throughStages,
} from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { between, known, logBetween, someBetas, someElement, someFuel } from "./some.js";

/** The most by which one distribution is above another in any bin, as a share of it. */
function mostAbove(one: ArrayLike<number>, other: ArrayLike<number>): number {
  let most = 0;
  for (let bin = 0; bin < one.length; bin++) {
    const [value, limit] = [one[bin] ?? 0, other[bin] ?? 0];
    if (value > limit) most = Math.max(most, (value - limit) / limit);
  }
  return most;
}

const isDirtier = (one: ParticleDistribution, other: ParticleDistribution) =>
  Math.max(mostAbove(one.counts, other.counts), mostAbove(one.masses, other.masses));

const leastShare = (efficiency: Efficiency) => Math.min(...efficiency);
const mostShare = (efficiency: Efficiency) => Math.max(...efficiency);

test("throughFilter(fuel, efficiency) gains particles in no bin", () => {
  fc.assert(
    fc.property(someFuel, someElement, (fuel, element) => {
      for (const efficiency of Object.values(element.efficiency)) {
        expect(leastShare(efficiency)).toBeGreaterThanOrEqual(0);
        expect(mostShare(efficiency)).toBeLessThanOrEqual(1);
        expect(isDirtier(throughFilter(fuel, efficiency), fuel)).toBe(0);
      }
    }),
  );
});

test("throughStages(fuel, stages): what came in was caught or passed, stage by stage", () => {
  fc.assert(
    fc.property(someFuel, fc.array(someElement, { maxLength: 4 }), (fuel, elements) => {
      const result = throughStages(
        fuel,
        elements.map((capture) => ({ capture })),
      );
      expect((result.caught + result.passed) / massOf(fuel)).toBeCloseTo(1, 9);
      for (const stage of result.stages) {
        if (!stage.known) throw new Error(stage.reason);
        expect((stage.caught + massOf(stage.outgoing)) / massOf(stage.incoming)).toBeCloseTo(1, 9);
      }
      const shares = result.stages.reduce((sum, stage) => sum + (stage.known ? stage.share : 0), 0);
      expect(shares).toBeCloseTo(result.caught > 0 ? 1 : 0, 9);
    }),
  );
});

test("throughStages(fuel, stages): cleaner fuel in never gives dirtier fuel out", () => {
  const shares = fc.array(between(0, 1), { minLength: binCount, maxLength: binCount });
  fc.assert(
    fc.property(someFuel, shares, someElement, someElement, (fuel, kept, one, other) => {
      const part = (values: Float64Array) => values.map((value, bin) => value * (kept[bin] ?? 0));
      const cleaner = { counts: part(fuel.counts), masses: part(fuel.masses) };
      const stages = [{ capture: one }, { capture: other }];
      const [out, cleanerOut] = [throughStages(fuel, stages), throughStages(cleaner, stages)];
      expect(isDirtier(cleanerOut.outgoing, out.outgoing)).toBe(0);
      expect(dirtierThan(cleanerOut.code, out.code)).toEqual([]);
    }),
  );
});

test("throughStages(fuel, stages) gives the same fuel in whichever order the stages stand", () => {
  fc.assert(
    fc.property(someFuel, someElement, someElement, (fuel, one, other) => {
      const there = throughStages(fuel, [{ capture: one }, { capture: other }]).outgoing;
      const back = throughStages(fuel, [{ capture: other }, { capture: one }]).outgoing;
      expect(isDirtier(there, back)).toBeLessThan(1e-14);
      expect(isDirtier(back, there)).toBeLessThan(1e-14);
    }),
  );
});

test("captureOf({ betas }) gives the stated betas back on the test dust, or says what it holds instead", () => {
  const dusts = fc.constantFrom("A2 fine", "A3 medium", "A4 coarse");
  fc.assert(
    fc.property(someBetas, dusts, (betas, dust) => {
      const element = known({ betas, dust });
      const before = distributionFromMass({ mass: 1, dust });
      const behind = throughFilter(before, element.efficiency.middle);
      for (const { size, beta } of betas) {
        const got = countFrom(before, size) / countFrom(behind, size);
        const moved = element.cautions.find((one) => one.code === "beta moved" && one.size === size);
        if (moved?.code === "beta moved") {
          expect(moved.stated).toBe(beta);
          expect(got / moved.held).toBeCloseTo(1, 8);
          expect(moved.held / beta).toBeGreaterThan(1.01);
        } else {
          expect(got / beta).toBeGreaterThan(1 - 1e-9);
          expect(got / beta).toBeLessThanOrEqual(1.01 + 1e-9);
        }
      }
    }),
  );
});

test("captureOf({ betas }) meets beta exactly at every edge above which no bin was held back", () => {
  const element = known({
    betas: [
      { size: 10e-6, beta: 2 },
      { size: 25e-6, beta: 75 },
    ],
  });
  const before = distributionFromMass({ mass: 1 });
  const behind = throughFilter(before, element.efficiency.middle);
  for (const size of [10, 12, 14, 15, 20, 25]) {
    const line = 2 * (75 / 2) ** ((size - 10) / 15);
    expect(countFrom(before, size / 1e6) / countFrom(behind, size / 1e6) / line).toBeCloseTo(1, 12);
  }
  for (const size of [30, 40, 80]) {
    expect(countFrom(before, size / 1e6) / countFrom(behind, size / 1e6)).toBeCloseTo(75, 9);
  }
});

test("captureOf({ betas: one point }) of a larger beta, or the same at a smaller size, dirties no bin", () => {
  const size = between(3e-6, 60e-6);
  fc.assert(
    fc.property(someFuel, size, size, logBetween(1, 1e4), logBetween(1, 1e4), (fuel, one, other, few, many) => {
      const coarse = known({ betas: [{ size: Math.max(one, other), beta: Math.min(few, many) }] });
      const fine = known({ betas: [{ size: Math.min(one, other), beta: Math.max(few, many) }] });
      for (const end of ["low", "middle", "high"] as const) {
        const [worse, better] = [coarse, fine].map((element) => throughFilter(fuel, element.efficiency[end]));
        if (!worse || !better) throw new Error("nothing came through");
        expect(isDirtier(better, worse)).toBeLessThan(1e-9);
      }
    }),
  );
});

test("captureOf({ betas }) with every log beta raised alike dirties no bin", () => {
  fc.assert(
    fc.property(someFuel, someBetas, between(1, 3), (fuel, betas, times) => {
      const raised = betas.map(({ size, beta }) => ({ size, beta: beta ** times }));
      const before = throughFilter(fuel, known({ betas }).efficiency.middle);
      const after = throughFilter(fuel, known({ betas: raised }).efficiency.middle);
      expect(isDirtier(after, before)).toBeLessThan(1e-9);
    }),
  );
});

test("captureOf({ betas: one point }) is a band that rises from low to high in every bin, and says so", () => {
  fc.assert(
    fc.property(between(3e-6, 60e-6), logBetween(1.1, 1e4), (size, beta) => {
      const element = known({ betas: [{ size, beta }] });
      expect(mostAbove(element.efficiency.low, element.efficiency.middle)).toBeLessThan(1e-12);
      expect(mostAbove(element.efficiency.middle, element.efficiency.high)).toBeLessThan(1e-12);
      expect(element.cautions).toContainEqual({ code: "one beta point" });
    }),
  );
});

test("captureOf({ leak }): a leak of 1 passes everything, and more leak never catches more", () => {
  fc.assert(
    fc.property(someFuel, someBetas, between(0, 1), between(0, 1), (fuel, betas, one, other) => {
      const caughtAt = (leak: number) => caughtMass(fuel, known({ betas, leak }).efficiency.middle);
      expect(caughtAt(1)).toBe(0);
      expect(caughtAt(Math.max(one, other))).toBeLessThanOrEqual(caughtAt(Math.min(one, other)) * (1 + 1e-12));
    }),
  );
});

test.each([
  [{ rating: { size: 10e-6, kind: "nominal" } }, "nominal rating"],
  [{}, "no beta stated"],
  [{ betas: [{ size: 10e-6, beta: 75 }], reversed: true }, "fitted backwards"],
] as const)("captureOf(%j) is unknown, with the reason and no number: %s", (given, reason) => {
  expect(captureOf(given)).toEqual({ known: false, reason });
});

test("captureOf({ rating }) of a beta rating is that one point; absolute is taken as beta 75, and says so", () => {
  const stated = known({ betas: [{ size: 10e-6, beta: 75 }] });
  const rated = known({ rating: { size: 10e-6, kind: "beta 75" } });
  const absolute = known({ rating: { size: 10e-6, kind: "absolute" } });
  expect(rated).toEqual(stated);
  expect(absolute.efficiency).toEqual(stated.efficiency);
  expect(absolute.cautions).toContainEqual({ code: "absolute taken as beta 75" });
  expect(rated.cautions).not.toContainEqual({ code: "absolute taken as beta 75" });
});

test("throughStages(fuel, stages) lets everything through a stage of unknown capture, and says so", () => {
  const fuel = distributionFromMass({ mass: 5e-3 });
  const fine = known({ betas: [{ size: 4e-6, beta: 75 }] });
  const nominal = captureOf({ rating: { size: 10e-6, kind: "nominal" } });
  const result = throughStages(fuel, [
    { name: "prefilter", capture: nominal },
    { name: "fine filter", capture: fine },
  ]);
  expect(result.known).toBe(false);
  expect(result.stages[0]).toMatchObject({ name: "prefilter", known: false, reason: "nominal rating" });
  expect(result.stages[0]).not.toHaveProperty("caught");
  expect(result.outgoing).toEqual(throughStages(fuel, [{ capture: fine }]).outgoing);
});

test("bankEfficiency(branches) catches what its branches catch between them", () => {
  fc.assert(
    fc.property(
      someFuel,
      someElement,
      someElement,
      between(0.01, 1),
      between(0, 1),
      (fuel, one, other, much, little) => {
        const efficiency = bankEfficiency([
          { flow: much, efficiency: one.efficiency.middle },
          { flow: little, efficiency: other.efficiency.middle },
        ]);
        const apart =
          much * caughtMass(fuel, one.efficiency.middle) + little * caughtMass(fuel, other.efficiency.middle);
        expect(caughtMass(fuel, efficiency) * (much + little)).toBeCloseTo(apart, 12);
        expect(mostShare(efficiency)).toBeLessThanOrEqual(1);
      },
    ),
  );
});
