import { expect, test } from "vitest";
import type { Finding, GaugeReason, GaugeSide, HoursLeft } from "./GaugeAnswer.js";
import type { GaugeFacts } from "./gaugeFacts.js";
import { counted, leftFacts, leftsOf, soonest } from "./leftsOf.js";
import type { SideFit } from "./SideFit.js";

const path = (names: readonly string[]) => ({
  names,
  at: (ratio: number) => new Map(names.map((name) => [name, ratio])),
});
// Without a temperature to judge, hours end there: what is before it is all that is asked here.
const facts = {
  limited: true,
  points: [],
  suction: path(["A"]),
  delivery: path(["fine"]),
  run: { meter: 7200 },
} as unknown as GaugeFacts;

/** A fit of readings at some times, s, with a resistance of so much more each second. */
const fitOf = (
  times: readonly number[],
  { trend = true, without = undefined as boolean | undefined, growth = 0.1 } = {},
) => {
  const best = {
    model: { stateAt: () => ({ ratioAt: (time: number) => 0.5 + growth * time }) },
    fit: { parameters: [] },
  };
  return {
    weighed: { run: { instants: times.map((time) => ({ time })) } },
    soil: { trend, best },
    soilWithout: without === undefined ? null : { trend: without, best },
  } as unknown as SideFit;
};
const fits = (suction: SideFit | null, delivery: SideFit | null = null) => ({ suction, delivery });
const findings = (...codes: Finding["code"][]) => codes.map((code) => ({ code }) as Finding);
const untold = { code: "no temperature to judge" };
const four = [0, 10, 20, 30];

test.each(["high when new", "air or slip", "low", "cold", "falls", "weak delivery"] as const)(
  "leftsOf(facts, fits, findings) tells no hours where something else is found: %s",
  (code) => {
    expect(leftsOf(facts, fits(fitOf(four)), findings("loading", code))).toEqual([
      { side: null, all: { code: "not the filter" }, without: null },
    ]);
  },
);

test("leftsOf(facts, fits, findings) tells none without a limit", () => {
  expect(leftsOf({ ...facts, limited: false }, fits(fitOf(four)), [])).toEqual([
    { side: null, all: { code: "no limit" }, without: null },
  ]);
});

test("leftsOf(facts, fits, findings) asks each gauge that was read, soil and jumps notwithstanding", () => {
  const own = (side: GaugeSide) => ({ side, all: untold, without: null });
  const found = findings("loading", "jump");
  expect(leftsOf(facts, fits(fitOf(four), fitOf(four)), found)).toEqual([own("suction"), own("delivery")]);
  expect(leftsOf(facts, fits(null, fitOf(four)), [])).toEqual([own("delivery")]);
  expect(leftsOf(facts, fits(fitOf(four)), [])).toEqual([own("suction")]);
  expect(leftsOf(facts, fits(null), [])).toEqual([]);
});

test("leftsOf(facts, fits, findings) wants readings at four different hours", () => {
  const few = (times: readonly number[]) => leftsOf(facts, fits(fitOf(times)), [])[0]?.all;
  expect(few([0, 10, 20])).toEqual({ code: "too few readings", count: 3, needed: 4 });
  expect(few([0, 10, 10, 20])).toEqual({ code: "too few readings", count: 3, needed: 4 });
  expect(few(four)).toEqual(untold);
});

test("leftsOf(facts, fits, findings) wants growth to show, with and without readings that stand off", () => {
  const of = (trend: boolean, without?: boolean) => {
    const [one] = leftsOf(facts, fits(fitOf([...four, 30], { trend, without })), []);
    return [one?.all, one?.without];
  };
  const none = { code: "no trend", count: 4 };
  expect(of(false)).toEqual([none, null]);
  expect(of(false, true)).toEqual([none, untold]);
  expect(of(true, false)).toEqual([untold, none]);
  expect(of(true, true)).toEqual([untold, untold]);
});

test("counted(fit) is how many different hours there are readings at", () => {
  expect([counted(null), counted(fitOf([])), counted(fitOf([5, 5, 7]))]).toEqual([0, 0, 2]);
});

test("leftFacts(facts, side, fits) is of now, by the hour meter, with the other side as its own gauge has it then", () => {
  const rest = leftFacts(facts, "suction", fits(fitOf(four), fitOf([0, 40])));
  expect(rest).toMatchObject({ now: 30, meter: 7200 });
  // Half of clean, and a tenth more each second; never less than clean.
  expect(rest.besideAt(45)).toEqual(new Map([["fine", 5]]));
  expect(rest.besideAt(2)).toEqual(new Map([["fine", 1]]));
  const behind = leftFacts(facts, "delivery", fits(fitOf(four), fitOf([0, 40])));
  expect(behind.now).toBe(40);
  expect(behind.besideAt(45)).toEqual(new Map([["A", 5]]));
});

test("leftFacts(facts, side, fits) takes the other side for clean where it was not read, and for nothing where it has no element", () => {
  expect(leftFacts(facts, "suction", fits(fitOf(four))).besideAt(1e9)).toEqual(new Map([["fine", 1]]));
  const bare = { ...facts, delivery: path([]) } as unknown as GaugeFacts;
  expect(leftFacts(bare, "suction", fits(fitOf(four))).besideAt(1e9)).toEqual(new Map());
  expect(leftFacts(facts, "suction", fits(null)).now).toBe(0);
});

test("soonest(found) is the hours that end first, or the first reason where there are none", () => {
  const left = (middle: number, low = middle / 2) => ({ middle, low, high: 2 * middle }) as HoursLeft;
  const [early, late] = [left(100), left(300)];
  const [trend, wide] = [
    { code: "no trend", count: 5 },
    { code: "too wide", low: 20, high: null },
  ] as const satisfies readonly GaugeReason[];
  expect(soonest([])).toBeNull();
  expect(soonest([null, null])).toBeNull();
  expect(soonest([null, trend, wide])).toBe(trend);
  expect(soonest([late, early, trend, null])).toBe(early);
  expect(soonest([early, late])).toBe(early);
});

test("soonest(found) is a doubt where the other side may end first and nobody can tell", () => {
  const left = { middle: 100, low: 50, high: 200 } as HoursLeft;
  const wide = (low: number) => ({ code: "too wide", low, high: null }) as const;
  expect(soonest([left, wide(49)])).toEqual(wide(49));
  expect(soonest([wide(49), left])).toEqual(wide(49));
  expect(soonest([left, wide(50)])).toBe(left);
  expect(soonest([left, { code: "no trend", count: 4 }])).toBe(left);
});
