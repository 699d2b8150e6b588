import { expect, test } from "vitest";
import type { ChartData } from "./ChartData.js";
import { columnsOf } from "./Columns.js";
import { csvOf } from "./csvOf.js";

const data: ChartData = {
  title: "Vacuum at the pump",
  file: "curve",
  x: { label: "Demand", symbol: "L/h", values: [0, 12.3456789], from: 0, to: 13 },
  y: { label: "Vacuum", symbol: "kPa", from: 0, to: 2 },
  lines: [{ look: "clean", label: "clean", named: true, values: [1, null], atRest: null, band: null }],
  horizontals: [],
  uprights: [],
  stretch: null,
  dot: null,
};

test("csvOf(columns) names units in the first line, gives six figures and leaves gaps empty", () => {
  expect(csvOf(columnsOf(data))).toBe('demand (L/h),"vacuum at the pump, clean (kPa)"\r\n0,1\r\n12.3457,');
});

test("csvOf(columns) quotes what a label may hold, and lets none be taken for a formula", () => {
  const [line] = data.lines;
  if (line === undefined) throw new Error("no line");
  const named = { ...data, title: "=1+1", lines: [{ ...line, label: 'a "b", c' }] };
  expect(csvOf(columnsOf(named)).split("\r\n")[0]).toBe('demand (L/h),"\'=1+1, a ""b"", c (kPa)"');
});

test("columnsOf(data) gives both ends of a band beside its line", () => {
  const [line] = data.lines;
  if (line === undefined) throw new Error("no line");
  const banded = { ...data, lines: [{ ...line, band: { low: [0.5, null], high: [2, null] } }] };
  const { head, rows } = columnsOf(banded);
  expect(head).toEqual([
    "demand (L/h)",
    "vacuum at the pump, clean (kPa)",
    "vacuum at the pump, clean, at least (kPa)",
    "vacuum at the pump, clean, at most (kPa)",
  ]);
  expect(rows[0]).toEqual([0, 1, 0.5, 2]);
});
