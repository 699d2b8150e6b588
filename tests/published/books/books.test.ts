import { fuelState, line, solve } from "@thirstline/core";
import { expect, test } from "vitest";
import { type Answers, answerIn } from "../../support/given.js";
import { measure, type Row, readTable, report } from "../../support/table.js";
import { areaOf } from "./asIf.js";
import { chartBooks } from "./chartBooks.js";
import { formulaBooks } from "./formulaBooks.js";

// Ceilings sit just above today's error. Lower one when a method improves; raise one only with the reason.
const CEILING = {
  formula: { rows: 35, halfSteps: 1 },
  // A friction factor read off the chart lies up to 4 % from the formula, and all that follows with it.
  chart: { rows: 22, relative: 0.04 },
  capillaries: { rows: 3, halfSteps: 1 },
};

const answer = (answers: Readonly<Record<string, Answers>>) => (row: Row) =>
  answerIn(answers, row.text("example"), row.text("quantity"), row.text("unit"));

test("solve(pipes, fuel) answers worked examples whose books use a friction formula, as printed", () => {
  const table = readTable("lines/formula-books-answers.csv");
  const error = measure(table.rows, answer(formulaBooks), "published", "half steps");
  report("lines/formula-books", table, error);
  expect(table.rows).toHaveLength(CEILING.formula.rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING.formula.halfSteps);
});

test("solve(pipes, fuel) answers worked examples whose books read Moody's chart, as far as a chart is read", () => {
  const table = readTable("lines/chart-books-answers.csv");
  const error = measure(table.rows, answer(chartBooks), "published");
  report("lines/chart-books", table, error);
  expect(table.rows).toHaveLength(CEILING.chart.rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING.chart.relative);
});

test("solve(capillary, fuel) gives the viscosity, or the flow, that three books find with a capillary", () => {
  const table = readTable("lines/capillaries.csv");
  const capillary = (row: Row) => line({ length: row.number("length_m"), bore: row.number("bore_m"), roughness: 0 });
  const fuelOf = (viscosity: number) => fuelState({ density: 1000, kinematicViscosity: viscosity / 1000 });
  // Laminar drop is in step with viscosity: a liquid of 1 Pa s tells how thick the book's is.
  const viscosity = (row: Row) =>
    row.number("drop_pa") / solve(capillary(row), fuelOf(1)).drop(row.number("flow_m3_s"));
  const velocity = (row: Row) =>
    solve(capillary(row), fuelOf(row.number("viscosity_pa_s"))).flow(row.number("drop_pa")) /
    areaOf(row.number("bore_m"));
  const found = table.rows.filter((row) => !row.has("velocity_m_s"));
  const metered = table.rows.filter((row) => row.has("velocity_m_s"));
  const error = measure(found, viscosity, "viscosity_pa_s", "half steps");
  const speed = measure(metered, velocity, "velocity_m_s", "half steps");
  report("lines/capillaries", table, error);
  expect([found.length, metered.length]).toEqual([2, 1]);
  expect(table.rows).toHaveLength(CEILING.capillaries.rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING.capillaries.halfSteps);
  expect(speed.max, speed.worst).toBeLessThanOrEqual(CEILING.capillaries.halfSteps);
});
