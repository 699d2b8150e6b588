import {
  densityAt,
  type Fuel,
  fuelState,
  fuels,
  type ProductGroup,
  volumeCorrection,
  volumeCorrection60F,
} from "@thirstline/core";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../../support/table.js";

// Ceilings sit just above today's error; see viscosity.test.ts.
const CEILING = {
  "volume-correction": { rows: 4, halfSteps: 1, otherForm: 5e-6 },
  "exact-volume-correction": { rows: 9, relative: 1e-15 },
  "density-printed": { rows: 5, halfSteps: 1 },
  "density-measured": { rows: 14, relative: 2.6e-3 }, // a light jet fuel at -20 degC, read off a figure
  // Distance of one sample from an average, not an error: 0.7 % in density at 40 degC, 5 % in viscosity.
  "jet-survey": { rows: 9, density: 7.3e-3, viscosity: 0.047 },
  // A-2 at 15 degC straight between 0 and 20 degC, against the line over all five points.
  "density-15": { rows: 14, relative: 7e-4, slope: 0.03 },
};

const kelvin = (row: Row) => row.number("t_c") + 273.15;

test("volumeCorrection and volumeCorrection60F give the printed factors", () => {
  const table = readTable("fuels/volume-correction.csv");
  const factor = (row: Row): number => {
    const degrees = Number.parseFloat(row.text("temperature"));
    const density = row.number("density_kg_m3");
    if (row.text("basis") === "15 C") return volumeCorrection({ densityAt15: density, temperature: degrees + 273.15 });
    return volumeCorrection60F({ densityAt60F: density, temperature: (degrees + 459.67) / 1.8 });
  };
  const own = table.rows.filter((row) => row.text("form") === "1980");
  const other = table.rows.filter((row) => row.text("form") === "2004");
  const error = measure(own, factor, "vcf", "half steps");
  const otherForm = measure(other, factor, "vcf");
  report("fuels/volume-correction", table, error);
  report("fuels/volume-correction 2004 form", table, otherForm);
  expect(table.rows).toHaveLength(CEILING["volume-correction"].rows);
  expect([own.length, other.length]).toEqual([3, 1]);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING["volume-correction"].halfSteps);
  expect(otherForm.max, otherForm.worst).toBeLessThanOrEqual(CEILING["volume-correction"].otherForm);
});

test("volumeCorrection(given) agrees with fifty-digit arithmetic and picks the group the density belongs to", () => {
  const table = readTable("fuels/exact-volume-correction.csv");
  const factor = (row: Row, stated: boolean) => {
    const group = row.text("group") as ProductGroup;
    const given = { densityAt15: row.number("density_15_c_kg_m3"), temperature: kelvin(row) };
    // No density stands for crude: it must be asked for.
    return volumeCorrection(stated || group === "crude" ? { ...given, group } : given);
  };
  const stated = measure(table.rows, (row) => factor(row, true), "vcf");
  const picked = measure(table.rows, (row) => factor(row, false), "vcf");
  report("fuels/exact-volume-correction", table, picked);
  expect(table.rows).toHaveLength(CEILING["exact-volume-correction"].rows);
  expect(stated.max, stated.worst).toBeLessThanOrEqual(CEILING["exact-volume-correction"].relative);
  expect(picked.max, picked.worst).toBeLessThanOrEqual(CEILING["exact-volume-correction"].relative);
});

const corrected = (row: Row) =>
  densityAt({ kind: "volume correction", densityAt15: row.number("density_15_c_kg_m3") }, kelvin(row));

test("densityAt(volume correction, temperature) gives the printed densities", () => {
  const table = readTable("fuels/density-printed.csv");
  const error = measure(table.rows, corrected, "density_kg_m3", "half steps");
  report("fuels/density-printed", table, error);
  expect(table.rows).toHaveLength(CEILING["density-printed"].rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING["density-printed"].halfSteps);
});

test("densityAt(volume correction, temperature) meets measured jet fuel and diesel", () => {
  const table = readTable("fuels/density-measured.csv");
  const error = measure(table.rows, corrected, "density_kg_m3");
  report("fuels/density-measured", table, error);
  expect(table.rows).toHaveLength(CEILING["density-measured"].rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING["density-measured"].relative);
});

test("fuelState(fuel, 15 degC) has the published density, and the published slope about it", () => {
  const table = readTable("fuels/density-15.csv");
  const fuelOf = (row: Row): Fuel => fuels[row.text("fuel") as keyof typeof fuels];
  const at = (row: Row, celsius: number) => fuelState(fuelOf(row), { temperature: celsius + 273.15 }).density;
  // Blends are printed to whole kg/m3 though their parts are known better.
  const blends = table.rows.filter((row) => row.text("status").startsWith("computed") && !row.has("slope_from"));
  const plain = table.rows.filter((row) => !blends.includes(row));
  const printed = measure(blends, (row) => at(row, 15), "density_15_c_kg_m3", "half steps");
  const error = measure(plain, (row) => at(row, 15), "density_15_c_kg_m3");
  report("fuels/density-15", table, error);
  expect(table.rows).toHaveLength(CEILING["density-15"].rows);
  expect(blends).toHaveLength(3);
  expect(printed.max, printed.worst).toBeLessThanOrEqual(1);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING["density-15"].relative);

  const sloped = table.rows.filter((row) => row.has("slope_from"));
  const slope = (row: Row) => (at(row, 0) - at(row, 30)) / 30;
  const nearest = (row: Row) => Math.min(Math.max(slope(row), row.number("slope_from")), row.number("slope_to"));
  const error30 = measure(sloped, slope, nearest);
  report("fuels/density-15 slope", table, error30);
  expect(sloped).toHaveLength(7);
  expect(error30.max, error30.worst).toBeLessThanOrEqual(CEILING["density-15"].slope);
});

test("fuelState(kerosene, { temperature }) lies near the average of the world's jet fuel", () => {
  const table = readTable("fuels/jet-survey.csv");
  const densities = table.rows.filter((row) => row.text("property") === "density_kg_m3");
  const viscosities = table.rows.filter((row) => row.text("property") === "v_mm2_s");
  const state = (row: Row) => fuelState(fuels.kerosene, { temperature: kelvin(row) });
  const density = measure(densities, (row) => state(row).density, "value");
  const viscosity = measure(viscosities, (row) => state(row).kinematicViscosity * 1e6, "value");
  report("fuels/jet-survey density", table, density);
  report("fuels/jet-survey viscosity", table, viscosity);
  expect(table.rows).toHaveLength(CEILING["jet-survey"].rows);
  expect([densities.length, viscosities.length]).toEqual([8, 1]);
  expect(density.max, density.worst).toBeLessThanOrEqual(CEILING["jet-survey"].density);
  expect(viscosity.max, viscosity.worst).toBeLessThanOrEqual(CEILING["jet-survey"].viscosity);
});
