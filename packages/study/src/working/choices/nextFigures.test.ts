import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { figureLines } from "../../../../../tests/properties/working/figureLines.js";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { demoSystem, unpredicted } from "../../../../../tests/support/fleets.js";
import type { CardAnswer } from "../../card/CardAnswer.js";
import type { CardOptions } from "../../card/card.js";
import { proofOf } from "../proof.js";
import { nextFigures } from "./nextFigures.js";

const HOUR = 3600;
/** 1 320 h and 45 000 km a year; its life is not told, so that its change goes by the manual's own rules. */
const lorry = unpredicted(demoSystem("lorry"));
const service = { interval: 500 * HOUR, source: "operator's manual" };
const calendarYear = 31_557_600;

function figuresOf(system: System, options: CardOptions = {}) {
  const temperature = options.temperature ?? system.temperature;
  const answer = { temperature } as CardAnswer;
  return nextFigures({ system, fitted: system, answer, options, temperature });
}
const figure = (system: System, name: string, options?: CardOptions) =>
  figuresOf(system, options)
    .find((one) => one.name === name)
    ?.make() ?? null;

test("nextFigures(given) tells loads, and what the manual keeps to, by the file's own places", () => {
  expect(figureLines(figuresOf(lorry)).map((line) => line.replace("After the change: ", ""))).toEqual([
    "lowest load = 0.15 | lowest load (ratio, 1) | file duty.loads[0].load | 0.15",
    "full load = 1 | full load (ratio, 1) | words as the burn is stated:  | 1",
    expect.stringMatching(
      /^demand at the lowest load = [\de.-]+ \| demand at the lowest load \(flow, m3\/s\) \| part-demand: l load over full load; Q demand$/,
    ),
    "next change = 1800000 | next change (running time, s) | first-rule: t[] service interval, longest interval, running time to the change",
    "service distance = 40000000 | service distance (distance, m) | file service.distance | 40000000",
    "calendar time between changes = 31557600 | calendar time between changes (running time, s) | file service.calendar | 31557600",
    "temperature on the day = 268.15 | temperature on the day (temperature, K) | file fuel.temperature | 268.15",
  ]);
});

test("nextFigures(given) finds the lowest load wherever it is listed, and none where it is full load or not stated", () => {
  const at = (loads: readonly number[]): System => ({
    ...lorry,
    duty: { hoursADay: 6, daysAYear: 220, loads: loads.map((load) => ({ load, share: 1 / loads.length })) },
  });
  expect(figure(at([0.9, 0.3, 0.5]), "lowest load")?.origin).toEqual({ by: "file", path: "duty.loads[1].load" });
  expect(figure(at([0.9, 0.3]), "demand at the lowest load")?.value).toBeCloseTo(
    0.3 * (figure(at([1]), "demand at the lowest load")?.value ?? Number.NaN),
    15,
  );
  const { loads: _, ...noLoads } = at([1]).duty ?? { hoursADay: 6, daysAYear: 220 };
  const { duty: __, ...noDuty } = lorry;
  for (const system of [{ ...lorry, duty: noLoads }, noDuty]) {
    expect(figure(system, "lowest load")).toBeNull();
    expect(figure(system, "demand at the lowest load")).toBeNull();
  }
});

test("nextFigures(given) tells a temperature that was asked for, and takes the demand at it", () => {
  expect(figure(lorry, "temperature on the day", { temperature: 293.15 })).toMatchObject({
    value: 293.15,
    origin: { by: "asked" },
  });
  const at = (temperature: number) => figure(lorry, "demand at the lowest load", { temperature })?.value ?? Number.NaN;
  // The same fuel by weight takes more room when it is warm.
  expect(at(293.15)).toBeGreaterThan(at(268.15));
});

const rules = (more: object, duty: Partial<System["duty"]> = {}): System => {
  const { distance: _, ...rest } = lorry.duty ?? { hoursADay: 0, daysAYear: 0 };
  return { ...lorry, duty: { ...rest, ...duty }, service: { ...service, ...more } };
};

test.each<[rule: string, system: System, hours: number]>([
  ["the interval", rules({}), 500],
  ["the longest interval", rules({ interval: 600 * HOUR, atMost: 550 * HOUR }), 550],
  // 8 000 km of 24 000 km a year, and a quarter of a year, of 1 320 h.
  ["the distance", rules({ distance: 8e6 }, { distance: 24e6 }), 440],
  ["the calendar", rules({ calendar: calendarYear / 4 }), 330],
  // A distance between changes counts only with a distance in a year.
  ["the interval, as no distance in a year is stated", rules({ distance: 1 }), 500],
  ["the interval, as no distance between changes is stated", rules({}, { distance: 24e6 }), 500],
  // What never runs comes to no distance and no running time in a year.
  ["the interval, as it never runs", rules({ calendar: 1, distance: 1 }, { hoursADay: 0, distance: 24e6 }), 500],
  ["the interval, as it works on no day", rules({ calendar: 1 }, { daysAYear: 0 }), 500],
])("nextFigures(given) has the next change by whichever rule comes first: %s", (_, system, hours) => {
  const step = figure(system, "next change");
  expect((step?.value ?? Number.NaN) / HOUR).toBeCloseTo(hours, 9);
  expect(step && proofOf({ step }).misses).toEqual([]);
});

test("nextFigures(given) has the next change by the interval alone where no duty is stated, and none without a manual", () => {
  const { duty: _, ...idle } = rules({ calendar: 1 });
  expect(figure(idle, "next change")?.value).toBe(500 * HOUR);
  const { service: __, ...bare } = lorry;
  expect(figuresOf(bare).flatMap(({ name, make }) => (make() ? [name] : []))).toEqual([
    "lowest load",
    "full load",
    "demand at the lowest load",
    "temperature on the day",
  ]);
  expect(figure({ ...lorry, service }, "service distance")).toBeNull();
  expect(figure({ ...lorry, service }, "calendar time between changes")).toBeNull();
});

test("nextFigures(given) tells each rule of the manual by the file's own places", () => {
  const step = figure(
    rules({ distance: 8e6, calendar: calendarYear, atMost: 550 * HOUR }, { distance: 24e6 }),
    "next change",
  );
  expect(stepLines(step ? [step] : [])).toEqual([
    "next change (running time, s) | first-rule: t[] service interval, longest interval, running time to the change",
    "service interval (running time, s) | file service.interval | 1800000",
    "longest interval (running time, s) | file service.at most | 1980000",
    "running time to the change (running time, s) | change-by-distance: s distance between changes; D distance in a year; Y year of duty",
    "distance between changes (distance, m) | file service.distance | 8000000",
    "distance in a year (distance, m) | file duty.distance | 24000000",
    "year of duty (running time, s) | duty-year: h running time in a working day; n working days in a year",
    "running time in a working day (running time, s) | file duty.hours a day | 21600",
    "working days in a year (plain, 1) | file duty.days a year | 220",
    "running time to the change (running time, s) | change-by-calendar: c calendar time between changes; a calendar year of 365.25 days; Y year of duty",
    "calendar time between changes (running time, s) | file service.calendar | 31557600",
    "calendar year of 365.25 days (running time, s) | source definition | 31557600",
  ]);
});
