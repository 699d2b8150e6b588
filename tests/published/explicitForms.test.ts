import { colebrook, frictionFactor } from "@thirstline/core";
import { expect, test } from "vitest";
import { churchill, haaland, swameeJain } from "../support/explicitForms.js";
import { measure, type Row, readTable, report } from "../support/table.js";

const points = readTable("lines/explicit-forms.csv");
const deviations = readTable("lines/explicit-deviations.csv");

const at = (row: Row): [number, number] => [row.number("reynolds"), row.number("relative_roughness")];

test.each([
  ["colebrook", colebrook, 3],
  ["swamee_jain", swameeJain, 3],
  ["haaland", haaland, 3],
  ["churchill", churchill, 5],
] as const)("%s agrees with its point checks as printed", (column, form, rows) => {
  const filled = points.rows.filter((row) => row.has(column));
  const error = measure(filled, (row) => form(...at(row)), column, "half steps");
  if (column === "colebrook") report("lines/colebrook-points", points, error);
  expect(filled).toHaveLength(rows);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("each explicit form strays from colebrook(reynolds, relativeRoughness) as far as published, and no further", () => {
  const error = measure(deviations.rows, largestPercent, "largest_percent", "half steps");
  report("lines/explicit-deviations", deviations, error);
  expect(deviations.rows).toHaveLength(4);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("haaland(reynolds, relativeRoughness) keeps its author's 2 % of Colebrook–White", () => {
  const bound = deviations.rows.filter((row) => row.text("form") === "haaland").map(largestPercent);
  expect(bound).toHaveLength(1);
  for (const percent of bound) expect(Math.abs(percent)).toBeLessThan(2);
});

test("frictionFactor(1000, 0) is what churchill gives for laminar flow", () => {
  const [laminar] = points.rows.filter((row) => row.number("reynolds") === 1000);
  expect(laminar?.number("churchill")).toBe(0.064);
  expect(frictionFactor(1000, 0)).toBe(0.064);
});

test("frictionFactor(3000, 1e-3) lies between laminar and turbulent flow", () => {
  const between = frictionFactor(3000, 1e-3);
  expect(between).toBeGreaterThan(64 / 3000);
  expect(between).toBeLessThan(colebrook(3000, 1e-3));
});

const forms = { "swamee-jain": swameeJain, haaland, churchill };

/** The deviation from Colebrook–White, %, that is largest on a 41 by 41 grid even in both logarithms. */
function largestPercent(row: Row): number {
  const form = forms[row.text("form") as keyof typeof forms];
  let largest = 0;
  for (const reynolds of evenInLog(row.number("reynolds_from"), row.number("reynolds_to"))) {
    for (const rough of evenInLog(row.number("roughness_from"), row.number("roughness_to"))) {
      const percent = 100 * (form(reynolds, rough) / colebrook(reynolds, rough) - 1);
      if (Math.abs(percent) > Math.abs(largest)) largest = percent;
    }
  }
  return largest;
}

function evenInLog(from: number, to: number): number[] {
  return Array.from({ length: 41 }, (_, index) => Math.min(to, from * (to / from) ** (index / 40)));
}
