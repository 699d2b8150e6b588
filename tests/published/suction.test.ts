import {
  fitting,
  fuelState,
  publishedVacuumLimits,
  pump,
  rise,
  type Supply,
  SupplyModel,
  series,
  tank,
} from "@thirstline/core";
import { quantity } from "@thirstline/spec";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../support/table.js";
import { areaOf } from "./books/asIf.js";

// Suction sides of published examples. Ceilings sit just above today's error.

const [foot, psi, pound] = [0.3048, 6894.757293168361, 0.45359237];

test("SupplyModel.vacuum leaves a pump the net positive suction head it needs where the book puts it", () => {
  const table = readTable("pumps/npsh.csv");
  const height = (row: Row) => {
    const density = (row.number("density_lb_ft3") * pound) / foot ** 3;
    const vapourPressure = row.number("vapour_pressure_psi") * psi;
    const water = fuelState({ density, kinematicViscosity: 1e-6, vapourPressure });
    // 6 ft lost on the way, as a fitting; so wide that a gauge behind it would hardly feel the fuel's motion.
    const [bore, flow] = [8, 1.5];
    const velocityHead = (flow / areaOf(bore)) ** 2 / (2 * 9.80665);
    const lossy = fitting({ bore, k: (6 * foot) / velocityHead });
    const headLeft = (climb: number) => {
      const supply: Supply = {
        ambientPressure: 14.7 * psi,
        tanks: [tank({ depth: 0 })],
        suction: series(lossy, rise({ height: climb })),
        pump: pump({
          kind: "curve",
          points: [
            { flow: 0, rise: 3e4 },
            { flow: 2, rise: 3e4 },
          ],
        }),
        delivery: null,
      };
      const vacuum = new SupplyModel(supply, { fuel: water, passage: "smooth", end: "middle" }).vacuum(flow);
      return (14.7 * psi - vacuum - vapourPressure) / (density * 9.80665);
    };
    // The head left falls by a foot for each foot of climb.
    return headLeft(0) / foot - 40;
  };
  const error = measure(table.rows, height, "height_ft", "half steps");
  report("pumps/npsh", table, error);
  expect(table.rows).toHaveLength(2);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test('quantity("6 inHg", "vacuum") and publishedVacuumLimits are the published limits in kPa as printed', () => {
  const table = readTable("pumps/vacuum-limits.csv");
  const own: Readonly<Record<number, number>> = { 6: publishedVacuumLimits.clean, 12: publishedVacuumLimits.atChange };
  const got = (row: Row) => {
    const read = quantity(`${row.text("vacuum_inhg")} inHg`, "vacuum");
    const value = "value" in read ? read.value : Number.NaN;
    return (row.text("source") === "army" ? (own[row.number("vacuum_inhg")] ?? Number.NaN) : value) / 1e3;
  };
  const error = measure(table.rows, got, "vacuum_kpa", "half steps");
  report("pumps/vacuum-limits", table, error);
  expect(table.rows).toHaveLength(4);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});
