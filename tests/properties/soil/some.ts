import {
  type BetaPoint,
  type CaptureGiven,
  type CountsPerMl,
  captureOf,
  distributionFromCounts,
  distributionFromMass,
  type KnownCapture,
  type LoadingLaw,
  type LoadingLawName,
  lawConstants,
  loadingLaw,
  type ParticleDistribution,
} from "@thirstline/core";
import fc from "fast-check";

// What the properties of soil are tried on.

/** A number with every order of magnitude alike. */
export const logBetween = (from: number, to: number) =>
  fc
    .double({ min: Math.log(from), max: Math.log(to), noNaN: true })
    .map((log) => Math.min(to, Math.max(from, Math.exp(log))));

/** A number, zero among them. */
export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Counts as fuels have them: slopes from flat to steep, but never so steep that solids beyond 1 g/L come out. */
export const someCounts: fc.Arbitrary<CountsPerMl> = fc
  .record({ at14: logBetween(0.01, 500), six: logBetween(1, 50), four: logBetween(1, 6) })
  .map(({ at14, six, four }) => ({ at14, at6: at14 * six, at4: at14 * six * four }));

/** Fuel by its counts, or with test dust in it. */
export const someFuel: fc.Arbitrary<ParticleDistribution> = fc.oneof(
  someCounts.map((counts) => {
    const made = distributionFromCounts(counts);
    if (!made.known) throw new Error(`no distribution of ${JSON.stringify(counts)}: ${made.reason}`);
    return made;
  }),
  fc
    .record({ mass: logBetween(1e-5, 0.1), dust: fc.constantFrom("A2 fine", "A3 medium", "A4 coarse") })
    .map(distributionFromMass),
);

const STATED_SIZES = [3, 4, 5, 6, 7, 10, 12, 14, 15, 20, 25, 30, 40, 70] as const;

/** One or more betas that never fall with size, at sizes that sheets state. */
export const someBetas: fc.Arbitrary<BetaPoint[]> = fc
  .record({
    sizes: fc.subarray([...STATED_SIZES], { minLength: 1, maxLength: 5 }),
    betas: fc.array(logBetween(1, 1e4), { minLength: 5, maxLength: 5 }),
  })
  .map(({ sizes, betas }) => {
    const rising = betas.slice(0, sizes.length).sort((one, other) => one - other);
    return sizes.map((size, at) => ({ size: size / 1e6, beta: rising[at] ?? 1 }));
  });

/** The capture of what is given, which must be known. */
export function known(given: CaptureGiven): KnownCapture {
  const found = captureOf(given);
  if (!found.known) throw new Error(found.reason);
  return found;
}

/** An element. */
export const someElement: fc.Arbitrary<KnownCapture> = fc
  .record({ betas: someBetas, leak: between(0, 1) })
  .map((given) => known(given));

export const lawNames = Object.keys(lawConstants) as LoadingLawName[];

/** A loading law of any kind whose constants are of the order of 1 per unit of load. */
export const someLaw: fc.Arbitrary<LoadingLaw> = fc
  .record({
    name: fc.constantFrom(...lawNames),
    cake: logBetween(0.05, 50),
    intermediate: logBetween(0.05, 5),
    standard: logBetween(0.05, 5),
    complete: logBetween(0.05, 5),
  })
  .map(({ name, ...constants }) =>
    loadingLaw(name, Object.fromEntries(lawConstants[name].map((one) => [one, constants[one]]))),
  );
