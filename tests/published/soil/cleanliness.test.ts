import { codeOf, convertSize, countsOf, parseCode, printCode, scaleLimits } from "@thirstline/core";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../../support/table.js";

const scale = readTable("soil/scale.csv");
const sizes = readTable("soil/size-scales.csv");

test("codeOf(counts) gives every scale number up to and including its limit, and the next above it", () => {
  expect(scale.rows).toHaveLength(29);
  const numberAt = (perMl: number) => codeOf({ at4: perMl, at6: perMl, at14: perMl }).at4.scale;
  const error = measure(scale.rows, (row) => numberAt(row.number("up_to_per_ml")) as number, "scale", "absolute");
  report("soil/scale", scale, error);
  expect(error.max, error.worst).toBe(0);
  for (const row of scale.rows) {
    const next = row.number("scale") === 28 ? ">28" : row.number("scale") + 1;
    expect(numberAt(row.number("up_to_per_ml") * (1 + 1e-12)), row.toString()).toBe(next);
  }
});

test("countsOf(code) gives every interval of the scale", () => {
  scale.rows.forEach((row, at) => {
    const scaleNumber = row.text("scale");
    const moreThan = at === 0 ? 0 : (scale.rows[at - 1]?.number("up_to_per_ml") ?? Number.NaN);
    const range = { moreThan, upTo: row.number("up_to_per_ml") };
    const code = parseCode(`${scaleNumber}/${scaleNumber}/${scaleNumber}`);
    expect(countsOf(code)).toEqual({ at4: range, at6: range, at14: range });
  });
  expect(scaleLimits).toHaveLength(29);
});

test("codeOf(counts) gives the published coding cases", () => {
  const { rows } = readTable("soil/code-cases.csv");
  expect(rows).toHaveLength(2);
  for (const row of rows) {
    const counts = { at4: row.number("at4_per_ml"), at6: row.number("at6_per_ml"), at14: row.number("at14_per_ml") };
    const counted = row.has("counted_at14") ? { at14: row.number("counted_at14") } : {};
    expect(printCode(codeOf(counts, counted))).toBe(row.text("code"));
  }
});

const inMicrometres = (size: number, from: "ISO 4402" | "um(c)", to: "ISO 4402" | "um(c)") =>
  convertSize(Number(`${size}e-6`), from, to) * 1e6;

test("convertSize(size, from, to) gives every point of the published table, both ways", () => {
  expect(sizes.rows).toHaveLength(10);
  const there = measure(sizes.rows, (row) => inMicrometres(row.number("old_um"), "ISO 4402", "um(c)"), "new_um_c");
  const back = measure(sizes.rows, (row) => inMicrometres(row.number("new_um_c"), "um(c)", "ISO 4402"), "old_um");
  report("soil/size-scales", sizes, there);
  // Two turnings from micrometres and back: rounding only.
  expect(there.max, there.worst).toBeLessThanOrEqual(5e-16);
  expect(back.max, back.worst).toBeLessThanOrEqual(2e-15);
});

test("convertSize(size, from, to) is straight between the points", () => {
  const halfway = (column: string, at: number) =>
    ((sizes.rows[at] as Row).number(column) + (sizes.rows[at + 1] as Row).number(column)) / 2;
  for (let at = 0; at < 9; at++) {
    const got = inMicrometres(halfway("old_um", at), "ISO 4402", "um(c)");
    expect(got / halfway("new_um_c", at)).toBeCloseTo(1, 14);
  }
});

test("convertSize(size, from, to) takes 0.898 um(c) for 1 um(b), as ISO 11171:2016 says", () => {
  expect(convertSize(1e-6, "um(b)", "um(c)")).toBe(0.898e-6);
  expect(convertSize(0.898e-6, "um(c)", "um(b)")).toBeCloseTo(1e-6, 20);
});
