import {
  atmosphere,
  ceilings,
  filter,
  fuelState,
  publishedVacuumLimits,
  pump,
  rise,
  type Supply,
  SupplyModel,
  tank,
} from "@thirstline/core";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../support/table.js";

const INCH_OF_MERCURY = 3386.389; // Pa, NIST SP 811; the same figure stands in references/units/pressure.csv

const element = filter({ clean: { drop: 2000, flow: 5e-5, dynamicViscosity: 0.0025 } });

function supplyOf(given: Partial<Supply>): Supply {
  const none = pump({
    kind: "curve",
    points: [
      { flow: 0, rise: 3e4 },
      { flow: 1, rise: 3e4 },
    ],
  });
  return {
    ambientPressure: 101325,
    tanks: [tank({ depth: 0 })],
    suction: element,
    pump: none,
    delivery: null,
    ...given,
  };
}

const modelOf = (supply: Supply, fuel: ReturnType<typeof fuelState>) =>
  new SupplyModel(supply, { fuel, passage: "smooth", end: "middle" });

test("rise({ height }) turns the published vacuums into the published lifts", () => {
  const table = readTable("pumps/vacuum-as-lift.csv");
  const lift = (row: Row) => {
    const fuel = fuelState({ density: row.number("density_kg_m3"), kinematicViscosity: 3e-6 });
    const climbed = modelOf(supplyOf({ suction: rise({ height: 1 }) }), fuel).vacuum(1e-5);
    return (row.number("vacuum_inhg") * INCH_OF_MERCURY) / climbed;
  };
  const error = measure(table.rows, lift, "lift_m", "half steps");
  report("pumps/vacuum-as-lift", table, error);
  expect(table.rows).toHaveLength(4);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("publishedVacuumLimits are 6 and 12 inHg, in kPa as printed", () => {
  const limit = { 6: publishedVacuumLimits.clean, 12: publishedVacuumLimits.atChange };
  const table = readTable("pumps/vacuum-as-lift.csv");
  const got = (row: Row) => limit[row.number("vacuum_inhg") as 6 | 12] / 1000;
  const error = measure(table.rows, got, "vacuum_kpa", "half steps");
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

const boiling = readTable("pumps/boiling-ceiling.csv");

test("ceilings(supply, petrol, limits, demand) stops at the published vacuum where petrol boils", () => {
  const vacuumAtBoiling = (row: Row) => {
    const vapourPressure = row.number("vapour_pressure_kpa") * 1000;
    const petrol = fuelState({ density: 740, kinematicViscosity: 6e-7, vapourPressure });
    const supply = supplyOf({ ambientPressure: atmosphere(row.number("altitude_m")) });
    const vapour = ceilings(supply, petrol, {}, 1e-5, "middle").find(({ limit }) => limit === "vapour");
    return modelOf(supply, petrol).vacuum(vapour?.flow ?? Number.NaN) / INCH_OF_MERCURY;
  };
  const error = measure(boiling.rows, vacuumAtBoiling, "ceiling_inhg", "half steps");
  report("pumps/boiling-ceiling", boiling, error);
  expect(boiling.rows).toHaveLength(2);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("SupplyModel.slipPerRise carries a slip measured once to the published flat-gap slip", () => {
  const table = readTable("pumps/flat-gap-slip.csv");
  const gapFlow = (row: Row, viscosity: number, difference: number) =>
    (row.number("width_mm") * 1e-3 * (row.number("gap_um") * 1e-6) ** 3 * difference) /
    (12 * viscosity * row.number("length_mm") * 1e-3);
  const slip = (row: Row) => {
    // Measured in a thinner fuel at a lower rise than the table asks for.
    const measured = { flow: gapFlow(row, 1e-3, 2e4), rise: 2e4, dynamicViscosity: 1e-3 };
    return slipAt(row, 1e-4, measured);
  };
  const error = measure(table.rows, slip, "slip_m3_s", "half steps");
  report("pumps/flat-gap-slip", table, error);
  expect(table.rows).toHaveLength(1);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
  const anHour = measure(table.rows, (row) => slip(row) * 3.6e6, "slip_l_h", "half steps");
  expect(anHour.max, anHour.worst).toBeLessThanOrEqual(1);
});

test("SupplyModel.slipPerRise gives Wilson's volumetric efficiencies as published", () => {
  const table = readTable("pumps/wilson.csv");
  const swept = 1e-4;
  const efficiency = (row: Row) => {
    const speed = (row.number("speed_rpm") * 2 * Math.PI) / 60;
    const slip = (swept * row.number("slip_constant") * 1e5) / (1e-3 * speed);
    return 1 - slipAt(row, swept, { flow: slip, rise: 1e5, dynamicViscosity: 1e-3 }) / swept;
  };
  const error = measure(table.rows, efficiency, "volumetric_efficiency", "half steps");
  report("pumps/wilson", table, error);
  expect(table.rows).toHaveLength(5);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

/** Slip, m3/s, that the library expects in a row's fuel at a row's pressure difference. */
function slipAt(row: Row, flow: number, slip: { flow: number; rise: number; dynamicViscosity: number }): number {
  const fixed = { kind: "fixed", flow, slip, relief: 1e6, reliefTo: "inlet" } as const;
  const fuel = fuelState({ density: 830, kinematicViscosity: row.number("dynamic_viscosity_pa_s") / 830 });
  return modelOf(supplyOf({ pump: pump(fixed) }), fuel).slipPerRise(fixed) * row.number("difference_kpa") * 1000;
}
