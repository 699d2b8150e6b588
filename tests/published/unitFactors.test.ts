import { type KindName, quantity, readSystem } from "@thirstline/spec";
import { check } from "@thirstline/study";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../support/table.js";

// Ceilings sit just above today's error; "half steps" of 1 is the rounding of the printed figure.

/** A quantity as a system file reads it, in SI; NaN when it is refused. */
function read(text: string, kind: KindName): number {
  const result = quantity(text, kind);
  return "value" in result ? result.value : Number.NaN;
}

test("quantity(text, kind) has the factors of SP 811 for units other than pressure, as printed", () => {
  const table = readTable("units/sp811.csv");
  // A hundred of it, where one would be less or more than the kind takes: the factor is the same.
  const got = (row: Row) => {
    const [unit, kind] = [row.text("unit"), row.text("kind") as KindName];
    for (const count of [1, 7, 50]) {
      const value = read(`${count} ${unit}`, kind) / count;
      if (!Number.isNaN(value)) return value;
    }
    return Number.NaN;
  };
  const error = measure(table.rows, got, "si", "half steps");
  report("units/sp811", table, error);
  expect(table.rows).toHaveLength(20);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test('quantity("0.408 lb/hp-h", "specificConsumption") is the published figure in g/kWh', () => {
  const table = readTable("units/engine-consumption.csv");
  const got = (row: Row) =>
    read(`${row.text("lb_hp_h")} lb/hp-h`, "specificConsumption") / read("1000 g/kWh", "specificConsumption") / 1e-3;
  const error = measure(table.rows, got, "g_kwh", "half steps");
  report("units/engine-consumption", table, error);
  expect(table.rows).toHaveLength(3);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

/** Burn of a tractor, m3/s, from a file that states its power and what it burns for its work. */
function burnOf(power: number, horsePowerHoursAGallon: number): number {
  const file = [
    "format: thirstline/1",
    "name: tractor",
    // 838.785 kg/m3 is 7 lb/gal; the density cancels.
    "fuel: { kind: measured, like: diesel, temperature: 15 degC, cloud point: -20 degC,",
    "  viscosity: [{ at: 15 degC, is: 3 mm2/s }], density: [{ at: 15 degC, is: 838.785 kg/m3 }] }",
    "place: { altitude: 0 m }",
    `demand: { power: ${power} hp, specific consumption: ${7 / horsePowerHoursAGallon} lb/hp-h }`,
    "tank: { full depth: 1 m, low depth: 0 m, vent: open }",
    "suction:",
    "  - line: { length: 2 m, bore: 12 mm, surface: steel }",
    "pump: { kind: fixed, flow: 200 L/h, relief: 80 kPa, relief to: inlet }",
    "",
  ].join("\n");
  const result = readSystem(file, { file: "tractor.yaml" });
  if ("faults" in result) throw new Error(JSON.stringify(result.faults));
  return check(result.system).points[0]?.demand.burn ?? Number.NaN;
}

test("check(system) burns what a tractor of 200 hp burns at 17 and 18 hp-h a gallon", () => {
  const table = readTable("demand/tractor.csv");
  const gallonAnHour = (231 * 0.0254 ** 3) / 3600;
  const got = (row: Row) => burnOf(row.number("power_hp"), row.number("hp_h_per_gal")) / gallonAnHour;
  const error = measure(table.rows, got, "burn_gal_h", "half steps");
  report("demand/tractor", table, error);
  expect(table.rows).toHaveLength(2);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});
