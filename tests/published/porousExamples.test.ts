import { filter, fuelState, solve } from "@thirstline/core";
import { expect, test } from "vitest";
import { asArithmetic } from "../support/arithmetic.js";
import { answerIn, givenOf } from "../support/given.js";
import { porousExamples } from "../support/porousExamples.js";
import { measure, type Row, readTable, report } from "../support/table.js";

const answers = readTable("porous/examples-answers.csv");

const answer = (row: Row): number =>
  answerIn(porousExamples, row.text("example"), row.text("quantity"), row.text("unit"));

test.each([
  ["published", 3],
  ["recomputed", 11],
] as const)("worked examples of porous beds agree with the %s figures as printed", (column, rows) => {
  const filled = answers.rows.filter((row) => row.has(column));
  const error = measure(filled, answer, column, "half steps");
  report(`porous/examples-${column}`, column === "published" ? answers : asArithmetic(answers), error);
  expect(filled).toHaveLength(rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("filter({ media }) of the printed sand permeability conducts 60 m a day", () => {
  const of = givenOf(readTable("porous/examples-given.csv"), "heath-sand");
  const printed = answers.rows.find((row) => row.text("quantity") === "permeability");
  const permeability = printed?.number("recomputed") ?? Number.NaN;
  const water = fuelState({ density: of("density"), kinematicViscosity: of("dynamic viscosity") / of("density") });
  const sand = filter({ media: { area: 1, thickness: 1, permeability } });
  const conductivity = solve(sand, water).flow(of("density") * of("free fall"));
  const rounding = (printed?.halfStep("recomputed") ?? 0) / permeability;
  expect(Math.abs(conductivity / of("conductivity") - 1)).toBeLessThanOrEqual(rounding);
});
