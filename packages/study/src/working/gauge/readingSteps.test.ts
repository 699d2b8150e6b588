import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { EVENLY, oneGauge, plainBothSides, plainReadings } from "../../../../../tests/support/gaugeScenes.js";
import { plainSystem } from "../../../../../tests/support/plainSystem.js";
import { onePut } from "../../../../../tests/support/steps.js";
import type { Instant } from "../../gauge/Instant.js";
import { proofOf } from "../proof.js";
import type { Step } from "../Step.js";
import { meterAtStart, notedIn, readingAsNoted, readingStep, startStep, timeStep } from "./readingSteps.js";

const few = EVENLY.slice(0, 4);
const words = ({ origin }: Step) => (origin.by === "words" ? origin.words : origin.by);

test("notedIn(instant) tells the reading, and the line where it has one", () => {
  const of = (line: number | null) => notedIn({ reading: { row: 3, line } } as Instant);
  expect([of(9), of(null)]).toEqual(["noted: reading 3, line 9 of the readings", "noted: reading 3"]);
});

test("readingAsNoted(fit, instant) is the vacuum before the pump, and the feed pressure behind it", () => {
  const readings = plainReadings(few, (at) => ({ feedPressure: 60e3 - at }));
  const of = (side: "suction" | "delivery") => {
    const { explained } = oneGauge({ system: plainBothSides, side, readings });
    return { explained, instant: explained.instants[1] as Instant };
  };
  const before = of("suction");
  expect(readingAsNoted(before.explained, before.instant)).toEqual({
    name: "vacuum read",
    value: readings[1]?.vacuum,
    unit: "Pa",
    kind: "vacuum",
    origin: { by: "words", words: "noted: reading 2, line 3 of the readings", from: [] },
  });
  expect(readingStep(before.explained, before.instant)).toEqual(readingAsNoted(before.explained, before.instant));
  const behind = of("delivery");
  expect(readingAsNoted(behind.explained, behind.instant)).toMatchObject({
    name: "feed pressure read",
    value: 59999,
    kind: "pressure",
  });
  expect(readingStep(behind.explained, behind.instant)).toMatchObject({ name: "what was read", value: -59999 });
});

test("readingStep(fit, instant) of a machine without a pump may be a feed pressure at its one gauge", () => {
  const { explained } = oneGauge({
    system: {
      ...plainSystem,
      suction: [{ part: "rise", name: "drop", height: -3 }, ...plainSystem.suction.slice(1)],
      pump: { kind: "none" },
    },
    readings: plainReadings(few, (at) => ({ feedPressure: 20e3 - 300 * at })).map(({ vacuum: _, ...rest }) => rest),
  });
  const instant = explained.instants[2] as Instant;
  expect(readingStep(explained, instant).value).toBe(-19400);
  expect(readingAsNoted(explained, instant)).toMatchObject({ name: "feed pressure read", kind: "pressure" });
});

test("timeStep(fit, instant) by the hour meter goes from where the run began", () => {
  const { explained } = oneGauge({ readings: plainReadings(few) });
  const step = timeStep(explained, explained.instants[3] as Instant);
  expect([step.name, step.value]).toEqual(["running time at reading 4", 30 * 3600]);
  expect(onePut(step, "h")).toEqual({
    name: "hour meter",
    value: 1030 * 3600,
    unit: "s",
    kind: "running time",
    origin: { by: "words", words: "noted: reading 4, line 5 of the readings", from: [] },
  });
  expect(onePut(step, "b")).toMatchObject({
    name: "hour meter when the run began",
    value: 3.6e6,
    kind: "running time",
  });
});

test("timeStep(fit, instant) by dates counts days on the calendar, at the duty's hours", () => {
  const dated = plainReadings(few, (at) => ({ date: `2026-03-${10 + 4 * at}` })).map(({ hours: _, ...rest }) => rest);
  const { explained } = oneGauge({ readings: dated });
  const step = timeStep(explained, explained.instants[3] as Instant);
  // 12 days of a year of 250 working days of 4 hours.
  expect(step.value).toBeCloseTo((12 / 365.25) * 250 * 4 * 3600, 6);
  expect(step.value).toBeCloseTo(explained.instants[3]?.time ?? 0, 6);
  expect(step.name).toBe("running time at reading 4");
  expect(onePut(step, "n")).toEqual({
    name: "days since 2026-03-10",
    value: 12,
    unit: "d",
    kind: null,
    origin: { by: "words", words: "counted on the calendar", from: [] },
  });
  expect(onePut(step, "a")).toEqual({
    name: "calendar year of 365.25 days",
    value: 31557600,
    unit: "s",
    kind: "running time",
    origin: { by: "source", source: "definition" },
  });
  expect(proofOf({ step }).misses).toEqual([]);
});

test("meterAtStart(fit, value) says by what the run began", () => {
  const plain = (changed: boolean) => plainReadings(few, (at) => ({ changed: changed && at === 0 }));
  const changed: System = { ...plainSystem, service: { interval: 3.6e5, last: { hours: 999 * 3600 } } };
  const soiled: System = {
    ...plainSystem,
    suction: plainSystem.suction.map((part) => (part.part === "filter" ? { ...part, restriction: 1.1 } : part)),
  };
  const of = (system: System, isChanged: boolean) =>
    words(meterAtStart(oneGauge({ system, readings: plain(isChanged) }).explained, 5));
  expect([of(plainSystem, true), of(changed, false), of(soiled, false), of(plainSystem, false)]).toEqual([
    "at the change that the readings note",
    "at the last change, as the file states it",
    "at the first reading",
    "at the first reading, since nothing is known of a change",
  ]);
});

test("startStep(fit) is the change, or the first reading where nothing is known of one", () => {
  const of = (changed: boolean) =>
    startStep(oneGauge({ readings: plainReadings(few, (at) => ({ changed: changed && at === 0 })) }).explained);
  expect(of(true)).toEqual({
    name: "running time at the beginning",
    value: 0,
    unit: "s",
    kind: "running time",
    origin: { by: "words", words: "the run begins there", from: [] },
  });
  expect(of(false).name).toBe("running time at reading 1");
});
