import { colebrook, fitting, fuelState, solve, type TwoKKind, twoKConstants } from "@thirstline/core";
import { expect, test } from "vitest";
import { asArithmetic } from "../support/arithmetic.js";
import { measure, type Row, readTable, report } from "../support/table.js";

const water = fuelState({ density: 998, kinematicViscosity: 1e-6 });
const bore = 0.01;

/** Loss of a fitting in velocity heads at a Reynolds number, from the drop a solved circuit shows. */
function lossAt(part: ReturnType<typeof fitting>, reynolds: number): number {
  const velocity = (reynolds * water.kinematicViscosity) / part.bore;
  const flow = velocity * (Math.PI / 4) * part.bore ** 2;
  return solve(part, water).drop(flow) / ((water.density * velocity ** 2) / 2);
}

test("fitting({ bore, k }) loses the published K, at both ends of a range", () => {
  const table = readTable("fittings/k-values.csv");
  const rounded = { rows: 24, relative: 2e-15 }; // one product against another
  const low = measure(table.rows, (row) => lossAt(fitting({ bore, k: row.number("k") }), 1e5), "k");
  const ranges = table.rows.filter((row) => row.has("k_to"));
  const high = measure(ranges, (row) => lossAt(fitting({ bore, k: row.number("k_to") }), 1e5), "k_to");
  report("fittings/k-values", asArithmetic(table), low);
  expect(table.rows).toHaveLength(rounded.rows);
  expect(ranges).toHaveLength(5);
  expect(low.max, low.worst).toBeLessThanOrEqual(rounded.relative);
  expect(high.max, high.worst).toBeLessThanOrEqual(rounded.relative);
});

test("fitting({ bore, k }) with the K of a sudden change loses as published", () => {
  const table = readTable("fittings/sudden-changes.csv");
  const k = (row: Row): number => {
    if (row.text("change") === "expansion") return (1 - row.number("area_ratio")) ** 2;
    return (1 / row.number("contraction_coefficient") - 1) ** 2;
  };
  const error = measure(table.rows, (row) => lossAt(fitting({ bore, k: k(row) }), 1e5), "k", "half steps");
  report("fittings/sudden-changes", asArithmetic(table), error);
  expect(table.rows).toHaveLength(10);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("twoKConstants are Hooper's, all of them", () => {
  const table = readTable("fittings/two-k.csv");
  expect(table.rows).toHaveLength(9);
  const published = table.rows.map((row) => [
    row.text("fitting"),
    { k1: row.number("k1"), kInfinity: row.number("k_infinity") },
  ]);
  expect(twoKConstants).toEqual(Object.fromEntries(published));
});

test("fitting({ bore, twoK }) loses what Hooper's form gives, slow and fast", () => {
  const table = readTable("fittings/two-k-checks.csv");
  const error = measure(
    table.rows,
    (row) => {
      const twoK = twoKConstants[row.text("fitting") as TwoKKind];
      return lossAt(fitting({ bore: row.number("bore_mm") / 1000, twoK }), row.number("reynolds"));
    },
    "k",
    "half steps",
  );
  report("fittings/two-k-checks", table, error);
  expect(table.rows).toHaveLength(2);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

const rough = readTable("fittings/fully-rough.csv");

const relativeRoughness = (row: Row): number => row.number("roughness_mm") / (row.number("bore_in") * 25.4);

test("colebrook(reynolds, relativeRoughness) tends to the fully rough factor of seven pipe sizes", () => {
  const error = measure(rough.rows, (row) => colebrook(1e12, relativeRoughness(row)), "recomputed", "half steps");
  report("fittings/fully-rough", asArithmetic(rough), error);
  expect(rough.rows).toHaveLength(7);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

// The source states no bound; 4.5 % is ours, just above the largest difference found (4.2 %, at 4 in).
test("the factors Crane prints lie on or above the fully rough formula, by less than 4.5 %", () => {
  const error = measure(rough.rows, (row) => colebrook(1e12, relativeRoughness(row)), "printed");
  report("fittings/fully-rough-printed", rough, error);
  expect(error.max, error.worst).toBeLessThan(0.045);
  for (const row of rough.rows) {
    const formula = colebrook(1e12, relativeRoughness(row));
    expect(row.number("printed") + row.halfStep("printed")).toBeGreaterThan(formula);
  }
});

test("fitting({ bore, equivalentLength, roughness }) loses fT times its length in bores when fully rough", () => {
  const table = readTable("fittings/equivalent-length.csv");
  expect(table.rows).toHaveLength(11);
  const inch = rough.rows.find((row) => row.number("nominal_in") === 1);
  if (!inch) throw new Error("fully-rough.csv lacks the 1 in row");
  const pipe = inch.number("bore_in") * 0.0254;
  const error = measure(
    table.rows,
    (row) => {
      const given = {
        bore: pipe,
        equivalentLength: row.number("bores"),
        roughness: inch.number("roughness_mm") / 1000,
      };
      return lossAt(fitting(given), 1e12);
    },
    (row) => row.number("bores") * inch.number("recomputed"),
  );
  report("fittings/equivalent-length", asArithmetic(table), error);
  // fT is printed to 4 decimals, and that is all the two may differ by.
  expect(error.max, error.worst).toBeLessThanOrEqual(inch.halfStep("recomputed") / inch.number("recomputed"));
});
