import type { CatalogueElement, System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import type { Arrangement, SizeAnswer } from "../../choose/sizing/SizeAnswer.js";
import { proofOf } from "../proof.js";
import { inWords } from "../worked.js";
import { arrangementCost, intervalAsked, setsAYear } from "./arrangementCost.js";
import type { SizeAsked } from "./SizeGiven.js";

const HOUR = 3600;
/** A tenth of a calendar year. */
const TENTH = 3_155_760;

const elements = [
  { name: "dear", price: 40, labour: 0.5 * HOUR },
  { name: "cheap", price: 10 },
  { name: "unpriced" },
] as unknown as CatalogueElement[];

/** 600 h of duty in a year, as far as costs look at a system. */
function given(
  file: object,
  { interval = 100 * HOUR, options = {} }: { interval?: number | null; options?: SizeAsked },
) {
  const answer = { asked: { interval } } as unknown as SizeAnswer;
  const duty = { hoursADay: 3, daysAYear: 200, distance: 8000 };
  return { file: { duty, ...file } as unknown as System, elements, answer, options };
}
const setsOf = (...of: Parameters<typeof given>) => {
  const step = setsAYear(given(...of));
  expect(proofOf({ step }).misses).toEqual([]);
  return step;
};

test("setsAYear(given) is the most of what interval, distance and calendar ask for", () => {
  // 600 h at 100 h, 8 km at 1 km, ten tenths of a year.
  expect(setsOf({ service: { interval: 100 * HOUR } }, {}).value).toBe(6);
  expect(setsOf({ service: { interval: 100 * HOUR, distance: 1000 } }, {}).value).toBe(8);
  expect(setsOf({ service: { interval: 100 * HOUR, distance: 1000, calendar: TENTH } }, {}).value).toBe(10);
  expect(setsOf({ service: { interval: 100 * HOUR, calendar: TENTH } }, { interval: 50 * HOUR }).value).toBe(12);
});

test("setsAYear(given) leaves out what the file does not state", () => {
  const inputsOf = (...of: Parameters<typeof given>) => stepLines([setsOf(...of)])[0];
  const interval = "changes in a year by the interval";
  expect(inputsOf({}, {})).toMatch(/: c\[\] changes in a year by the interval$/);
  // A distance between changes counts only with a distance in a year, and that one only with the other.
  expect(inputsOf({ duty: { hoursADay: 3, daysAYear: 200 }, service: { distance: 1000 } }, {})).toMatch(
    `c[] ${interval}`,
  );
  expect(setsOf({ duty: { hoursADay: 3, daysAYear: 200 }, service: { distance: 10 } }, {}).value).toBe(6);
  expect(setsOf({ service: { interval: HOUR } }, {}).value).toBe(6);
  expect(setsOf({ service: { calendar: TENTH } }, { interval: null }).value).toBe(10);
});

test("setsAYear(given) tells each rule by the file's own places", () => {
  const step = setsOf({ service: { interval: 100 * HOUR, distance: 1000, calendar: TENTH } }, {});
  expect(stepLines([step])).toEqual([
    "changes in a year (plain, 1) | sets-a-year: c[] changes in a year by the interval, changes in a year",
    "changes in a year by the interval (plain, 1) | changes-a-year: Y year of duty; t interval kept to",
    "year of duty (running time, s) | duty-year: h running time in a working day; n working days in a year",
    "running time in a working day (running time, s) | file duty.hours a day | 10800",
    "working days in a year (plain, 1) | file duty.days a year | 200",
    "interval kept to (running time, s) | file service.interval | 360000",
    "changes in a year (plain, 1) | changes-by-distance: D distance in a year; s distance between changes",
    "distance in a year (distance, m) | file duty.distance | 8000",
    "distance between changes (distance, m) | file service.distance | 1000",
    "changes in a year (plain, 1) | changes-by-calendar: a calendar year of 365.25 days; t calendar time between changes",
    "calendar year of 365.25 days (running time, s) | source exact by definition | 31557600",
    "calendar time between changes (running time, s) | file service.calendar | 3155760",
  ]);
});

test("intervalAsked(given) is the file's where it is that one, and asked for otherwise", () => {
  const of = (...own: Parameters<typeof given>) => intervalAsked(given(...own))?.origin;
  expect(of({ service: { interval: 100 * HOUR } }, {})).toEqual({ by: "file", path: "service.interval" });
  expect(of({ service: { interval: 200 * HOUR } }, {})).toEqual({ by: "asked", option: "interval" });
  expect(of({}, {})).toEqual({ by: "asked", option: "interval" });
  expect(of({ service: { interval: 100 * HOUR } }, { interval: null })).toBeUndefined();
});

const n = [2, 3].map((value) => inWords("counted", { name: "elements of a stage", value, unit: "1" }));
const costOf = (names: readonly string[], options: SizeAsked, stoppages = 0) => {
  const stages = names.map((element, at) => ({ element, count: n[at]?.value ?? 0 }));
  const arrangement = { stages } as unknown as Arrangement;
  const lost = inWords("told", { name: "cost of stoppages", value: stoppages, unit: "catalogue currency" });
  const put = { n: n.slice(0, names.length), stoppages: stoppages > 0 ? lost : null };
  const step = arrangementCost(given({}, { options }), arrangement, put);
  if (step) expect(proofOf({ step }).misses).toEqual([]);
  return step;
};

test("arrangementCost(given, arrangement, counts) adds work and stoppages where they are known", () => {
  // Six times a year two at 40, with half an hour at 60, and three at 10.
  expect(costOf(["dear", "cheap"], {})?.value).toBe(6 * (2 * 40 + 3 * 10));
  expect(costOf(["dear", "cheap"], { labourRate: 60 })?.value).toBe(6 * (2 * (40 + 30) + 3 * 10));
  expect(costOf(["dear"], {}, 500)?.value).toBe(6 * 2 * 40 + 500);
});

test("arrangementCost(given, arrangement, counts) is null where a price is not known", () => {
  expect(costOf(["unpriced"], {})).toBeNull();
  expect(costOf(["dear", "unpriced"], {})).toBeNull();
  expect(costOf(["elsewhere"], {})).toBeNull();
});

test("arrangementCost(given, arrangement, counts) says where no work is counted", () => {
  const lines = stepLines([costOf(["cheap"], { labourRate: 60 })].flatMap((step) => step ?? []));
  expect(lines).toContain(
    "one of cheap with its work (plain, catalogue currency) | words no work counted, where none or no cost of it is stated: price of cheap | 10",
  );
  const both = stepLines([costOf(["dear"], { labourRate: 60 }, 500)].flatMap((step) => step ?? []));
  expect(both[0]).toBe("cost of a year (SI, catalogue currency) | year-cost: m[] cost of a year, cost of stoppages");
  expect(both).toContain(
    "one of dear with its work (SI, catalogue currency) | element-with-work: p price of dear; w work of changing dear; h one hour; r cost of an hour of work",
  );
});
