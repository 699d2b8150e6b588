import { describe, expect, test } from "vitest";
import { dateOf } from "./day.js";
import type { History } from "./historyOf.js";
import type { ElementState } from "./limitsOfElement.js";
import { Meter } from "./Meter.js";
import type { Outlook } from "./outlookOf.js";
import { predictedLimits } from "./predictedLimits.js";

/** 5 a day from 0 on day 1000 to 300 on day 1060; with a slow month of 3 and a fast one of 7 a day where it varies. */
const meterOf = (...between: { day: number; value: number }[]) => {
  const readings = [{ day: 1000, value: 0 }, ...between, { day: 1060, value: 300 }];
  return Meter.of(
    readings.map((one) => ({ ...one, isNew: false })),
    null,
  ) as Meter;
};
const steady = meterOf();
const varied = meterOf({ day: 1030, value: 90 });
const stateOf = (name: string, running: number | null = 0, isSuction = true) =>
  ({ element: { name, isSuction }, changed: 1000, running, travelled: null }) as unknown as ElementState;

/** Vacuum of 10 kPa clean, 40 kPa after a running time of 400. */
const life = {
  year: 1000,
  reasons: [],
  end: { time: 400 },
  elements: [{ name: "A" }],
  trace: { time: [0, 100, 200, 300, 400], vacuum: [10e3, 12e3, 14e3, 20e3, 40e3] },
  range: null,
};
const outlookOf = (ofLife: object = {}, more: object = {}) =>
  ({
    life: { ...life, ...ofLife },
    vacuum: { clean: 20e3, atChange: 40e3 },
    first: new Set(["A"]),
    system: { service: { interval: 250 } },
    ...more,
  }) as unknown as Outlook;
const history = (gauge: History["gauge"] = null) => ({ gauge }) as History;
const read = (value: number, day = 1040) => history({ date: dateOf(day), value });
const predicted = (outlook = outlookOf(), of = history(), meter: Meter | null = steady, states = [stateOf("A")]) =>
  predictedLimits(states, outlook, meter, of);
const limitOf = (...given: Parameters<typeof predicted>) => predicted(...given).limits.get("A");

describe("predictedLimits(states, outlook, hours, history) without a gauge", () => {
  const limit = { by: "restriction", day: 1080, latest: Infinity, early: null, late: null, after: 400 };

  test("is due when life ends, counted from the change, and runs right", () => {
    expect(predicted()).toEqual({ limits: new Map([["A", limit]]), gauge: null, cautions: [], runsRight: true });
  });

  test("spreads by the slowest and the fastest use", () => {
    expect(limitOf(outlookOf(), history(), varied)).toEqual({ ...limit, early: 1074, late: 1093 });
  });

  test("spreads by what is only estimated", () => {
    const range = (early: number | null, late: number | null) => limitOf(outlookOf({ range: { early, late } }));
    expect(range(350, 500)).toEqual({ ...limit, early: 1070, late: 1100 });
    expect(range(null, null)).toEqual({ ...limit, early: 1080, late: Infinity });
    // An end is never before the change, nor its ends on the wrong side of it.
    expect(range(450, 380)).toEqual({ ...limit, early: 1080, late: 1080 });
    expect(limitOf(outlookOf({ range: { early: 350, late: 500 } }), history(), varied)).toEqual({
      ...limit,
      early: 1067,
      late: 1126,
    });
  });

  test("never comes where life meets no limit", () => {
    expect(limitOf(outlookOf({ end: null }))).toEqual({ ...limit, day: Infinity, after: null });
    expect(limitOf(outlookOf({ end: null, range: { early: 350, late: null } }))).toMatchObject({
      day: Infinity,
      early: 1070,
      late: Infinity,
    });
  });

  test("counts from the oldest change of those followed, and is said of those that make up most of the rise", () => {
    const outlook = outlookOf({ elements: [{ name: "A" }, { name: "B" }] });
    const states = [stateOf("A", 100), stateOf("B", 50), stateOf("C", null)];
    const { limits } = predicted(outlook, history(), steady, states);
    // 400 after 50 is 450, 150 or 30 days beyond day 1060.
    expect([...limits]).toEqual([["A", { ...limit, day: 1090 }]]);
  });

  test("says nothing where nobody knows when one of them was changed, how fast it runs, or where none is followed", () => {
    const two = outlookOf({ elements: [{ name: "A" }, { name: "B" }] });
    expect(limitOf(two, history(), steady, [stateOf("A"), stateOf("B", null)])).toBeUndefined();
    expect(limitOf(outlookOf(), history(), null)).toBeUndefined();
    expect(limitOf(outlookOf({ elements: [] }))).toBeUndefined();
  });

  test("says why it is not followed, and what starves with new elements", () => {
    const reasons = [{ code: "no duty" }];
    expect(predicted(outlookOf({ year: 0, reasons }))).toEqual({
      limits: new Map(),
      gauge: null,
      cautions: [{ code: "restriction not followed", reasons }],
      runsRight: false,
    });
    expect(predicted(outlookOf({ end: { time: 0 } }))).toEqual({
      limits: new Map(),
      gauge: null,
      cautions: [{ code: "starves clean" }],
      runsRight: false,
    });
  });
});

describe("predictedLimits(states, outlook, hours, history) with a gauge reading", () => {
  test("is where the prediction shows that reading, and has left what that has left", () => {
    // On day 1040, at 200, it reads 15 kPa, which is predicted a sixth of the way from 200 to 300: 183.3 are left.
    expect(limitOf(outlookOf(), read(15e3))?.after).toBeCloseTo(200 + 400 - (200 + 100 / 6), 9);
    expect(limitOf(outlookOf(), read(15e3))).toMatchObject({ by: "restriction", day: 1076, early: null, late: null });
    // A figure of the prediction itself: 14 kPa at 200, so all is as predicted.
    expect(limitOf(outlookOf(), read(14e3))?.after).toBe(400);
  });

  test("comes nearer by it, never further", () => {
    expect(limitOf(outlookOf(), read(13e3))?.after).toBe(400);
    expect(limitOf(outlookOf(), read(9e3))?.after).toBe(400);
    expect(limitOf(outlookOf(), read(10e3))?.after).toBe(400);
  });

  test("shifts what is only estimated alike", () => {
    // All of it comes 16.7 sooner: 333.3 and 483.3.
    const limit = limitOf(outlookOf({ range: { early: 350, late: 500 } }), read(15e3));
    expect(limit).toMatchObject({ early: 1066, day: 1076, late: 1096 });
  });

  test("goes straight on from clean to the limit, beyond all that is predicted", () => {
    // 200 brought 5 kPa over clean, and 25 kPa are left: 1000.
    expect(limitOf(outlookOf({ end: null }), read(15e3))).toMatchObject({ after: 1200, day: 1240 });
    const low = { trace: { time: [0, 400], vacuum: [10e3, 20e3] } };
    // 200 brought 20 kPa, and 10 kPa are left: 100, before the predicted end.
    expect(limitOf(outlookOf(low), read(30e3))).toMatchObject({ after: 300, day: 1060 });
  });

  test("with no run behind it is due at once where it reads over clean", () => {
    const low = { trace: { time: [0, 400], vacuum: [10e3, 20e3] } };
    expect(limitOf(outlookOf(low), read(30e3, 1000))?.after).toBe(0);
  });

  test("takes a prediction of nothing as no say", () => {
    expect(limitOf(outlookOf({ trace: { time: [], vacuum: [] } }), read(15e3))?.after).toBe(400);
  });

  const due = { by: "gauge", day: 1040, latest: Infinity, early: null, late: null, after: null };
  const states = [stateOf("A"), stateOf("C", 0, false)];

  test("at or over the limit at change makes what stands before the pump due on the day it was read", () => {
    const found = predicted(outlookOf(), read(40e3), steady, states);
    expect(found.gauge).toEqual({ elements: new Set(["A"]), limit: due });
    expect(found.cautions).toEqual([{ code: "gauge at the change limit", value: 40e3, limit: 40e3 }]);
    expect(found.runsRight).toBe(false);
    // It says nothing then of how far the soil is.
    expect(found.limits.get("A")?.after).toBe(400);
    expect(predicted(outlookOf(), read(39.9e3)).gauge).toBeNull();
  });

  test("over the clean limit counts so within a tenth of the interval, and no longer", () => {
    const at = (value: number, day: number) => predicted(outlookOf(), read(value, day), steady, states);
    // A tenth of 250 is run by day 1005.
    expect(at(20e3, 1005)).toMatchObject({
      gauge: { elements: new Set(["A"]), limit: { ...due, day: 1005 } },
      cautions: [{ code: "gauge over the clean limit", value: 20e3, limit: 20e3 }],
      runsRight: false,
    });
    expect(at(20e3, 1006)).toMatchObject({ gauge: null, cautions: [], runsRight: false });
    expect(at(19.9e3, 1005)).toMatchObject({ gauge: null, cautions: [], runsRight: true });
  });

  test("over the clean limit is not counted where nobody knows how new they are, or what clean is", () => {
    const unknown = predicted(outlookOf(), read(20e3, 1005), steady, [stateOf("A", null)]);
    expect(unknown).toMatchObject({ gauge: null, runsRight: false });
    expect(predicted(outlookOf(), read(20e3, 1005), null).gauge).toBeNull();
    const noClean = outlookOf({}, { vacuum: { clean: null, atChange: 40e3 } });
    expect(predicted(noClean, read(20e3, 1005))).toMatchObject({ gauge: null, cautions: [], runsRight: true });
    const noService = outlookOf({}, { system: {} });
    expect(predicted(noService, read(20e3, 1005))).toMatchObject({ gauge: null, runsRight: false });
  });

  test("does not make right what starves with new elements", () => {
    expect(predicted(outlookOf({ end: { time: 0 } }), read(9e3)).runsRight).toBe(false);
  });

  test("is not used where there is no limit to hold it against", () => {
    const found = predicted(outlookOf({}, { vacuum: null }), read(50e3));
    expect(found).toMatchObject({ gauge: null, cautions: [{ code: "gauge not used" }], runsRight: true });
    expect(found.limits.get("A")?.after).toBe(400);
  });
});

test("predictedLimits(...) with a gauge reading counts what was run from the oldest change", () => {
  // At 200 on day 1040, of which 150 since the change: 150 brought 5 kPa over clean, and 25 are left, 750.
  const limit = limitOf(outlookOf({ end: null }), read(15e3), steady, [stateOf("A", 50)]);
  expect(limit).toMatchObject({ after: 900, day: 1190 });
});
