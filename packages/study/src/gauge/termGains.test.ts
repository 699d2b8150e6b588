import { expect, test } from "vitest";
import { instantsOf, level, newRun, proportional, weighedOf } from "../../../../tests/support/gaugeRuns.js";
import { fitAt } from "./fit/fitLeastSquares.js";
import { placeAt } from "./fit/polish.js";
import { solveDamped } from "./fit/solveDamped.js";
import { type Fitted, fitOne, type Weighed } from "./fitAll.js";
import { runModel } from "./runModel.js";
import { flat, type Shape, shapes } from "./shapes.js";
import type { Term } from "./Term.js";
import { termGains } from "./termGains.js";

const fittedTo = (weighed: Weighed, shape: Shape = flat) => fitOne(weighed, shape, [], []) as Fitted;
const gainsOf = (weighed: Weighed) => termGains(weighed, fittedTo(weighed));
/** Six readings of clean elements, each a sigma 10 of which are one time the clean resistance. */
const stepped = weighedOf(newRun(instantsOf([1000, 1000, 1000, 1500, 1500, 1500])));

test("termGains(weighed, fitted)(step) is worked out by hand where nothing else can move", () => {
  // Three readings miss by 5 sigmas: 75 in all, and half the clean resistance makes up for every one of them.
  const gain = gainsOf(stepped)({ kind: "step", at: 3 });
  expect(gain?.size).toBeCloseTo(0.5, 6);
  expect(gain?.deviations).toBeCloseTo(Math.sqrt(75), 6);
  expect(gain?.parts).toEqual({
    square: expect.closeTo(300, 4),
    pull: expect.closeTo(-150, 4),
    squareTaken: expect.closeTo(0, 3),
    pullTaken: expect.closeTo(0, 3),
  });
  // Ten as it were readings; of the sum of 79 the 4 known beforehand are left.
  expect(gain?.deviance).toBeCloseTo(10 * Math.log(4), 4);
});

test("termGains(weighed, fitted)(step) from elsewhere wins less: the readings in between speak against it", () => {
  const gain = gainsOf(stepped)({ kind: "step", at: 2 });
  // Of four readings one misses nothing: the mean of 0, 5, 5, 5 over 10, and 4 x 3.75^2 of the 75 is won.
  expect(gain?.size).toBeCloseTo(0.375, 6);
  expect(gain?.deviance).toBeCloseTo(10 * Math.log(79 - 56.25), 4);
});

test("termGains(weighed, fitted)(outlier) is the miss of its reading alone", () => {
  const gain = gainsOf(stepped)({ kind: "outlier", at: 4 });
  expect(gain).toMatchObject({ size: expect.closeTo(5, 6), deviations: expect.closeTo(5, 6) });
  expect(gain?.parts).toMatchObject({ square: 1, pull: expect.closeTo(-5, 6) });
  expect(gain?.deviance).toBeCloseTo(10 * Math.log(54), 6);
});

test("termGains(weighed, fitted) lets steps and readings that stand off go either way", () => {
  const gains = gainsOf(weighedOf(newRun(instantsOf([1000, 1000, 1000, 700, 700, 700]))));
  expect(gains({ kind: "step", at: 3 })?.size).toBeCloseTo(-0.3, 6);
  expect(gains({ kind: "outlier", at: 3 })?.size).toBeCloseTo(-3, 6);
});

test("termGains(weighed, fitted)(thin) is less flow only: null where more of it would explain the readings", () => {
  const thin = { kind: "thin", at: 3 } as const;
  const run = (late: number) => newRun(instantsOf([1000, 1000, 1000, late, late, late], undefined, proportional));
  expect(gainsOf(weighedOf(run(700)))(thin)?.size).toBeGreaterThan(0.2);
  expect(gainsOf(weighedOf(run(1300)))(thin)).toBeNull();
});

test("termGains(weighed, fitted)(cold) is more in the cold only", () => {
  const cold = { kind: "cold", below: 288 } as const;
  const run = (read: number) =>
    newRun(instantsOf([1000, read, 1000, read], (at) => (at % 2 === 1 ? { temperature: 278 } : {})));
  // 10 K colder makes so much as the size says.
  expect(gainsOf(weighedOf(run(1400)))(cold)?.size).toBeCloseTo(0.4, 6);
  expect(gainsOf(weighedOf(run(600)))(cold)).toBeNull();
});

test("termGains(weighed, fitted)(fall) is resistance that goes with time, and no matter of any law of growth", () => {
  const run = {
    instants: instantsOf([3000, 2500, 2000, 1500, 1000]),
    start: { known: true, ratio: 3, by: "stated" } as const,
  };
  const weighed = weighedOf(run);
  expect(gainsOf(weighed)({ kind: "fall" })?.size).toBeCloseTo(2, 6);
  const [cake] = shapes;
  expect(termGains(weighed, fittedTo(weighed, cake))({ kind: "fall" })).toBeNull();
  const rising = weighedOf({ ...run, instants: instantsOf([3000, 3500, 4000, 4500, 5000]) });
  expect(gainsOf(rising)({ kind: "fall" })).toBeNull();
});

test("termGains(weighed, fitted) says null where the fit's own parameters do all that the term would", () => {
  // A zero of which nothing is known does what a step from the first reading on does.
  const free = weighedOf(stepped.run, { zeroSpread: 1e8 });
  expect(gainsOf(free)({ kind: "step", at: 0 })).toBeNull();
  expect(gainsOf(free)({ kind: "step", at: 3 })).not.toBeNull();
});

// All else linear, a term's size and its error are those of a fit of everything at once.
const growing = shapes.find(({ law }) => law === "cake") as Shape;
const reads = [1050, 1130, 1190, 1650, 1720, 1770, 1900, 1930];
const mixed = instantsOf(
  reads,
  (at) => ({ temperature: 288 - 2 * (at % 4), ...(at % 2 ? { table: level } : {}) }),
  proportional,
);
const sigmas = Float64Array.from(reads, (_, at) => 80 + 10 * at);
const terms: readonly Term[] = [
  { kind: "outlier", at: 3 },
  { kind: "step", at: 3 },
  { kind: "step", at: 6 },
  { kind: "thin", at: 2 },
  { kind: "thin", at: 6 },
  { kind: "cold", below: 286 },
  { kind: "fall" },
];

test.each([
  ["no growth from new", flat, true],
  ["growth from new", growing, true],
  ["no growth from nobody knows what", flat, false],
  ["growth from nobody knows what", growing, false],
] as const)("termGains(weighed, fitted) agrees with everything fitted at once: %s", (_, shape, known) => {
  const start = known ? ({ known, ratio: 1, by: "stated" } as const) : ({ known } as const);
  const weighed = weighedOf({ instants: mixed, start }, { zeroSpread: 60, sigmas });
  const fitted = fittedTo(weighed, shape);
  const gains = termGains(weighed, fitted);
  let asked = 0;
  for (const term of terms) {
    const { problem } = runModel(weighed.run, weighed.zeroSpread, shape, [term]);
    // Not at 0, where a difference is taken over too little to be exact.
    const parameters = [...fitted.fit.parameters, 1e-4];
    const { misses } = problem(sigmas, [parameters]);
    const whole = fitAt({ misses, starts: [parameters] }, placeAt(misses, parameters));
    const size = 1e-4 + (solveDamped(whole.slopes, whole.misses, 0)?.at(-1) ?? Number.NaN);
    const error = Math.sqrt(whole.covariance.at(-1)?.at(-1) ?? Number.NaN);
    const gain = gains(term);
    if (gain === null) {
      const isLawless = term.kind === "fall" && shape === growing;
      expect(isLawless || (size <= 0 && term.kind !== "step" && term.kind !== "outlier"), term.kind).toBe(true);
      continue;
    }
    asked++;
    expect(gain.size / size, term.kind).toBeCloseTo(1, 3);
    expect(gain.deviations / (size / error), term.kind).toBeCloseTo(1, 3);
    const { square, squareTaken, pull, pullTaken } = gain.parts;
    expect(1 / (square - squareTaken) / error ** 2, term.kind).toBeCloseTo(1, 3);
    expect((pullTaken - pull) / (square - squareTaken) / size, term.kind).toBeCloseTo(1, 3);
  }
  expect(asked).toBeGreaterThan(3);
});
