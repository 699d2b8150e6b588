import { bowlDrainInterval, cleanDropFactor, settlingSpeed, settlingTime, waterSolubility } from "@thirstline/core";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../../support/table.js";

// Stokes's law where others have worked it out, and what stands around it. Ceilings as in tests/published/fuels.
const CEILING = { examples: 4, cleanDrops: 4, bowls: 3, measured: { rows: 3, relative: 0.1 } };

const examples = readTable("soil/stokes-examples.csv");

const given = (row: Row) => {
  const density = row.number("fluid_density_kg_m3");
  return {
    size: row.number("size_um") / 1e6,
    density: row.number("density_kg_m3"),
    fuel: { density, kinematicViscosity: row.number("dynamic_viscosity_pa_s") / density },
  };
};

function worked(row: Row): number {
  if (row.has("depth_m")) {
    const found = settlingTime({ depth: row.number("depth_m"), ...given(row) });
    if (!found.known) throw new Error(found.reason);
    return row.text("quantity") === "time_h" ? found.time / 3600 : found.time;
  }
  // Each printed figure is the law's alone; a globule of 150 um has outgrown it, and the standard takes it all the same.
  const found = settlingSpeed(given(row));
  if (!found.known) throw new Error(found.reason);
  return row.text("quantity") === "rise_cm_s" ? -found.speed * 100 : found.speed;
}

test("settlingSpeed(given) and settlingTime(given) give the printed speeds and times of worked examples", () => {
  const error = measure(examples.rows, worked, "published", "half steps");
  report("soil/stokes-examples", examples, error);
  expect(examples.rows).toHaveLength(CEILING.examples);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("settlingSpeed(given) says how far each worked example is from creeping flow", () => {
  const [inAir, globule, silt, clay] = examples.rows.map((row) => settlingSpeed(given(row)));
  expect(inAir?.reynolds).toBeLessThan(0.02);
  // 3.4 % too fast by Oseen: within what the law is given for, and said.
  expect(globule?.reynolds).toBeCloseTo(0.184, 3);
  expect(globule).toMatchObject({ known: true, tooFastBy: expect.closeTo(0.0345, 3) });
  expect(silt?.reynolds).toBeLessThan(0.01);
  expect(clay?.reynolds).toBeLessThan(1e-5);
});

test("cleanDropFactor(given) gives the fractions worked out by hand", () => {
  const table = readTable("soil/clean-drop.csv");
  const got = (row: Row) => cleanDropFactor({ drop: row.number("drop_pa_s"), fuel: row.number("fuel_pa_s") });
  const error = measure(table.rows, got, "factor", "half steps");
  report("soil/clean-drop", table, error);
  expect(table.rows).toHaveLength(CEILING.cleanDrops);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("bowlDrainInterval(given) gives the hours worked out by hand", () => {
  const table = readTable("soil/bowl-drain.csv");
  const got = (row: Row) =>
    bowlDrainInterval({
      bowl: row.number("bowl_l") / 1e3,
      separated: row.number("separated_mg_l") / 1e3,
      flow: row.number("flow_l_h") / 3.6e6,
    }) / 3600;
  const error = measure(table.rows, got, "hours", "half steps");
  report("soil/bowl-drain", table, error);
  expect(table.rows).toHaveLength(CEILING.bowls);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("waterSolubility(given) is within 10 % of what was measured in normal alkanes", () => {
  const table = readTable("fuels/water-solubility-measured.csv");
  const got = (row: Row) =>
    1e6 *
    waterSolubility({
      hydrogenToCarbon: row.number("hydrogen_to_carbon"),
      molarMass: row.number("molar_mass_kg_mol"),
      temperature: row.number("t_c") + 273.15,
    });
  const error = measure(table.rows, got, "mg_kg");
  report("fuels/water-solubility-measured", table, error);
  expect(table.rows).toHaveLength(CEILING.measured.rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING.measured.relative);
});
