import { expect, test } from "vitest";
import { day, type ElementState, manualLimits } from "./limitsOfElement.js";
import type { Meter } from "./Meter.js";
import type { Outlook } from "./outlookOf.js";

const A_DAY = 24 * 3600;
/** A meter that gains so much a day, from 0 on day 1000. */
const meterOf = (perDay: number, least: number | null = null, most: number | null = null) =>
  ({
    rate: { perDay, least, most, from: "log" },
    dayWhen: (total: number, rate = perDay) => 1000 + total / rate,
  }) as unknown as Meter;
const hours = meterOf(5, 4, 10);
const state: ElementState = { element: {} as ElementState["element"], changed: 1000, running: 0, travelled: 0 };
const limitsOf = (
  service: object | undefined,
  more: Partial<ElementState> = {},
  meters: [Meter | null, Meter | null] = [hours, null],
) => manualLimits({ ...state, ...more }, { system: { service } } as unknown as Outlook, ...meters);

test("manualLimits(element) by hours falls due after the interval, and is late after the longest the manual allows", () => {
  expect(limitsOf({ interval: 250, atMost: 500 })).toEqual({
    limits: [{ by: "hours", day: 1050, latest: 1100, early: 1025, late: 1062, after: 250 }],
    missing: [],
  });
  expect(limitsOf({ interval: 250 }).limits[0]?.latest).toBe(1050);
});

test("manualLimits(element) does not know earliest and latest day where no log tells how use varies", () => {
  const [limit] = limitsOf({ interval: 250 }, {}, [meterOf(5), null]).limits;
  expect(limit).toMatchObject({ early: null, late: null });
});

test("manualLimits(element) by distance and calendar stand beside those by hours", () => {
  const service = { interval: 250, distance: 400, calendar: 365 * A_DAY };
  const { limits, missing } = limitsOf(service, { travelled: 100 }, [hours, meterOf(10)]);
  expect(limits.map(({ by, day: due, latest, after }) => [by, due, latest, after])).toEqual([
    ["hours", 1050, 1050, 250],
    ["distance", 1050, 1050, 400],
    ["calendar", 1365, 1365, null],
  ]);
  expect(missing).toEqual([]);
});

test("manualLimits(element) names what would settle a limit nobody can put on a day, each once", () => {
  const service = { interval: 250, distance: 400, calendar: 365 * A_DAY };
  const unknown = { running: null, travelled: null };
  expect(limitsOf(service, { ...unknown, changed: null }, [hours, hours])).toEqual({
    limits: [],
    missing: ["last change unknown"],
  });
  expect(limitsOf(service, unknown, [hours, hours]).missing).toEqual(["hours unknown", "distance unknown"]);
  expect(limitsOf(service, {}, [null, null]).missing).toEqual(["hours unknown", "distance unknown"]);
});

test("manualLimits(element) has none where the file states no service", () => {
  expect(limitsOf(undefined)).toEqual({ limits: [], missing: [] });
});

test("day(moment) is the day it falls on, a rounding under midnight the next, and never where it lies beyond any file's days", () => {
  expect([day(1000), day(1000.99), day(1000 - 1e-9)]).toEqual([1000, 1000, 1000]);
  expect([day(65_744), day(65_744.5)]).toEqual([65_744, Infinity]);
});
