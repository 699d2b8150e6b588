import { expect, test } from "vitest";
import { oneGauge, troubled } from "../../../../../tests/support/gaugeScenes.js";
import { onePut, told } from "../../../../../tests/support/steps.js";
import { sizedOf } from "../../gauge/sizedOf.js";
import { proofOf } from "../proof.js";
import { sizeStep, termPressure } from "./termSteps.js";

test("termPressure(fit, side, sized) comes to the size that the finding is told with", () => {
  for (const kind of ["step", "thin", "cold", "fall"] as const) {
    const { explained, fit } = oneGauge(troubled[kind]());
    const [sized] = sizedOf(fit);
    if (!sized) throw new Error(`${kind} has no size`);
    const step = termPressure(explained, fit, sized);
    expect(step.value, kind).toBeCloseTo(sized.by, 6);
    expect(Math.abs(sized.by), kind).toBeGreaterThan(500);
  }
});

test("termPressure(fit, side, sized) of less flow proves itself down to the file, units and all", () => {
  const { explained, fit } = oneGauge(troubled.thin());
  const [sized] = sizedOf(fit);
  const step = sized && termPressure(explained, fit, sized);
  expect(step && proofOf({ step }).misses).toEqual([]);
});

test("termPressure(fit, side, sized) of cold says from where on it is cold, and in what steps", () => {
  const { explained, fit } = oneGauge(troubled.cold());
  const [sized] = sizedOf(fit);
  const step = sized && termPressure(explained, fit, sized);
  const e = onePut(step, "a", "r", "e");
  expect(["B", "T", "t"].map((letter) => told(onePut(e, letter)))).toEqual([
    ["temperature below which it shows", 288.15, "K", "temperature", "the warmest reading, or half-way to the coldest"],
    ["coldest reading", 278.15, "K", "temperature", "noted, or taken from the file"],
    ["ten kelvins", 10, "K", null, "a choice of unit"],
  ]);
  expect(e.value).toBeCloseTo(sizeStep(explained, fit, 0).value * onePut(e, "r").value, 9);
});

test("termPressure(fit, side, sized) of a fall at one time alone takes a second for the time between", () => {
  const asked = troubled.fall();
  const readings = asked.readings.map((one) => ({ ...one, hours: 3.6e6 }));
  const { explained, fit } = oneGauge({ ...asked, readings });
  const [sized] = sizedOf(fit);
  const step = sized && termPressure(explained, fit, sized);
  expect(told(onePut(step, "a", "r", "e", "s"))).toEqual([
    "a second",
    1,
    "s",
    "running time",
    "so that one reading alone does no harm",
  ]);
});

test("sizeStep(fit, side, place) is proved by what it wins too", () => {
  const evidence = { before: 40, after: 10, needed: 12, places: 20, chance: 0.01, free: 8, deviations: 4 };
  const withIt = oneGauge({ ...troubled.step(), evidence: [evidence] });
  const without = oneGauge(troubled.step());
  const checksOf = ({ explained, fit }: typeof withIt) => {
    const { origin } = sizeStep(explained, fit, 0);
    return origin.by === "search" ? origin.checks.map(({ words }) => words) : [];
  };
  expect(checksOf(withIt)).toEqual([...checksOf(without), "it wins more than scatter would in so many places"]);
  expect(sizeStep(withIt.explained, withIt.fit, 0).value).toBe(withIt.explained.fitted.fit.parameters[3]);
  const unknown = oneGauge({
    ...troubled.step(),
    readings: troubled.step().readings.map((one) => ({ ...one, changed: false })),
  });
  expect(sizeStep(unknown.explained, unknown.fit, 0).value).toBe(unknown.explained.fitted.fit.parameters[4]);
});

test("termPressure(fit, side, sized) of less flow says how fast what is read grows with the demand fitted", () => {
  const { explained, fit } = oneGauge(troubled.thin());
  const [sized] = sizedOf(fit);
  const slope = onePut(sized && termPressure(explained, fit, sized), "p", "P");
  const little = ["1", "plain", "a little more, and a little less"];
  expect(["a", "b"].map((letter) => told(onePut(slope, letter, "w", "f", "c")))).toEqual([
    ["times the demand fitted", 1.05, ...little],
    ["times the demand fitted", 0.95, ...little],
  ]);
  expect(told(onePut(slope, "s"))).toEqual(["difference of the demands", 0.1, "1", "plain", "the one less the other"]);
  for (const letter of ["a", "b"]) expect(onePut(slope, letter, "a").origin.by).not.toBe("words");
});

test("termPressure(fit, side, sized) of a step is worked out from the file with more and with less", () => {
  const { explained, fit } = oneGauge(troubled.step());
  const [sized] = sizedOf(fit);
  const step = sized && termPressure(explained, fit, sized);
  for (const letter of ["a", "b"]) expect(onePut(step, letter, "a").origin.by).not.toBe("words");
});

test("sizeStep(fit, side, place) finds each of several by its place", () => {
  const { explained, fit } = oneGauge({
    ...troubled.step(),
    terms: [
      { kind: "outlier", at: 2 },
      { kind: "step", at: 4 },
      { kind: "outlier", at: 6 },
    ],
    sizes: [0, 2, 0],
  });
  const { parameters } = explained.fitted.fit;
  expect([0, 1, 2].map((place) => sizeStep(explained, fit, place).value)).toEqual(parameters.slice(3));
  expect(new Set(parameters.slice(3)).size).toBe(3);
});
