import { expect, test } from "vitest";
import { dateOf } from "../../fleet/day.js";
import { Meter, type MeterReading } from "../../fleet/Meter.js";
import { proofOf } from "../proof.js";
import type { Step } from "../Step.js";
import { fromSource, inWords } from "../worked.js";
import { MeterTrack } from "./MeterTrack.js";
import { dutyRate, logRates } from "./rateSteps.js";

const ON = 150;
const read = (day: number, value: number, isNew = false): MeterReading => ({ day, value, isNew });

/** A meter as `fleet` follows it, and as its figures are worked out. */
function followed(of: "hours" | "distance", readings: readonly MeterReading[], duty: number | null = null) {
  const meter = Meter.of(readings, duty);
  if (meter === null) throw new Error("nothing tells how fast it runs");
  const unit = of === "hours" ? "s" : "m";
  const year = inWords("for a test", { name: "of a year", value: (duty ?? 0) * 365.25, unit });
  const rate = meter.rate.from === "log" ? logRates(of, readings).rate() : dutyRate(of, year);
  return { meter, track: new MeterTrack(of, meter, readings, { rate, on: ON }) };
}

const target = (value: number, unit: string) => fromSource("a test", { name: "total when due", value, unit });
const formulaOf = ({ origin }: Step) => (origin.by === "formula" ? origin.formula.id : origin.by);

const straight = [read(100, 0), read(110, 20), read(130, 120)];
const renewed = [read(80, 1000), read(100, 1100), read(102, 7, true), read(112, 57), read(112, 60), read(130, 140)];
const still = [read(80, 1000), read(131, 1000)];

const days = [60, 80, 90, 99, 100, 101, 102, 105, 110, 112, 120, 130, 131, 140, 150, 200];

test.each([
  ["even use", straight, null],
  ["a new meter and two rows on one day", renewed, null],
  ["no use", still, null],
  ["no readings, at the duty's rate", [], 4],
  ["one reading, at the duty's rate", [read(100, 500)], 4],
] as const)(
  "MeterTrack.at(day) and .when(total) come to the meter's own figures and prove: %s",
  (_, readings, duty) => {
    for (const of of ["hours", "distance"] as const) {
      const { meter, track } = followed(of, readings, duty);
      expect(track.rate.value * 86400).toBeCloseTo(meter.rate.perDay, 9);
      for (const day of days) {
        const step = track.at(day);
        expect(step.value, `on day ${day}`).toBeCloseTo(meter.at(day), 6);
        expect(step.unit).toBe(of === "hours" ? "s" : "m");
        expect(proofOf({ step }).misses).toEqual([]);
        const reached = meter.dayWhen(meter.at(day));
        const when = track.when(target(meter.at(day), step.unit));
        expect((when?.value ?? Number.NaN) + ON, `the total of day ${day}`).toBeCloseTo(reached, 6);
        if (when) expect(proofOf({ step: when }).misses).toEqual([]);
      }
    }
  },
);

test("MeterTrack.when(total) of a meter that stands still is null for more, and its first row for less", () => {
  const { track } = followed("hours", still);
  expect(track.when(target(1000.1, "s"))).toBeNull();
  const before = track.when(target(999, "s"));
  expect(before).toMatchObject({ name: "days from today to the nearest row", value: 80 - ON, unit: "d" });
  const there = track.when(target(1000, "s"));
  expect(there).toMatchObject({ name: "days from today to the row", value: 80 - ON, unit: "d" });
  expect(there?.origin).toEqual({ by: "words", words: "counted on the calendar", from: [] });
});

test("MeterTrack.at(day) is a row's own figure on its day, and reckoned from the nearest rows else", () => {
  const { track } = followed("hours", renewed);
  const of = (day: number) => formulaOf(track.at(day));
  expect(track.at(100)).toEqual({
    name: "hour meter",
    value: 1100,
    unit: "s",
    kind: "running time",
    origin: { by: "words", words: `read on ${dateOf(100)}, by the log or the list of machines`, from: [] },
  });
  expect([79, 81, 102, 105, 131].map(of)).toEqual([
    "total-onward-hours",
    "total-between-hours",
    "total-renewed-hours",
    "total-between-hours",
    "total-onward-hours",
  ]);
  // What was run while no meter was in counts at the rate of use; the new one began at 7.
  const rate = (20 * 5 + 133) / (20 + 28);
  expect(track.at(130).value).toBeCloseTo(1100 + 2 * rate + 140 - 7, 9);
});

test("MeterTrack of no readings starts from nothing, in words", () => {
  const { track } = followed("distance", [], 4);
  expect(track.at(0)).toEqual({
    name: "distance meter",
    value: 0,
    unit: "m",
    kind: "distance",
    origin: { by: "words", words: "no row of the log shows it; only what it gains matters", from: [] },
  });
  expect(track.at(10).value).toBeCloseTo(40, 12);
});

test.each(["hours", "distance"] as const)(
  "logRates(%j, readings) tells the last year's use, and its slowest and fastest stretch of 28 days",
  (of) => {
    const readings = [
      // More than a year before the last row: not looked at.
      read(0, 0),
      read(94, 9000),
      // The last year: 10 and 18 days make a stretch, 28 make one, and what is left over none.
      read(95, 9000),
      read(105, 9010),
      read(123, 9056),
      read(151, 9140),
      // A new meter breaks no stretch, but what it missed is not counted.
      read(160, 3, true),
      read(400, 3 + 240 * 5),
      read(460, 3 + 240 * 5 + 6),
    ];
    const { meter } = followed(of, readings);
    const rates = logRates(of, readings);
    const perDay = (step: Step) => step.value * 86400;
    // 10 + 46, 84, 1200 and 6 in 10 + 18, 28, 240 and 60 days.
    expect(perDay(rates.rate())).toBeCloseTo(1346 / 356, 9);
    expect(perDay(rates.least())).toBeCloseTo(6 / 60, 9);
    expect(perDay(rates.most())).toBeCloseTo(5, 9);
    expect([meter.rate.perDay, meter.rate.least, meter.rate.most]).toEqual(
      [perDay(rates.rate()), perDay(rates.least()), perDay(rates.most())].map((one) => expect.closeTo(one, 9)),
    );
    for (const step of [rates.rate(), rates.least(), rates.most()]) expect(proofOf({ step }).misses).toEqual([]);
    const { origin } = rates.most();
    const each = origin.by === "formula" ? (origin.inputs[0]?.steps ?? []) : [];
    expect(each.map((step) => Number(perDay(step).toFixed(6)))).toEqual([2, 3, 5, 0.1]);
  },
);
