import { expect, test } from "vitest";
import { EVENLY, METRE, oneGauge, plainBothSides, plainReadings } from "../../../../../tests/support/gaugeScenes.js";
import { plainSystem } from "../../../../../tests/support/plainSystem.js";
import { onePut } from "../../../../../tests/support/steps.js";
import { proofOf } from "../proof.js";
import { FitScene } from "./FitScene.js";
import { levelRangeStep, zeroSpreadStep } from "./zeroSteps.js";

const few = plainReadings(EVENLY.slice(0, 4));
const practice = { by: "source", source: "common practice, no source" };

test("zeroSpreadStep(fit) of a vacuum is the gauge's own zero where every reading notes its level", () => {
  const { explained } = oneGauge({ readings: few });
  const step = zeroSpreadStep(explained);
  expect(step.value).toBe(500);
  expect(onePut(step, "a")).toEqual({
    name: "error of a gauge's zero",
    value: 500,
    unit: "Pa",
    kind: "pressure",
    origin: practice,
  });
  expect(onePut(step, "b")).toEqual({
    name: "what an unknown level makes",
    value: 0,
    unit: "Pa",
    kind: "pressure",
    origin: { by: "words", words: "every reading notes its level", from: [] },
  });
  expect(zeroSpreadStep(explained)).toBe(step);
});

test("zeroSpreadStep(fit) of a vacuum has the tank anywhere between full and low where one reading leaves it out", () => {
  const { explained } = oneGauge({
    readings: few.map(({ depth, ...one }, at) => (at === 2 ? one : { ...one, depth: depth ?? 0 })),
  });
  // The plain tank is a metre deep.
  expect(zeroSpreadStep(explained).value).toBeCloseTo(Math.hypot(500, METRE / Math.sqrt(12)), 6);
});

test("zeroSpreadStep(fit) of a feed pressure counts how far a relief valve is off", () => {
  const readings = few.map((one, at) => ({ ...one, feedPressure: 50e3 - 900 * at }));
  const { explained } = oneGauge({ system: plainBothSides, side: "delivery", readings });
  const step = zeroSpreadStep(explained);
  expect(step.value).toBeCloseTo(explained.facts.zero.delivery, 6);
  // The relief holds 80 kPa.
  expect(step.value).toBeCloseTo(Math.hypot(500, 8000), 4);
  expect(onePut(step, "b", "x")).toEqual({
    name: "how far a relief valve is off",
    value: 0.1,
    unit: "1",
    kind: "ratio",
    origin: practice,
  });
  expect(proofOf({ step }).misses).toEqual([]);
});

test("zeroSpreadStep(fit) of a feed pressure behind a pump of which little is known has no more than its own zero", () => {
  const readings = few.map((one, at) => ({ ...one, feedPressure: 50e3 - 900 * at }));
  const { explained, given } = oneGauge({ system: plainBothSides, side: "delivery", readings });
  const pulse = { kind: "pulse", flow: 2e-4 } as typeof plainSystem.pump;
  const step = zeroSpreadStep(new FitScene({ ...given, system: { ...plainBothSides, pump: pulse } }, explained));
  expect(step.value).toBe(500);
  const p = onePut(step, "b", "p");
  expect(p).toEqual({
    name: "rise of the pump by the file",
    value: 0,
    unit: "Pa",
    kind: "pressure",
    origin: { by: "words", words: "a pump whose rise is not known", from: [] },
  });
});

test("levelRangeStep(given) is the weight of the fuel between full and low, by the file", () => {
  const { given } = oneGauge({
    readings: few,
    system: { ...plainSystem, tanks: plainSystem.tanks.map((tank) => ({ ...tank, fullDepth: 0.9, lowDepth: 0.2 })) },
  });
  const step = levelRangeStep(given);
  expect(step.value).toBeCloseTo(0.7 * METRE, 6);
  const depth = { unit: "m", kind: "length" };
  expect(onePut(step, "h")).toEqual({
    ...depth,
    name: "fuel over the pick-up, full depth",
    value: 0.9,
    origin: { by: "file", path: "tank.full depth" },
  });
  expect(onePut(step, "l")).toEqual({
    ...depth,
    name: "fuel over the pick-up, low depth",
    value: 0.2,
    origin: { by: "file", path: "tank.low depth" },
  });
});
