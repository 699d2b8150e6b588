import {
  filtrateAt,
  type LoadingLaw,
  type LoadingLawName,
  lawConstants,
  loadAtRatio,
  loadingLaw,
  resistanceRatio,
  timeToFilter,
} from "@thirstline/core";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../../support/table.js";
import { filtrateByIntegration, ratioByIntegration } from "./loadingByIntegration.js";

// Ceilings sit just above today's error; all forms are closed but cake-standard at constant pressure, so rounding only.
const CEILING = { rows: 54, ratio: 2e-15, filtrate: 4e-16, time: 4e-16 };

const names = Object.keys(lawConstants) as LoadingLawName[];

// The published check set, in its own letters.
const given = { initialVelocity: 1e-3, time: 700 };
const perMetre = {
  complete: 8e-4 / given.initialVelocity,
  intermediate: 1.2,
  standard: 0.9,
  cake: 4e4 * given.initialVelocity,
};
const checked = (name: LoadingLawName): LoadingLaw =>
  loadingLaw(name, Object.fromEntries(lawConstants[name].map((one) => [one, perMetre[one]])));
const load = given.initialVelocity * given.time;

test.each(["ratio", "filtrate_m"])("loading laws give the published check set as printed: %s", (column) => {
  const table = readTable("soil/loading-laws.csv");
  const got = (row: Row) => {
    const law = checked(row.text("law") as LoadingLawName);
    return column === "ratio" ? resistanceRatio(law, load) : filtrateAt(law, given);
  };
  const error = measure(table.rows, got, column, "half steps");
  report(`soil/loading-laws-${column}`, table, error);
  expect(table.rows).toHaveLength(7);
  // "29" is printed in full; a cake's closed form meets it to the last bit but one, which is far inside half a unit.
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test.each(names)("the %s law agrees with its mechanism integrated step by step", (name) => {
  const law = checked(name);
  expect(resistanceRatio(law, load) / ratioByIntegration(law, load)).toBeCloseTo(1, 11);
  const filtrate = filtrateByIntegration(law, given.initialVelocity, given.time);
  expect(filtrateAt(law, given) / filtrate).toBeCloseTo(1, 11);
});

test("loading laws agree with sixty-digit arithmetic, also where a constant is next to nothing", () => {
  const table = readTable("soil/exact-loading.csv");
  const lawOf = (row: Row) => {
    const name = row.text("law") as LoadingLawName;
    return loadingLaw(name, Object.fromEntries(lawConstants[name].map((one) => [one, row.number(one)])));
  };
  const runOf = (row: Row) => ({ initialVelocity: row.number("velocity_m_s"), time: row.number("time_s") });
  const ratio = measure(
    table.rows,
    (row) => resistanceRatio(lawOf(row), row.number("velocity_m_s") * row.number("time_s")),
    "ratio",
  );
  const filtrate = measure(table.rows, (row) => filtrateAt(lawOf(row), runOf(row)), "filtrate_m");
  const time = measure(
    table.rows,
    (row) => timeToFilter(lawOf(row), { ...runOf(row), filtrate: row.number("filtrate_m") }),
    "time_s",
  );
  report("soil/exact-loading-ratio", table, ratio);
  report("soil/exact-loading-filtrate", table, filtrate);
  report("soil/exact-loading-time", table, time);
  expect(table.rows).toHaveLength(CEILING.rows);
  expect(new Set(table.rows.map((row) => row.text("law")))).toEqual(new Set(names));
  expect(ratio.max, ratio.worst).toBeLessThanOrEqual(CEILING.ratio);
  expect(filtrate.max, filtrate.worst).toBeLessThanOrEqual(CEILING.filtrate);
  expect(time.max, time.worst).toBeLessThanOrEqual(CEILING.time);
});

test("filtrateAt(cake-standard, given) agrees with the published closed form in cosines", () => {
  const { cake, standard } = perMetre;
  const { initialVelocity, time } = given;
  const square = 4 / 9 + (4 * standard) / (3 * cake) + (2 * standard ** 2 * initialVelocity * time) / (3 * cake);
  const b = Math.sqrt(square);
  const a =
    8 / (27 * b ** 3) +
    (4 * standard) / (3 * b ** 3 * cake) -
    (4 * standard ** 2 * initialVelocity * time) / (3 * b ** 3 * cake);
  const closed = (2 / standard) * (b * Math.cos((2 * Math.PI) / 3 - Math.acos(a) / 3) + 1 / 3);
  expect(filtrateAt(checked("cake-standard"), given) / closed).toBeCloseTo(1, 12);
});

test.each(names)("loadAtRatio(%s law, ratio) turns the check set round", (name) => {
  const law = checked(name);
  expect(loadAtRatio(law, resistanceRatio(law, load)) / load).toBeCloseTo(1, 13);
});
