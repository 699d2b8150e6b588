import {
  type CakeRun,
  cakeFromLine,
  cakeLaw,
  fitCakeRun,
  loadAtRatio,
  loadingLaw,
  rescaleLaw,
  resistanceRatio,
  timeToFilter,
} from "@thirstline/core";
import { expect, test } from "vitest";
import { asArithmetic } from "../../support/arithmetic.js";
import { type Answers, answerIn, givenOf } from "../../support/given.js";
import { measure, type Row, readTable, report } from "../../support/table.js";

const given = readTable("soil/cake-given.csv");
const readings = readTable("soil/cake-readings.csv");
const answers = readTable("soil/cake-answers.csv");

const readingsOf = (example: string) =>
  readings.rows
    .filter((row) => row.text("example") === example)
    .map((row) => ({ time: row.number("time_s"), filtrate: row.number("filtrate_m3") }));

const worked: Readonly<Record<string, Answers>> = {
  geankoplis: geankoplis(),
  rhodes: rhodes(),
  "constant-rate": constantRate(),
};

function geankoplis(): Answers {
  const of = givenOf(given, "geankoplis");
  const run: CakeRun = {
    area: of("area"),
    drop: of("drop"),
    dynamicViscosity: of("dynamic viscosity"),
    solids: of("solids"),
    readings: readingsOf("geankoplis"),
  };
  const line = cakeFromLine(run, { slope: of("slope"), start: of("start") });
  const fit = fitCakeRun(run);
  return {
    "specific resistance by line": line.specificResistance,
    "medium resistance by line": line.mediumResistance,
    "slope by least squares": fit.slope,
    "start by least squares": fit.start,
    "specific resistance by least squares": fit.specificResistance,
    "medium resistance by least squares": fit.mediumResistance,
  };
}

function rhodes(): Answers {
  const of = givenOf(given, "rhodes");
  const area = of("area");
  // Solids and viscosity are not stated; they cancel, so water with 1 kg/m3 stands in.
  const liquid = { area, drop: of("drop"), dynamicViscosity: 1e-3, solids: 1 };
  const fit = fitCakeRun({ ...liquid, readings: readingsOf("rhodes") });
  const law = rescaleLaw(cakeLaw(fit), liquid.solids);
  const timeAt = (drop: number) =>
    timeToFilter(law, {
      initialVelocity: drop / (liquid.dynamicViscosity * fit.mediumResistance),
      filtrate: of("filtrate") / area,
    });
  return {
    slope: fit.slope,
    start: fit.start,
    "time at first drop": timeAt(of("drop")),
    "time at later drop": timeAt(of("later drop")),
  };
}

function constantRate(): Answers {
  const of = givenOf(given, "constant-rate");
  // With the medium neglected all of the drop is the cake's: what the law adds to 1. Load goes with time at constant
  // rate.
  const law = loadingLaw("cake", { cake: of("drop") / of("time") });
  return { "later drop": resistanceRatio(law, of("later time")) - 1 };
}

const answer = (row: Row): number => answerIn(worked, row.text("example"), row.text("quantity"), row.text("unit"));

test.each([
  ["published", 4],
  ["recomputed", 11],
] as const)("worked examples of cake filtration agree with the %s figures as printed", (column, rows) => {
  const filled = answers.rows.filter((row) => row.has(column));
  const error = measure(filled, answer, column, "half steps");
  report(`soil/cake-${column}`, column === "published" ? answers : asArithmetic(answers), error);
  expect(filled).toHaveLength(rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("the book's line does not pass its first readings, nor is it their least squares", () => {
  const of = givenOf(given, "geankoplis");
  const [first] = readingsOf("geankoplis");
  const onLine = of("start") + of("slope") * (first?.filtrate ?? Number.NaN);
  expect((first?.time ?? Number.NaN) / (first?.filtrate ?? Number.NaN) / onLine).toBeGreaterThan(1.1);
  expect(readings.rows).toHaveLength(15);
});

test("loadAtRatio(cakeLaw(given), 2) is the cake as resistant as the medium", () => {
  const law = cakeLaw({ specificResistance: 1.863e11, mediumResistance: 10.63e10 });
  expect(loadAtRatio(law, 2)).toBeCloseTo(10.63e10 / 1.863e11, 12);
});
