import { betaEfficiency, captureOf, countFrom, distributionFromMass, throughFilter } from "@thirstline/core";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../../support/table.js";

test("betaEfficiency(beta) gives the printed efficiencies", () => {
  const table = readTable("soil/beta-efficiency.csv");
  const got = (row: Row) => 100 * betaEfficiency(row.number("beta"));
  const error = measure(table.rows, got, "efficiency_percent", "half steps");
  report("soil/beta-efficiency", table, error);
  expect(table.rows).toHaveLength(5);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("captureOf({ betas }) of the published two points gives betas between them, on the test dust, as printed", () => {
  const table = readTable("soil/beta-line.csv");
  const element = captureOf({
    betas: [
      { size: 10e-6, beta: 2 },
      { size: 25e-6, beta: 75 },
    ],
  });
  if (!element.known) throw new Error(element.reason);
  const before = distributionFromMass({ mass: 5e-3 });
  const behind = throughFilter(before, element.efficiency.middle);
  const got = (row: Row) => {
    const size = row.number("size_um") / 1e6;
    return countFrom(before, size) / countFrom(behind, size);
  };
  const error = measure(table.rows, got, "beta", "half steps");
  report("soil/beta-line", table, error);
  expect(table.rows).toHaveLength(4);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});
