import { type FibreLawName, fibreLaws, filter, fuelState, InputError, solve } from "@thirstline/core";
import { expect, test } from "vitest";
import { besselRatio } from "../../packages/core/src/parts/fibre/besselRatio.js";
import { besselRatio as bigBesselRatio } from "../../references/fibre/besselRatio.mjs";
import { line as besselLine } from "../../references/fibre/generate.mjs";
import { measure, type Row, readTable, report } from "../support/table.js";

const laws = readTable("fibre/laws.csv");
const davies = readTable("fibre/davies.csv");
const bessel = readTable("fibre/bessel-ratio.csv");
const names = Object.keys(fibreLaws) as FibreLawName[];

test("fibreLaws agree with the published permeabilities as printed, ten laws at four solidities", () => {
  const got = (row: Row) => fibreLaws[row.text("law") as FibreLawName](row.number("solidity"));
  const error = measure(laws.rows, got, "permeability_over_radius_squared", "half steps");
  report("fibre/laws", laws, error);
  expect(laws.rows).toHaveLength(40);
  expect(new Set(laws.rows.map((row) => row.text("law")))).toEqual(new Set(names));
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("fibreLaws.davies gives the permeability of three mats as printed", () => {
  const got = (row: Row) => fibreLaws.davies(row.number("solidity")) * ((row.number("fibre_um") * 1e-6) / 2) ** 2;
  const error = measure(davies.rows, got, "permeability_m2", "half steps");
  report("fibre/davies", davies, error);
  expect(davies.rows).toHaveLength(3);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("besselRatio(x) agrees with 120-digit arithmetic to 1e-15", () => {
  const error = measure(bessel.rows, (row) => besselRatio(row.number("x")), "ratio");
  report("fibre/bessel-ratio", bessel, error);
  expect(bessel.rows).toHaveLength(30);
  expect(error.max, error.worst).toBeLessThanOrEqual(1e-15); // sums of positive terms: rounding only
});

test.each([1e4, 1e6, 1e9, 1e12])("besselRatio(%d) follows its series for large x", (x) => {
  // 1 + 1/(2x) - 1/(8x^2) + 1/(8x^3) - ...: from the large-x series of K1 and K0; the next, 25/(128 x^4), is below 2e-17.
  const excess = 1 / (2 * x) - 1 / (8 * x ** 2) + 1 / (8 * x ** 3);
  expect(Math.abs(besselRatio(x) - 1 - excess)).toBeLessThan(3e-16);
});

test("the committed table of besselRatio is what its maker makes", () => {
  const some = bessel.rows.filter((_, index) => index % 6 === 0);
  expect(some).toHaveLength(5);
  for (const row of some) expect(besselLine(row.text("x"))).toBe(`${row.text("x")},${row.text("ratio")}`);
});

test.each([
  ["spielmanGorenFlat", 1 / 2, 1],
  ["spielmanGorenRandom", 1 / 3, 5 / 6],
] as const)("fibreLaws.%s(solidity) meets its condition with high-precision Bessel functions", (name, fixed, share) => {
  // Down to a solidity of 0.02, where 1/s is above 0.1, and up to where it nears 60.
  const solidities = [0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.48];
  for (const solidity of solidities) {
    const s = Math.sqrt(fibreLaws[name](solidity));
    const ratio = bigBesselRatio(String(1 / s)).toNumber();
    const back = 1 / (4 * (fixed + share * s * ratio));
    expect(back / solidity, `${name}(${solidity})`).toBeCloseTo(1, 13);
  }
});

test("filter({ fibre }) spans the laws: 2.6 at a solidity of 0.10, 3.8 at 0.05, as published", () => {
  const fuel = fuelState({ density: 835, kinematicViscosity: 3e-6 });
  const spread = (solidity: number): number => {
    const mat = filter({ fibre: { diameter: 5e-6, solidity, area: 0.3, thickness: 5e-4 } });
    return solve(mat, fuel, { end: "high" }).drop(5e-5) / solve(mat, fuel, { end: "low" }).drop(5e-5);
  };
  expect(Math.abs(spread(0.1) - 2.6)).toBeLessThanOrEqual(0.05);
  expect(Math.abs(spread(0.05) - 3.8)).toBeLessThanOrEqual(0.05);
});

test.each(names)("fibreLaws.%s(solidity) falls as the bed gets denser", (name) => {
  const solidities = Array.from({ length: 148 }, (_, index) => 0.006 + index * 0.002);
  const permeabilities = solidities.map(fibreLaws[name]);
  permeabilities.forEach((permeability, at) => {
    expect(permeability).toBeGreaterThan(0);
    if (at > 0) expect(permeability).toBeLessThan(permeabilities[at - 1] ?? 0);
  });
});

test.each([
  ["davies", 0.31, "davies requires solidity to be between 0.006 and 0.3, got 0.31"],
  ["kuwabara", 1, "kuwabara requires solidity to be more than 0 and less than 1, got 1"],
  ["happelAcross", -0.1, "happelAcross requires solidity to be more than 0 and less than 1, got -0.1"],
  ["jacksonJames", 0.394, "jacksonJames requires solidity to be more than 0 and less than 0.394, got 0.394"],
  ["drummondTahir", 0.8, "drummondTahir requires solidity to be more than 0 and less than 0.785, got 0.8"],
  ["tomadakisThrough", 0.9, "tomadakisThrough requires solidity to be more than 0 and less than 0.89, got 0.9"],
  ["tomadakisRandom", 0.97, "tomadakisRandom requires solidity to be more than 0 and less than 0.963, got 0.97"],
  ["spielmanGorenFlat", 0.5, "spielmanGorenFlat requires solidity to be more than 0 and less than 0.5, got 0.5"],
  [
    "spielmanGorenRandom",
    Number.NaN,
    "spielmanGorenRandom requires solidity to be more than 0 and less than 0.75, got NaN",
  ],
  ["koponen", 0, "koponen requires solidity to be more than 0 and less than 1, got 0"],
] as const)("fibreLaws.%s(%d) is refused", (name, solidity, message) => {
  expect(() => fibreLaws[name](solidity)).toThrow(InputError);
  expect(() => fibreLaws[name](solidity)).toThrow(message);
});
