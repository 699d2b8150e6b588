import { expect, test } from "vitest";
import { instantsOf, newRun, proportional } from "../../../../tests/support/gaugeRuns.js";
import type { Run } from "./Instant.js";
import { FAR, weigh, weighings } from "./weigh.js";

const wobble = [60, -90, 30, -30, 90, -60, 45, -75];
const near = (values: ArrayLike<number>, wanted: readonly number[], places = 6) =>
  expect([...Array.from(values)]).toEqual(wanted.map((one) => expect.closeTo(one, places)));
const cleanRun = (size = 1) =>
  newRun(
    instantsOf(
      wobble.map((one) => 1000 + size * one),
      undefined,
      proportional,
    ),
  );

test("weighings(run, zeroSpread, weight) goes round twice, each time from how the readings were weighed before", () => {
  const { weighed, rounds } = weighings(cleanRun(), 100, 4);
  expect(rounds).toHaveLength(2);
  const [first, second] = rounds;
  // As usual before: nothing is scaled yet, and what is known beforehand is the usual scatter of so many readings.
  expect(first?.before.prior).toEqual({ weight: 4, sum: 4 });
  expect(first?.scales[0]).toBe(1);
  expect(second?.before.sigmas).not.toEqual(first?.before.sigmas);
  expect(weighed.prior.weight).toBe(4);
  expect(weighed.run).toBe(first?.before.run);
  expect(weighed.zeroSpread).toBe(100);
});

test("weighings(run, zeroSpread, weight) first takes gauge, demand and viscosity as they usually are", () => {
  const [first] = weighings(cleanRun(0), 100, 4).rounds;
  // 100 Pa, and 5 % and 2 % of the kilopascal that clean elements read.
  near(
    first?.before.sigmas ?? [],
    wobble.map(() => Math.hypot(100, 50, 20)),
  );
});

test("weighings(run, zeroSpread, weight) takes the shares of what is read at the resistance then", () => {
  const grown = newRun(instantsOf([1000, 2000, 3000, 4000, 5000, 6000], undefined, proportional));
  const [first] = weighings(grown, 100, 4).rounds;
  near(
    first?.before.sigmas ?? [],
    [1, 2, 3, 4, 5, 6].map((ratio) => Math.hypot(100, 50 * ratio, 20 * ratio)),
    2,
  );
});

test("weighings(run, zeroSpread, weight) does not take readings under clean elements for less than clean, nor under what the file states", () => {
  const low = (start: Run["start"]) =>
    weighings({ instants: instantsOf([400, 400, 400, 400], undefined, proportional), start }, 100, 4).rounds[0]?.before
      .sigmas[0];
  expect(low({ known: true, ratio: 1, by: "last change" })).toBeCloseTo(Math.hypot(100, 50, 20), 6);
  expect(low({ known: false })).toBeCloseTo(Math.hypot(100, 50, 20), 6);
  expect(low({ known: true, ratio: 3, by: "stated" })).toBeCloseTo(Math.hypot(100, 150, 60), 6);
});

test("weigh(run, zeroSpread, weight) scales every sigma to what the best law misses, against what is usual", () => {
  const { weighed, rounds } = weighings(cleanRun(), 100, 4);
  for (const [at, { before, best, sum, free, scales }] of rounds.entries()) {
    const misses = [...best.fit.misses.subarray(0, 8)];
    expect(sum).toBeCloseTo(
      misses.reduce((total, one) => total + Math.min(FAR, Math.abs(one)) ** 2, 0),
      9,
    );
    expect(free).toBe(8 - best.model.growing);
    const scale = Math.sqrt((before.prior.sum + sum) / (4 + free));
    expect(scales[1]).toBeCloseTo(at === 0 ? scale : scale * (rounds[0]?.scales[1] ?? 0), 9);
  }
  const [, all = 0] = rounds[1]?.scales ?? [];
  near(
    weighed.sigmas,
    wobble.map(() => all * Math.hypot(100, 50, 20)),
  );
  expect(weighed.prior.sum).toBeCloseTo(4 / all ** 2, 9);
});

test("weigh(run, zeroSpread, weight) grows with the scatter, and the less the more the usual weighs", () => {
  const last = (size: number, weight: number) => weigh(cleanRun(size), 100, weight).sigmas[7] as number;
  expect(last(10, 4)).toBeGreaterThan(1.5 * last(1, 4));
  expect(last(10, 40)).toBeLessThan(last(10, 4));
  // Of no scatter at all the usual remains in part: 4 of 4 + 8 readings.
  expect(last(0, 4)).toBeCloseTo(Math.hypot(100, 50, 20) * Math.sqrt(4 / 12), 2);
});

test("weigh(run, zeroSpread, weight) does not let one bad reading be scatter", () => {
  const bad = (off: number) => {
    const reads = wobble.map((one, at) => 1000 + one + (at === 4 ? off : 0));
    return weigh(newRun(instantsOf(reads, undefined, proportional)), 100, 12).sigmas[0] as number;
  };
  // Some thirty times as far off, it counts for a little more by what it does to the fit.
  expect(bad(1e5) / bad(3000)).toBeLessThan(1.5);
});

test("weigh(run, zeroSpread, weight) of one reading leaves it as it usually is", () => {
  const { weighed, rounds } = weighings(newRun(instantsOf([1000], undefined, proportional)), 100, 4);
  expect(rounds[0]?.free).toBe(1);
  near(weighed.sigmas, [Math.hypot(100, 50, 20) * Math.sqrt(4 / 5)]);
});
