import { colebrook, frictionFactor } from "@thirstline/core";
import { expect, test } from "vitest";
import { friction } from "../../references/colebrook/friction.mjs";
import { line } from "../../references/colebrook/generate.mjs";
import { measure, type Row, readTable, report } from "../support/table.js";

const CEILING = {
  "colebrook/colebrook-17.csv": { rows: 320, relative: 1.5e-15 }, // a root, a square and a quotient, rounded; `colebrook` promises 4e-15
  "colebrook/colebrook-12.csv": { rows: 45 }, // agrees as printed
};

const at = (row: Row): [number, number] => [row.number("reynolds"), row.number("relative_roughness")];

const full = readTable("colebrook/colebrook-17.csv");
const printed = readTable("colebrook/colebrook-12.csv");

test("colebrook(reynolds, relativeRoughness) agrees with 64-digit arithmetic to 1.5e-15", () => {
  const ceiling = CEILING["colebrook/colebrook-17.csv"];
  const error = measure(full.rows, (row) => colebrook(...at(row)), "friction_factor");
  report("colebrook/colebrook", full, error);
  expect(full.rows).toHaveLength(ceiling.rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(ceiling.relative);
});

test("frictionFactor(reynolds, relativeRoughness) is Colebrook–White from Re 4000 up, to 1.5e-15", () => {
  const error = measure(full.rows, (row) => frictionFactor(...at(row)), "friction_factor");
  report("colebrook/frictionFactor", full, error);
  expect(error.max, error.worst).toBeLessThanOrEqual(CEILING["colebrook/colebrook-17.csv"].relative);
});

test("colebrook(reynolds, relativeRoughness) agrees with the 12-digit table as printed", () => {
  const error = measure(printed.rows, (row) => colebrook(...at(row)), "friction_factor", "half steps");
  report("colebrook/colebrook-12", printed, error);
  expect(printed.rows).toHaveLength(CEILING["colebrook/colebrook-12.csv"].rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("friction(reynolds, relativeRoughness) of the table's maker agrees with the 12-digit table to the last digit", () => {
  const made = (row: Row) => friction(row.text("reynolds"), row.text("relative_roughness")).toPrecision(12);
  const wrong = printed.rows.filter((row) => Number(made(row)) !== row.number("friction_factor"));
  expect(wrong.map((row) => `${row}: made ${made(row)}`)).toEqual([]);
});

test("the committed 17-digit table is what its maker makes", () => {
  // Every eleventh row visits every roughness, since there are ten to each Reynolds number.
  const some = full.rows.filter((_, index) => index % 11 === 0);
  expect(some).toHaveLength(30);
  const roughness = new Set(some.map((row) => row.text("relative_roughness")));
  expect(roughness.size).toBe(10);
  for (const row of some) {
    const [re, rough] = [row.text("reynolds"), row.text("relative_roughness")];
    expect(line(re, rough)).toBe(`${re},${rough},${row.text("friction_factor")}`);
  }
});
