import { expect, test } from "vitest";
import { studentQuantile } from "../../../packages/study/src/gauge/fit/studentQuantile.js";
import { measure, readTable, report } from "../../support/table.js";

test("studentQuantile(share, freedom) agrees with the printed table in its last figure", () => {
  const table = readTable("regression/student-t.csv");
  expect(table.rows).toHaveLength(29);
  const error = measure(
    table.rows,
    (row) => studentQuantile(row.number("share"), row.number("freedom")),
    "quantile",
    "half steps",
  );
  report("gauge/student-t", table, error);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("studentQuantile(share, freedom) is odd about one half", () => {
  for (const freedom of [1, 2.5, 7, 40]) {
    expect(studentQuantile(0.9, freedom)).toBeCloseTo(-studentQuantile(0.1, freedom), 9);
  }
});
