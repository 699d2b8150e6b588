import { captureOf, countFrom, distributionFromCounts, distributionFromMass, throughStages } from "@thirstline/core";
import { expect, test } from "vitest";

const betas = [
  { size: 4e-6, beta: 2 },
  { size: 10e-6, beta: 75 },
];

test("captureOf({ betas }) is the same in whatever order they stand, and says what kind of test they are from", () => {
  const [one, other] = [captureOf({ betas }), captureOf({ betas: [...betas].reverse() })];
  expect(one).toEqual(other);
  expect(one.known && one.cautions[0]).toEqual({ code: "betas from test dust" });
});

test("captureOf({ betas }) of two is certain, of one a band about its line", () => {
  const [two, single] = [captureOf({ betas }), captureOf({ betas: betas.slice(1) })];
  if (!two.known || !single.known) throw new Error("both are known");
  expect(two.efficiency.low).toBe(two.efficiency.high);
  expect(single.cautions.map(({ code }) => code)).toContain("one beta point");
  const [low = 0, middle = 0, high = 0] = (["low", "middle", "high"] as const).map((end) =>
    single.efficiency[end].reduce((sum, share) => sum + share, 0),
  );
  expect(low).toBeLessThan(middle);
  expect(middle).toBeLessThan(high);
});

test("captureOf({ rating: absolute }) says that it was taken as beta 75, and stated betas do not", () => {
  const rating = { size: 10e-6, kind: "absolute" } as const;
  const codes = (given: Parameters<typeof captureOf>[0]) => {
    const capture = captureOf(given);
    return capture.known ? capture.cautions.map(({ code }) => code) : [];
  };
  expect(codes({ rating })).toEqual(["betas from test dust", "absolute taken as beta 75", "one beta point"]);
  expect(codes({ rating, betas })).not.toContain("absolute taken as beta 75");
});

test("captureOf({ betas }) runs on below the first size as the line does, and no flatter than through no size", () => {
  const shareAt = (beta: number) => {
    const capture = captureOf({
      betas: [
        { size: 10e-6, beta },
        { size: 20e-6, beta: 1000 },
      ],
    });
    return capture.known ? capture.efficiency.middle.filter((share) => share === 0).length : Number.NaN;
  };
  // Steep from 10 to 20 um: below 10 um it soon catches nothing; flat from there it catches nearly down to the smallest.
  expect(shareAt(2)).toBeGreaterThan(10 * shareAt(900));
});

test("throughStages(fuel, stages) knows all only where every stage is known", () => {
  const fuel = distributionFromMass({ mass: 1e-3 });
  const [known, unknown] = [captureOf({ betas }), captureOf({})];
  expect(throughStages(fuel, [{ capture: known }]).known).toBe(true);
  expect(throughStages(fuel, [{ capture: known }, { capture: unknown }]).known).toBe(false);
});

test("distributionFromCounts(two sizes) has what was counted between them, and all of it above the cutoff", () => {
  const counts = { at4: 1000e6, at6: 300e6 };
  const found = distributionFromCounts({ at4: 1000, at6: 300 });
  if (!found.known) throw new Error(found.reason);
  expect(countFrom(found, 6e-6) / counts.at6).toBeCloseTo(1, 6);
  expect(countFrom(found, 4e-6) / counts.at4).toBeCloseTo(1, 6);
  expect(distributionFromCounts({ at4: 1000 })).toEqual({ known: false, reason: "too few sizes counted" });
  expect(distributionFromCounts({})).toEqual({ known: false, reason: "too few sizes counted" });
});
