import { expect, test } from "vitest";
import { EVENLY, oneGauge, plainReadings } from "../../../../../tests/support/gaugeScenes.js";
import { onePut, told } from "../../../../../tests/support/steps.js";
import { termGains } from "../../gauge/termGains.js";
import { proofOf } from "../proof.js";
import { askedStep } from "./askedStep.js";

test("askedStep(fit, at) says what was summed over the readings, and what of it the fit itself takes", () => {
  const { explained } = oneGauge({ readings: plainReadings(EVENLY) });
  const parts = termGains(explained.weighed, explained.fitted)({ kind: "step", at: 4 })?.parts;
  const step = askedStep(explained, 4);
  const x = onePut(step, "x");
  expect(x.name).toBe("step in resistance over clean");
  const summed = "summed over the readings from that one on, each over its standard deviation";
  const taken = "by the slopes and the covariance of the fit";
  expect(["p", "q", "s", "u"].map((letter) => told(onePut(x, letter)))).toEqual([
    ["what a step adds times what is missed", parts?.pull, "1", "plain", summed],
    ["what the fit's own parameters take of it", parts?.pullTaken, "1", "plain", taken],
    ["what a step adds, squared", parts?.square, "1", "plain", summed],
    ["what the fit's own parameters take of it, squared", parts?.squareTaken, "1", "plain", taken],
  ]);
  for (const letter of ["a", "b"]) expect(onePut(step, "P", letter, "a").origin.by).not.toBe("words");
  expect(step && proofOf({ step }).misses).toEqual([]);
});

test("askedStep(fit, at) is none where a step cannot be told from the fit: with nothing known of the start, one all along", () => {
  const { explained } = oneGauge({ readings: plainReadings([1.4, 1.5], () => ({ changed: false })), laws: ["none"] });
  expect(termGains(explained.weighed, explained.fitted)({ kind: "step", at: 0 })).toBeNull();
  expect(askedStep(explained, 0)).toBeNull();
});
