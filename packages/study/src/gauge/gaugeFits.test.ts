import { readFileSync } from "node:fs";
import { readReadings } from "@thirstline/spec";
import type { GaugeReading, System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { gauge } from "./gauge.js";
import { type GaugeFits, gaugeFits, suctionAt } from "./gaugeFits.js";

const HOUR = 3600;
const heron = () => demoSystem("heron");
const demo = (name: string): readonly GaugeReading[] => {
  const file = `heron-${name}.csv`;
  const read = readReadings(readFileSync(new URL(`../../../spec/demo/readings/${file}`, import.meta.url)), { file });
  if ("faults" in read) throw new Error("faults");
  return read.readings;
};
const reading = (hours: number, vacuum: number, more: Partial<GaugeReading> = {}): GaugeReading => ({
  row: hours,
  line: null,
  hours: (11_400 + hours) * HOUR,
  vacuum,
  temperature: 285,
  load: 1,
  depth: 0.6,
  changed: false,
  ...more,
});
const few = [reading(50, 6e3), reading(60, 6.2e3)];
const reasonOf = (system: System, readings: readonly GaugeReading[] = few) => {
  const fits = gaugeFits(system, readings, {});
  return "code" in fits ? fits : null;
};
const fitsOf = (system: System, readings: readonly GaugeReading[]): GaugeFits => {
  const fits = gaugeFits(system, readings, {});
  if ("code" in fits) throw new Error(fits.code);
  return fits;
};

test("gaugeFits(system, readings, options) says why nothing can be fitted", () => {
  expect(reasonOf({ ...heron(), suction: [], delivery: [] })).toEqual({ code: "no filter" });
  const tanks = heron().tanks.map((tank) => ({ ...tank, vent: { kind: "blocked" } as const }));
  expect(reasonOf({ ...heron(), tanks })).toEqual({ code: "shut" });
  expect(reasonOf(heron(), [])).toEqual({ code: "no readings", side: "suction" });
  const { vacuum: _, ...unread } = reading(50, 6e3);
  expect(reasonOf(heron(), [unread])).toEqual({ code: "no readings", side: "suction" });
  const { hours: _hours, ...dated } = { ...reading(50, 6e3), date: "2026-03-05" };
  expect(reasonOf(heron(), [dated, reading(50, 6e3)])).toEqual({ code: "hours and dates mixed" });
  expect(reasonOf(heron())).toBeNull();
});

test("gauge(system, readings) of what cannot be fitted says why, and nothing else", () => {
  expect(gauge({ ...heron(), suction: [], delivery: [] }, few)).toEqual({
    question: "gauge",
    system: "Heron, port engine",
    pump: "fixed",
    verdict: "cannot tell",
    findings: [],
    reasons: [{ code: "no filter" }],
    cautions: [],
    outliers: [],
    sides: [],
    left: null,
    leftWithout: null,
    readings: { all: 2, used: 0 },
  });
});

test("gauge(system, readings) of two readings tells of the machine and its elements, and that it needs more for hours", () => {
  const answer = gauge(heron(), few);
  expect(answer).toMatchObject({
    question: "gauge",
    system: "Heron, port engine",
    pump: "fixed",
    verdict: "cannot tell",
    findings: [],
    reasons: [{ code: "too few readings", count: 2, needed: 4 }],
    outliers: [],
    left: null,
    leftWithout: null,
    readings: { all: 2, used: 2 },
  });
  expect(answer.sides.map(({ side, readings }) => [side, readings])).toEqual([["suction", 2]]);
  expect(answer.cautions.map(({ code }) => code)).toEqual(["start", "one gauge", "no feed pressure"]);
});

test("gauge(system, readings) counts readings before a change, and leaves them out", () => {
  const earlier = [reading(10, 6e3), reading(20, 6.1e3)];
  const later = few.map((one, at) => ({ ...one, changed: at === 0 }));
  const answer = gauge(heron(), [...earlier, ...later]);
  expect(answer.readings).toEqual({ all: 4, used: 2 });
  expect(answer.cautions).toContainEqual({ code: "earlier readings", count: 2 });
});

test("gaugeFits(system, readings, options) names no growth from readings at fewer than four hours", () => {
  const steep = [1, 2, 3].map((at) => reading(40 * at, 4e3 + 5e3 * at));
  const { shown, suction } = fitsOf(heron(), steep);
  expect(suction?.soil.trend).toBe(true);
  expect(shown).toEqual([]);
  const { shown: enough } = fitsOf(heron(), [...steep, reading(160, 24e3)]);
  expect(enough.map(({ finding }) => finding)).toEqual([{ code: "loading", side: "suction" }]);
});

test("gaugeFits(system, readings, options) fits feed pressures alone where no vacuum was read", () => {
  const readings = [65e3, 62e3, 59e3, 56e3, 53e3].map((feedPressure, at) => {
    const { vacuum: _, ...rest } = reading(40 * at, 0);
    return { ...rest, feedPressure };
  });
  const { suction, delivery, lefts, settled } = fitsOf(heron(), readings);
  expect(suction).toBeNull();
  expect(settled).toEqual({ suction: null, delivery });
  expect(delivery?.weighed.run.instants.map(({ read }) => read)).toEqual([-65e3, -62e3, -59e3, -56e3, -53e3]);
  expect(lefts.map(({ side }) => side)).toEqual(["delivery"]);
});

test("suctionAt(facts, fit) has the elements before the pump as their gauge has them at a time, and clean without one", () => {
  const readings = [6e3, 8e3, 10e3, 12e3, 14e3].map((vacuum, at) => reading(50 * at, vacuum));
  const { facts, suction } = fitsOf(heron(), readings);
  const at = suctionAt(facts, suction);
  const [early, late] = [at(0), at(200 * HOUR)].map((state) => state.get("prefilter A") ?? 0);
  expect(early).toBeLessThan(1.5);
  expect(late).toBeGreaterThan(2);
  expect(suctionAt(facts, null)(200 * HOUR)).toEqual(
    new Map([
      ["prefilter A", 1],
      ["prefilter B", expect.closeTo(1, 9)],
    ]),
  );
  const soiled = { ...facts, run: { ...facts.run, start: { known: true, ratio: 3, by: "stated" } as const } };
  expect(suctionAt(soiled, null)(0).get("prefilter A")).toBe(3);
  const unknown = { ...facts, run: { ...facts.run, start: { known: false } as const } };
  expect(suctionAt(unknown, null)(0).get("prefilter A")).toBe(1);
});

test("gaugeFits(system, readings, options) begins behind the pump with what the file states there, not before it", () => {
  const { service: _, ...system } = heron();
  const soil = (parts: System["suction"], restriction: number): System["suction"] =>
    parts.map((part) => {
      if (part.part === "bank") return { ...part, branches: part.branches.map((one) => soil(one, restriction)) };
      return part.part === "filter" ? { ...part, restriction } : part;
    });
  const soiled = { ...system, suction: soil(system.suction, 3), delivery: soil(system.delivery ?? [], 1.5) };
  const readings = few.map((one) => ({ ...one, feedPressure: 60e3 }));
  const { suction, delivery } = fitsOf(soiled, readings);
  expect(suction?.weighed.run.start).toEqual({ known: true, ratio: 3, by: "stated" });
  expect(delivery?.weighed.run.start).toMatchObject({ known: true, by: "stated" });
  const start = delivery?.weighed.run.start;
  expect(start?.known && start.ratio).toBeCloseTo(1.5, 6);
});

test("gaugeFits(system, readings, options) goes by what was read since a jump, of which the start is not known", () => {
  const readings = demo("jump").filter((_, at) => at % 2 === 0);
  const { shown, suction, delivery, settled } = fitsOf(heron(), readings);
  const [jump] = shown.flatMap(({ finding }) => (finding.code === "jump" ? [finding] : []));
  expect(jump?.side).toBe("suction");
  const rows = settled.suction?.weighed.run.instants.map(({ reading: { row } }) => row) ?? [];
  expect(rows[0]).toBe(jump?.from.row);
  expect(rows.at(-1)).toBe(readings.at(-1)?.row);
  expect(settled.suction?.weighed.run.start).toEqual({ known: false });
  expect(settled.suction?.weighed.zeroSpread).toBe(suction?.weighed.zeroSpread);
  expect(settled.suction?.weighed.prior.weight).toBe(4);
  // The other side has none, and all that was read counts.
  expect(settled.delivery).toBe(delivery);
});

test("gaugeFits(system, readings, options) draws otherwise for another seed, which is 1 when left out", () => {
  const readings = [6e3, 8.2e3, 9.9e3, 12.1e3].map((vacuum, at) => reading(50 * at, vacuum));
  const ratioOf = (options: { readonly seed?: number }) => {
    const fits = gaugeFits(heron(), readings, options);
    return "code" in fits ? null : fits.suction?.soil.ratio;
  };
  expect(ratioOf({ seed: 1 })).toEqual(ratioOf({}));
  expect(ratioOf({ seed: 2 })).not.toEqual(ratioOf({}));
});

test("gauge(system, readings) of soil alone says that it is the filter, and the hours left", () => {
  const readings = demo("loading").filter((_, at) => at % 4 === 0);
  const answer = gauge(heron(), readings);
  expect(answer.verdict).toBe("filter");
  expect(answer.left?.middle).toBeGreaterThan(50 * HOUR);
  expect(answer.reasons).toEqual([]);
});

test("gauge(system, readings) names a reading that stands off on either side, and the hours left without it", () => {
  const off = (row: number) => (one: GaugeReading, at: number) =>
    at === row ? { ...one, vacuum: (one.vacuum ?? 0) + 12e3, feedPressure: (one.feedPressure ?? 0) - 12e3 } : one;
  const readings = demo("loading").filter((_, at) => at % 2 === 0);
  const answer = gauge(heron(), readings.map(off(6)));
  const row = readings[6]?.row;
  expect(answer.outliers.map((one) => [one.side, one.row])).toContainEqual(["suction", row]);
  expect(answer.leftWithout?.middle).toBeGreaterThan(0);
  expect(answer.leftWithout?.middle).not.toBe(answer.left?.middle);
  // The vacuum that was read stands in for what is reckoned, so behind the pump it takes a feed pressure alone.
  const behind = gauge(
    heron(),
    readings.map((one, at) => (at === 6 ? { ...one, feedPressure: (one.feedPressure ?? 0) - 15e3 } : one)),
  );
  expect(behind.outliers.map((one) => [one.side, one.row])).toEqual([["delivery", row]]);
});
