import { clothGeometry, ehrhardt } from "@thirstline/core";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../support/table.js";

// Screens against laws and listings the library does not use. Ceilings sit just above today's error.
const CEILING = {
  "market-grade": { rows: 7, halfSteps: 1 },
  // Within the factor of 2.5 that screen laws differ by.
  wieghardt: { rows: 6, relative: 0.13 },
  idelchik: { rows: 4, relative: 0.049 },
};

test("clothGeometry(cloth).openArea is that of wire cloth as listed", () => {
  const table = readTable("screens/market-grade.csv");
  const open = (row: Row) => {
    const wire = row.number("wire_in") * 0.0254;
    return 100 * clothGeometry({ aperture: 0.0254 / row.number("mesh_per_in") - wire, wire }).openArea;
  };
  const error = measure(table.rows, open, "open_percent", "half steps");
  report("screens/market-grade", table, error);
  expect(table.rows).toHaveLength(CEILING["market-grade"].rows);
  // 30.25 is printed 30.3: a tie rounded up.
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING["market-grade"].halfSteps + 1e-9);
});

test.each(["wieghardt", "idelchik"] as const)("ehrhardt(cloth, fuel, faceVelocity) against the law of %s", (law) => {
  const table = readTable(`screens/${law}.csv`);
  const water = { density: 1000, kinematicViscosity: 1e-6 };
  const loss = (row: Row) => {
    const cloth = { aperture: row.number("aperture_um") * 1e-6, wire: row.number("wire_um") * 1e-6 };
    const { openArea } = clothGeometry(cloth);
    const velocity = (row.number("reynolds") * openArea * water.kinematicViscosity) / cloth.wire;
    return ehrhardt(cloth, water, velocity) / ((water.density / 2) * velocity ** 2);
  };
  const error = measure(table.rows, loss, "k");
  report(`screens/${law}`, table, error);
  expect(table.rows).toHaveLength(CEILING[law].rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING[law].relative);
});
