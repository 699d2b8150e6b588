import { fuelState, line, solve } from "@thirstline/core";
import { expect, test } from "vitest";
import { asArithmetic } from "../support/arithmetic.js";
import { answerIn, givenOf } from "../support/given.js";
import { laminarExamples } from "../support/laminarExamples.js";
import { measure, type Row, readTable, report } from "../support/table.js";
import { turbulentExamples } from "../support/turbulentExamples.js";

const lineExamples = { ...laminarExamples, ...turbulentExamples };
const answers = readTable("lines/examples-answers.csv");

const answer = (row: Row): number =>
  answerIn(lineExamples, row.text("example"), row.text("quantity"), row.text("unit"));

test.each([
  ["published", 25],
  ["recomputed", 27],
] as const)("worked examples of lines agree with the %s figures as printed", (column, rows) => {
  const filled = answers.rows.filter((row) => row.has(column));
  const error = measure(filled, answer, column, "half steps");
  report(`lines/examples-${column}`, column === "published" ? answers : asArithmetic(answers), error);
  expect(filled).toHaveLength(rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("frictionFactor(reynolds, relativeRoughness) lies between the two figures White reads for example 6.6", () => {
  expect(turbulentExamples["white-6.6"]?.["friction factor"]).toBeGreaterThan(0.0197);
  expect(turbulentExamples["white-6.6"]?.["friction factor"]).toBeLessThan(0.02);
});

test("solve(line, fuel).drop(flow) does not depend on the density Giancoli leaves out", () => {
  const of = givenOf(readTable("lines/examples-given.csv"), "giancoli-62");
  const pipe = line({ length: of("length"), bore: of("bore"), roughness: 0 });
  const drops = [700, 900, 1000].map((density) =>
    solve(pipe, fuelState({ density, kinematicViscosity: of("dynamic viscosity") / density })).drop(of("flow")),
  );
  for (const drop of drops) expect(drop / (drops[0] ?? 0)).toBeCloseTo(1, 14);
});
