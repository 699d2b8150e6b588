import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { demoSystem } from "../../../../../tests/support/fleets.js";
import { proofOf } from "../proof.js";
import type { Check, Step } from "../Step.js";
import { starvesStep } from "./starvesStep.js";

const pickup = demoSystem("pickup-single");
const warmest = 293.15;

const checksOf = ({ origin }: Step): readonly Check[] => (origin.by === "search" ? origin.checks : []);
/** Its pump opens at 60 kPa; what the engine has is 44 kPa of that at 262 K, and 53 kPa at 293 K. */
const fedAt = (feedPressure: number): System => ({ ...pickup, limits: { ...pickup.limits, feedPressure } });
const told = (step: Step) => stepLines([step])[0]?.replace("starves below (temperature, K) | search ", "");

test("starvesStep(system, warmest) of one that always starves is the warmest temperature, where it starves", () => {
  const step = starvesStep(fedAt(58e3), warmest);
  expect(step.value).toBe(warmest);
  expect(told(step)).toBe(
    "the warmest temperature asked for: even there it starves: in hand, low end <= nothing in hand",
  );
  expect(checksOf(step)[0]?.left.value).toBeLessThan(0);
  expect(proofOf({ step }).misses).toEqual([]);
});

test("starvesStep(system, warmest) of one that starves in the cold is closed in on from both sides", () => {
  const step = starvesStep(fedAt(46e3), warmest);
  expect(step.value).toBeGreaterThan(262);
  expect(step.value).toBeLessThan(270);
  expect(told(step)).toBe(
    "halved between a temperature that feeds it and one that starves it, to 0.005 K: at this temperature it gets its fuel: in hand, low end >= nothing in hand; 0.005 K colder it starves: in hand, low end <= nothing in hand",
  );
  const [here, colder] = checksOf(step).map(({ left }) => left.value);
  expect(here).toBeGreaterThanOrEqual(0);
  expect(colder).toBeLessThan(0);
  expect(proofOf({ step }).misses).toEqual([]);
});

test.each([
  // Its cloud point as its file states it.
  ["cloud point", pickup, 261.15],
  // Of a grade its kind's own, or the highest that it may have where it depends on the place.
  ["cloud point", { ...pickup, fuel: { kind: "diesel", grade: "winter" } }, 266.15],
  ["highest cloud point of its kind", { ...pickup, fuel: { kind: "diesel", grade: "summer" } }, 277.15],
  ["coldest fuel data", demoSystem("lorry"), 253.15],
] as const)("starvesStep(system, warmest) of one that never starves ends at the %s", (ground, system, temperature) => {
  const step = starvesStep(system, warmest);
  expect(Math.abs(step.value - temperature)).toBeLessThanOrEqual(0.005);
  expect(told(step)).toBe(
    `the coldest fuel at which figures mean anything: at this temperature it gets its fuel: in hand, low end >= nothing in hand; it is no colder than the fuel's figures hold: starves below >= ${ground}`,
  );
  expect(checksOf(step)[0]?.left.value).toBeGreaterThan(0);
  expect(checksOf(step)[1]?.right.value).toBeCloseTo(temperature, 9);
  expect(proofOf({ step }).misses).toEqual([]);
});
