import { expect, test } from "vitest";
import { oneGauge, troubled } from "../../../../../tests/support/gaugeScenes.js";
import { sizedOf } from "../../gauge/sizedOf.js";
import { proofOf } from "../proof.js";
import type { Step } from "../Step.js";
import { sizeStep, termPressure } from "./termSteps.js";

const put = ({ origin }: Step, letter: string): Step | undefined =>
  origin.by === "formula" ? origin.inputs.find((input) => input.letter === letter)?.steps[0] : undefined;

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
  const a = step && put(step, "a");
  const more = a && put(a, "r");
  const e = more && put(more, "e");
  if (!e) throw new Error("nothing is added by cold");
  const told = ["B", "T", "t"].map((letter) => {
    const { name, value, unit, kind, origin } = put(e, letter) as Step;
    return [name, value, unit, kind, origin.by === "words" && origin.words];
  });
  expect(told).toEqual([
    ["temperature below which it shows", 288.15, "K", "temperature", "the warmest reading, or half-way to the coldest"],
    ["coldest reading", 278.15, "K", "temperature", "noted, or taken from the file"],
    ["ten kelvins", 10, "K", null, "a choice of unit"],
  ]);
  expect(e.value).toBeCloseTo(sizeStep(explained, fit, 0).value * (put(e, "r")?.value ?? 0), 9);
});

test("termPressure(fit, side, sized) of a fall at one time alone takes a second for the time between", () => {
  const asked = troubled.fall();
  const readings = asked.readings.map((one) => ({ ...one, hours: 3.6e6 }));
  const { explained, fit } = oneGauge({ ...asked, readings });
  const [sized] = sizedOf(fit);
  const step = sized && termPressure(explained, fit, sized);
  const more = step && put(step, "a");
  const r = more && put(more, "r");
  const e = r && put(r, "e");
  const s = e && put(e, "s");
  expect([s?.name, s?.value, s?.unit, s?.kind, s?.origin]).toEqual([
    "a second",
    1,
    "s",
    "running time",
    { by: "words", words: "so that one reading alone does no harm", from: [] },
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
