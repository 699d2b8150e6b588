import { expect, test } from "vitest";
import { EVENLY, oneGauge, plainReadings, troubled } from "../../../../../tests/support/gaugeScenes.js";
import { onePut, putIn, told } from "../../../../../tests/support/steps.js";
import { proofOf } from "../proof.js";
import { evidenceCheck, weightStep } from "./evidenceSteps.js";

test("weightStep(law, laws, sceneOf) comes to Akaike's weight of every law, one of a mix among them", () => {
  const { soil } = oneGauge({ readings: plainReadings(EVENLY), laws: ["cake", "complete", "cake-complete", "none"] });
  const { laws } = soil.soil;
  for (const [at, { weight }] of laws.entries()) {
    expect(weightStep(at, laws, soil.sceneOf).value, String(at)).toBeCloseTo(weight, 9);
  }
  const step = weightStep(1, laws, soil.sceneOf);
  expect(putIn(step, "y").map(({ name }) => name)).toEqual(
    laws.map(({ fitted }) => `likelihood of ${fitted.model.shape.law} over the best law's`),
  );
  expect(putIn(step, "y")[0]?.value).toBe(1);
  expect(onePut(step, "x")).toBe(putIn(step, "y")[1]);
});

test("weightStep(law, laws, sceneOf) tells a law's deviance, and what its constants cost", () => {
  const { soil } = oneGauge({ readings: plainReadings(EVENLY), laws: ["cake", "complete"] });
  const { laws } = soil.soil;
  const likelihood = onePut(weightStep(1, laws, soil.sceneOf), "x");
  const other = laws[1]?.fitted;
  const deviance = onePut(likelihood, "D");
  expect([deviance.name, deviance.value]).toEqual([
    `deviance of ${other?.model.shape.law}`,
    expect.closeTo(other?.deviance ?? 0, 8),
  ]);
  expect(told(onePut(deviance, "c"))).toEqual([
    "scatter over the usual one",
    expect.closeTo(Math.sqrt(4 / soil.soil.weighed.prior.sum), 9),
    "1",
    "plain",
    "the same for all laws; the scatter shows how",
  ]);
  const cost = onePut(likelihood, "C");
  // One constant, and 8 readings with the 4 that the usual scatter counts as.
  expect(cost.value).toBeCloseTo(2 + 4 / (8 + 4 - 2), 12);
  expect(told(onePut(cost, "k"))).toEqual(["constants", 1, "1", "plain", "counted"]);
});

test("evidenceCheck(fit, side, place) works out by hand what had to be won, and what was", () => {
  const evidence = { before: 41, after: 12, needed: 0, places: 20, chance: 0.01, free: 9, deviations: 4 };
  const { explained, fit } = oneGauge({ ...troubled.step(), evidence: [evidence] });
  const [check] = evidenceCheck(explained, fit, 0);
  if (!check) throw new Error("no check");
  expect([check.words, check.relation]).toEqual(["it wins more than scatter would in so many places", ">="]);
  expect(check.left.value).toBe(29);
  expect(check.right.value).toBeCloseTo((8 + 4) * Math.log(1 + 16 / 9), 9);
  const found = "as the fits had it when it was found";
  expect(["a", "b"].map((letter) => told(onePut(check.left, letter)))).toEqual([
    ["least deviance without it", 41, "1", "plain", found],
    ["deviance with it", 12, "1", "plain", found],
  ]);
  const t = onePut(check.right, "t");
  expect(told(t)).toEqual([
    "standard errors",
    4,
    "1",
    "plain",
    "so many standard errors lie beyond that chance, half of it on either side, in Student's distribution",
  ]);
  const [q, f] = t.origin.by === "words" ? t.origin.from : [];
  expect(q?.value).toBeCloseTo(0.01 / 20, 12);
  expect(told(onePut(q, "c"))).toEqual([
    "chance allowed of a false alarm",
    0.01,
    "1",
    "ratio",
    "common practice, no source",
  ]);
  expect(told(onePut(q, "k"))).toEqual(["places and kinds looked at", 20, "1", "plain", "counted"]);
  expect(f && told(f)).toEqual([
    "degrees of freedom",
    9,
    "1",
    "plain",
    "readings, and those that the usual scatter counts as, less what is fitted",
  ]);
  expect(onePut(check.right, "f")).toBe(f);
  expect(proofOf({ step: check.right }).misses).toEqual([]);
});

test("evidenceCheck(fit, side, place) of what nothing was kept of checks nothing", () => {
  const { explained, fit } = oneGauge(troubled.step());
  expect(evidenceCheck(explained, fit, 0)).toEqual([]);
});

test("weightStep(law, laws, sceneOf) counts a mix as one of the constants", () => {
  const { soil } = oneGauge({ readings: plainReadings(EVENLY), laws: ["cake-complete"] });
  const { laws } = soil.soil;
  expect(told(onePut(weightStep(0, laws, soil.sceneOf), "x", "C", "k"))).toEqual([
    "constants",
    2,
    "1",
    "plain",
    "counted, the mix as one of them",
  ]);
});
