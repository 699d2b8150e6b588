import { atmosphere } from "@thirstline/core";
import { quantity } from "@thirstline/spec";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../../support/table.js";

// Ceilings sit just above today's error; see viscosity.test.ts.
const CEILING = {
  // Cut off and not rounded, as it seems: 264.999 is printed 264.99.
  "printed-1976": { rows: 10, halfSteps: 1.8 },
  // The same: 24.896 is printed 24.89. At 20 000 ft the table has 13.74 for 13.7501.
  "inches-of-mercury": { rows: 21, halfSteps: 2.03 },
};

test("atmosphere(altitude, geometric) is the 1976 standard's own table, within a unit of its last figure", () => {
  const table = readTable("atmosphere/printed-1976.csv");
  const got = (row: Row) => atmosphere(row.number("altitude_m"), "geometric") / 100;
  const error = measure(table.rows, got, "pressure_mb", "half steps");
  report("atmosphere/printed-1976", table, error);
  expect(table.rows).toHaveLength(CEILING["printed-1976"].rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING["printed-1976"].halfSteps);
});

test("atmosphere(altitude) is what a pilot's table has, within a unit of its last figure", () => {
  const table = readTable("atmosphere/inches-of-mercury.csv");
  const read = quantity("1 inHg", "pressure");
  const inch = "value" in read ? read.value : Number.NaN;
  const got = (row: Row) => atmosphere(row.number("altitude_ft") * 0.3048) / inch;
  const error = measure(table.rows, got, "pressure_inhg", "half steps");
  report("atmosphere/inches-of-mercury", table, error);
  expect(table.rows).toHaveLength(CEILING["inches-of-mercury"].rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING["inches-of-mercury"].halfSteps);
});
