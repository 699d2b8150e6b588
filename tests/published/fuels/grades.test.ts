import { dieselGrades, fuelState, fuels } from "@thirstline/core";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../../support/table.js";

test("dieselGrades are those of EN 590 and ASTM D975, all of them", () => {
  const table = readTable("fuels/diesel-grades.csv");
  const kelvin = (row: Row, column: string) => row.number(column) + 273.15;
  expect(table.rows).toHaveLength(13);
  expect(dieselGrades).toHaveLength(13);
  table.rows.forEach((row, index) => {
    const grade = dieselGrades[index];
    expect.soft([grade?.standard, grade?.grade]).toEqual([row.text("standard"), row.text("grade")]);
    // To 1e-9 K: taking 273.15 off and putting it on again costs the last figure.
    const rounded = (kelvins: number | undefined) => kelvins?.toFixed(9);
    const published = (column: string) => (row.has(column) ? kelvin(row, column) : undefined);
    expect.soft(rounded(grade?.coldFilterPluggingPointAtMost), `${row}`).toBe(rounded(published("cfpp_c")));
    expect.soft(rounded(grade?.cloudPointAtMost), `${row}`).toBe(rounded(published("cloud_c")));
    const density = row.has("density_from")
      ? { from: row.number("density_from"), to: row.number("density_to") }
      : undefined;
    expect.soft(grade?.density, `${row}`).toEqual(density);
    expect.soft((grade?.kinematicViscosity.from ?? 0) * 1e6, `${row}`).toBeCloseTo(row.number("v_from_mm2_s"), 9);
    expect.soft((grade?.kinematicViscosity.to ?? 0) * 1e6, `${row}`).toBeCloseTo(row.number("v_to_mm2_s"), 9);
  });
  const thickest = (row: Row) => (dieselGrades[table.rows.indexOf(row)]?.kinematicViscosity.to ?? Number.NaN) * 1e6;
  report("fuels/diesel-grades", table, measure(table.rows, thickest, "v_to_mm2_s"));
});

test("fuelState(fuel, { temperature }) of the representative fuels lies inside the limits of what they stand for", () => {
  const table = readTable("fuels/limits-met.csv");
  expect(table.rows).toHaveLength(16);
  const value = (row: Row): number => {
    const fuel = fuels[row.text("fuel") as keyof typeof fuels];
    const state = fuelState(fuel, { temperature: row.number("t_c") + 273.15 });
    return row.text("property") === "v_mm2_s" ? state.kinematicViscosity * 1e6 : state.density;
  };
  // How far beyond the nearer limit.
  const held = (row: Row) => Math.min(Math.max(value(row), row.number("from")), row.number("to"));
  const error = measure(table.rows, value, held);
  report("fuels/limits-met", table, error);
  expect(error.max, error.worst).toBe(0);
});
