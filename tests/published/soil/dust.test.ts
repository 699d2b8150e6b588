import {
  cakeLaw,
  cakeResistance,
  convertSize,
  countFrom,
  countsOf,
  distributionFromMass,
  parseCode,
  resistanceRatio,
  sauterSize,
  type TestDust,
} from "@thirstline/core";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report, type Table } from "../../support/table.js";

const perMl = (row: Row): number => {
  const dust = distributionFromMass({ mass: 1e-3, dust: row.text("dust") as TestDust });
  return countFrom(dust, row.number("size_um") / 1e6) / 1e6;
};

/** The rows that do not agree as printed: the first columns of each. */
const misfits = (table: Table, got: (row: Row) => number, column: string): string[] =>
  table.rows
    .filter((row) => measure([row], got, column, "half steps").max > 1)
    .map((row) =>
      table.columns
        .slice(0, 2)
        .map((name) => row.text(name))
        .join(" "),
    );

test("distributionFromMass(given) agrees with sixty-digit arithmetic, three dusts from 1 to 100 um", () => {
  const table = readTable("soil/exact-dust.csv");
  const error = measure(table.rows, perMl, "per_ml");
  report("soil/exact-dust", table, error);
  expect(table.rows).toHaveLength(30);
  expect(error.max, error.worst).toBeLessThanOrEqual(3e-15);
});

test("distributionFromMass(given) gives the recalled counts at 6 um and up, but not those at 4 um", () => {
  const table = readTable("soil/dust-counts.csv");
  report("soil/dust-counts", table, measure(table.rows, perMl, "per_ml", "half steps"));
  expect(table.rows).toHaveLength(11);
  // The rule the table states (volume straight over log size) gives 945.7, 402.9 and 956.4 here; see exact-dust.csv.
  // Its makers must have done something else below 5 um. The difference of 8 to 22 % is well inside its band, a factor
  // of 2.
  expect(misfits(table, perMl, "per_ml")).toEqual(["A3 medium 4", "A3 medium 6", "A2 fine 4"]);
});

test("distributionFromMass(given) is within the factor of 2 that older liquid practice leaves", () => {
  const table = readTable("soil/dust-practice.csv");
  const got = (row: Row) => {
    const mass = row.number("mass_mg_l") * 1e-3;
    const size = convertSize(row.number("old_size_um") / 1e6, "ISO 4402", "um(c)");
    return countFrom(distributionFromMass({ mass, dust: row.text("dust") as TestDust }), size) / 1e6;
  };
  report("soil/dust-practice", table, measure(table.rows, got, "per_ml"));
  expect(table.rows).toHaveLength(2);
  for (const row of table.rows) {
    expect(row.number("per_ml") / got(row)).toBeLessThanOrEqual(2);
    expect(row.number("per_ml") / got(row)).toBeGreaterThanOrEqual(1 / 2);
  }
});

test("a code's upper limits as medium dust agree at 6 and 14 um, but not at 4 um", () => {
  const table = readTable("soil/code-as-dust.csv");
  const got = (row: Row) => {
    const limits = countsOf(parseCode(row.text("code")));
    const limit = { 4: limits.at4, 6: limits.at6, 14: limits.at14 }[row.number("size_um")]?.upTo ?? Number.NaN;
    return (limit * 1e6) / countFrom(distributionFromMass({ mass: 1e-3 }), row.number("size_um") / 1e6);
  };
  report("soil/code-as-dust", table, measure(table.rows, got, "mass_mg_l", "half steps"));
  expect(table.rows).toHaveLength(6);
  // For the same reason as above: 2.64 and 42.3 mg/L where the table has 2.2 and 35.
  expect(misfits(table, got, "mass_mg_l")).toEqual(["18/16/13 4", "22/21/18 4"]);
});

test("sauterSize(dust) agrees with sixty-digit arithmetic", () => {
  const table = readTable("soil/exact-sauter.csv");
  const error = measure(table.rows, (row) => sauterSize(row.text("dust") as TestDust) * 1e6, "sauter_um");
  report("soil/exact-sauter", table, error);
  expect(table.rows).toHaveLength(3);
  expect(error.max, error.worst).toBeLessThanOrEqual(4e-16);
});

test("sauterSize(dust) is 0.7 and 3.7 % above the recalled sizes, which take the finest dust as finer", () => {
  const table = readTable("soil/sauter.csv");
  const got = (row: Row) => sauterSize(row.text("dust") as TestDust) * 1e6;
  report("soil/sauter", table, measure(table.rows, got, "sauter_um", "half steps"));
  expect(table.rows.map((row) => Number((100 * (got(row) / row.number("sauter_um") - 1)).toFixed(1)))).toEqual([
    0.7, 3.7,
  ]);
});

test("cakeResistance(given) gives the printed resistances, within the rounding of the printed size as well", () => {
  const table = readTable("soil/cake-resistance.csv");
  const at = (row: Row, size: number) => cakeResistance({ porosity: row.number("porosity"), size: size / 1e6 });
  const error = measure(table.rows, (row) => at(row, row.number("size_um")), "resistance_m_kg", "half steps");
  report("soil/cake-resistance", table, error);
  expect(table.rows).toHaveLength(6);
  for (const row of table.rows) {
    const [size, half] = [row.number("size_um"), row.halfStep("size_um")];
    const [printed, rounding] = [row.number("resistance_m_kg"), row.halfStep("resistance_m_kg")];
    expect(at(row, size - half)).toBeGreaterThanOrEqual(printed - rounding);
    expect(at(row, size + half)).toBeLessThanOrEqual(printed + rounding);
  }
});

test("cakeLaw(given) of 20 g/m2 of dust costs the printed drop", () => {
  const table = readTable("soil/cake-drop.csv");
  const got = (row: Row) => {
    const porosity = row.number("porosity");
    const specificResistance = cakeResistance({ porosity, size: row.number("size_um") / 1e6 });
    const law = cakeLaw({ specificResistance, mediumResistance: 1e10 });
    const clean = row.number("dynamic_viscosity_pa_s") * 1e10 * row.number("velocity_m_s");
    return (resistanceRatio(law, row.number("soil_kg_m2")) - 1) * clean;
  };
  const error = measure(table.rows, got, "drop_pa", "half steps");
  report("soil/cake-drop", table, error);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});
