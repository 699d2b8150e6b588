import type { FuelState } from "@thirstline/core";
import { expect, test } from "vitest";
import { fuelReasons } from "./fuelReasons.js";
import { isGround } from "./ground.js";
import { type VerdictFacts, verdictOf } from "./verdictOf.js";

const fuelOf = (...cautions: object[]) => ({ cautions }) as unknown as FuelState;
const temperature = 250;
const wax = { code: "below cloud point", temperature, cloudPoint: 257, estimated: false };
const end = { overCleanLimit: false, atChange: { limit: "feed pressure", inHand: 0.5 }, broken: [{ limit: "vapour" }] };
const verdict = (grade: string, more: object = {}, worse: object = {}) =>
  verdictOf({
    judgement: { grade, lowEnd: end, worse: { ...end, ...worse } },
    fuel: fuelOf(),
    complete: true,
    shutBy: null,
    rows: [],
    ...more,
  } as unknown as VerdictFacts);
const inHand = (share: number) => ({ atChange: { limit: "feed pressure", inHand: share } });

test("verdictOf(facts) takes what is shut before all else, then what is not known, a broken limit, a missing one", () => {
  const all = { shutBy: "tank cock", fuel: fuelOf(wax), complete: false };
  expect(verdict("starves", all)).toEqual({ verdict: "starves", reasons: [{ code: "shut", by: "tank cock" }] });
  const waxed = { code: "below cloud point", temperature, cloudPoint: 257 };
  expect(verdict("starves", { ...all, shutBy: null })).toEqual({
    verdict: "cannot say",
    reasons: [{ ...waxed, starvesAnyway: true }],
  });
  expect(verdict("holds", { ...all, shutBy: null })).toEqual({
    verdict: "cannot say",
    reasons: [{ ...waxed, starvesAnyway: false }],
  });
  expect(verdict("starves", { complete: false })).toEqual({
    verdict: "starves",
    reasons: [{ code: "broken", limit: "vapour" }],
  });
  expect(verdict("tight", { complete: false })).toEqual({
    verdict: "cannot say",
    reasons: [{ code: "no vacuum limit" }],
  });
});

test("verdictOf(facts) of what holds has no reason, however little is in hand at one end", () => {
  expect(verdict("holds", {}, inHand(0.1))).toEqual({ verdict: "holds", reasons: [] });
});

test("verdictOf(facts) of what is tight says why: clean elements over their limit, less than a fifth in hand, or both", () => {
  const over = { code: "over clean limit" };
  const little = { code: "little in hand", limit: "feed pressure" };
  expect(verdict("tight", {}, { overCleanLimit: true })).toEqual({ verdict: "tight", reasons: [over] });
  expect(verdict("tight", {}, inHand(0.199)).reasons).toEqual([little]);
  expect(verdict("tight", {}, inHand(0.2)).reasons).toEqual([]);
  expect(verdict("tight", {}, { overCleanLimit: true, ...inHand(0.1) }).reasons).toEqual([over, little]);
});

test("verdictOf(facts) that the ends disagree on names the parts that are only estimated", () => {
  const row = (name: string, kind: string, low = 1, high = low) => ({
    name,
    part: { kind, medium: { linear: { low, high } } },
  });
  const rows = [
    { name: "tank", part: null },
    row("hose", "line"),
    row("A", "filter"),
    row("B", "filter", 1, 2),
    row("S", "strainer"),
  ];
  expect(verdict("unsettled", { rows })).toEqual({
    verdict: "cannot say",
    reasons: [{ code: "unsettled", limit: "feed pressure", parts: ["B", "S"] }],
  });
});

test("fuelReasons(fuel, starvesAnyway) is wax, and a fuel outside its data; other cautions are none", () => {
  const cautions = [
    { code: "cloud point not known", temperature, limit: 278 },
    { code: "below range", temperature, from: 260 },
    { code: "above range", temperature, to: 240 },
    { code: "water can freeze", temperature },
  ];
  const reasons = fuelReasons(fuelOf(...cautions), false);
  expect(reasons).toEqual([
    { code: "cloud point not known", temperature, limit: 278 },
    { code: "fuel out of range", temperature, from: 260, to: Infinity },
    { code: "fuel out of range", temperature, from: 0, to: 240 },
  ]);
  expect(reasons.every(isGround)).toBe(true);
  expect(fuelReasons(fuelOf(wax), true).every(isGround)).toBe(true);
  expect([isGround({ code: "shut", by: "cock" }), isGround({ code: "no vacuum limit" })]).toEqual([true, false]);
});
