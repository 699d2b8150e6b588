import { expect, test } from "vitest";
import type { ChartData } from "./columnsOf.js";
import { csvOf } from "./csvOf.js";

const data: ChartData = {
  demand: [0, 12.3456789],
  lines: [{ name: "clean", label: "clean", values: [1, null], atDuty: null, band: null }],
  limits: [],
  limitsAreMost: true,
  ceiling: null,
  duty: null,
  xSymbol: "L/h",
  ySymbol: "kPa",
  title: "Vacuum at the pump",
};

test("csvOf(data) names units in the first line, gives six figures and leaves gaps empty", () => {
  expect(csvOf(data)).toBe('demand (L/h),"vacuum at the pump, clean (kPa)"\r\n0,1\r\n12.3457,');
});

test("csvOf(data) quotes what a label may hold, and lets none be taken for a formula", () => {
  const [line] = data.lines;
  if (line === undefined) throw new Error("no line");
  const named = { ...data, title: "=1+1", lines: [{ ...line, label: 'a "b", c' }] };
  expect(csvOf(named).split("\r\n")[0]).toBe('demand (L/h),"\'=1+1, a ""b"", c (kPa)"');
});
