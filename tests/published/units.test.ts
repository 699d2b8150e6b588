import { unit } from "mathjs";
import { expect, test } from "vitest";
import { surfaces } from "../../packages/spec/src/schema/parts/surface.js";
import type { KindName } from "../../packages/spec/src/units/kinds.js";
import { quantity } from "../../packages/spec/src/units/quantity.js";
import { asArithmetic } from "../support/arithmetic.js";
import { measure, type Row, readTable, report } from "../support/table.js";

/** A quantity as a system file reads it, in SI; NaN when it is refused. */
function read(text: string, kind: KindName): number {
  const result = quantity(text, kind);
  return "value" in result ? result.value : Number.NaN;
}

test('quantity("1 psi", "pressure") and the other pressure units agree with SP 811 as printed', () => {
  const table = readTable("units/pressure.csv");
  const got = (row: Row) =>
    read(`${row.text("value")} ${row.text("unit")}`, "pressure") / read(`1 ${row.text("in")}`, "pressure");
  const error = measure(table.rows, got, "equals", "half steps");
  report("units/pressure", table, error);
  expect(table.rows).toHaveLength(10);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test.each(["psi", "bar", "atm", "mmHg"])(
  'quantity("1 %s", "pressure") is the unit parser\'s own, which rounds to six figures or so',
  (name) => {
    expect(read(`1 ${name}`, "pressure") / unit(1, name).toNumber("Pa")).toBeCloseTo(1, 5);
  },
);

const bores = readTable("hoses/bores.csv");

const inches = (fraction: string): number => {
  const [above = Number.NaN, below = 1] = fraction.split("/").map(Number);
  return above / below;
};

test('quantity("13/32 in", "bore") reads every published hose bore exactly', () => {
  const got = (row: Row) => read(`${row.text("bore_in")} in`, "bore");
  const error = measure(bores.rows, got, (row) => inches(row.text("bore_in")) * 0.0254);
  report("hoses/bores", asArithmetic(bores), error);
  expect(bores.rows).toHaveLength(22);
  expect(error.max, error.worst).toBeLessThanOrEqual(3e-16);
});

test("nominal bores of SAE J30 hose are the fractions of an inch they are named by, in mm as printed", () => {
  const printed = bores.rows.filter((row) => row.has("bore_mm"));
  const error = measure(printed, (row) => read(`${row.text("bore_in")} in`, "bore") * 1000, "bore_mm", "half steps");
  report("hoses/bores-mm", bores, error);
  expect(printed).toHaveLength(9);
  // 9.525 and 15.875 mm are exact ties, printed rounded up; no double holds them exactly.
  expect(error.max, error.worst).toBeLessThanOrEqual(1 + 1e-12);
});

test("a dash number counts sixteenths of an inch of the tube's outside", () => {
  const tubes = bores.rows.filter((row) => row.has("tube_outside_in"));
  expect(tubes).toHaveLength(6);
  for (const row of tubes) expect(row.number("dash"), String(row)).toBe(16 * inches(row.text("tube_outside_in")));
});

const roughness = readTable("lines/roughness.csv");

const surfaceOf: Readonly<Record<string, keyof typeof surfaces>> = {
  "drawn tubing (brass or copper)": "drawn tubing",
  "commercial steel or wrought iron": "steel",
  "asphalted cast iron": "asphalted iron",
  "galvanized iron": "galvanized",
  "cast iron": "cast iron",
  "rubber, smoothed": "rubber hose",
  "plastic tube": "plastic",
  glass: "glass",
  "stainless steel, new": "stainless",
};

test("surfaces have the published roughness, all nine", () => {
  expect(roughness.rows).toHaveLength(9);
  const millimetres = (row: Row): number => {
    const surface = surfaceOf[row.text("surface")];
    return (surface === undefined ? Number.NaN : surfaces[surface]) * 1000;
  };
  // Of a range, the point nearest to ours.
  const nearest = (row: Row): number => {
    const least = row.number("roughness_mm");
    const most = row.has("roughness_mm_to") ? row.number("roughness_mm_to") : least;
    return Math.min(Math.max(millimetres(row), least), most);
  };
  const error = measure(roughness.rows, millimetres, nearest);
  report("lines/roughness", roughness, error);
  expect(error.max, error.worst).toBeLessThanOrEqual(1e-15);
  expect([surfaces.copper, surfaces.brass]).toEqual([surfaces["drawn tubing"], surfaces["drawn tubing"]]);
});

test("roughnesses printed in feet and in mm agree to a unit of the last printed digit", () => {
  const both = roughness.rows.filter((row) => row.has("roughness_ft"));
  // The sources round each unit on its own, so both roundings count; a range counts from end to end.
  for (const row of both) {
    const fromFeet = row.number("roughness_ft") * 304.8;
    const slack = row.halfStep("roughness_mm") + row.halfStep("roughness_ft") * 304.8;
    const most = row.has("roughness_mm_to") ? row.number("roughness_mm_to") : row.number("roughness_mm");
    expect(fromFeet, String(row)).toBeGreaterThanOrEqual(row.number("roughness_mm") - slack);
    expect(fromFeet, String(row)).toBeLessThanOrEqual(most + slack);
  }
  expect(both).toHaveLength(6);
});
