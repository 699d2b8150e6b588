import { expect, test } from "vitest";
import { formula } from "../Formula.js";
import { fromSource, type Plain } from "../worked.js";
import { evaluatePlain, evaluateWithUnits, textOf } from "./evaluate.js";
import { expanded } from "./expanded.js";

const step = (value: number, unit: string) => fromSource("a test", { name: "a figure", value, unit } satisfies Plain);
const given = { name: "Test", holds: "always", accuracy: "none", source: "a test" } as const;

const weighed = formula({
  ...given,
  id: "weighed",
  text: "k * sum(n * d) + max(d)",
  symbols: { k: ["a factor", "1"], n: ["counts", "1"], d: ["drops", "Pa"] },
  result: ["y", "a pressure", "Pa"],
});
const inputs = [
  { letter: "k", steps: [step(10, "1")], list: false },
  { letter: "n", steps: [step(2, "1"), step(3, "1")], list: true },
  { letter: "d", steps: [step(5, "Pa"), step(7, "Pa")], list: true },
];

test("textOf(formula, inputs) writes out what goes over several values, and no other letter", () => {
  expect(textOf(weighed, inputs)).toBe("k * (n_1 * d_1 + n_2 * d_2) + max(d_1, d_2)");
});

test.each([
  ["sum(k * d)", { d: 2 }, "(k * d_1 + k * d_2)"],
  ["sum(d - d_0)", { d: 2 }, "(d_1 - d_0 + d_2 - d_0)"],
  ["sum(n) / sum(d)", { n: 2, d: 3 }, "(n_1 + n_2) / (d_1 + d_2 + d_3)"],
  ["max(d) - k * sum((a + b) * n)", { d: 1, n: 2 }, "max(d_1) - k * ((a + b) * n_1 + (a + b) * n_2)"],
])("expanded(%j, %j) writes out only letters that stand for several values", (text, sizes, written) => {
  expect(expanded(text, sizes)).toBe(written);
});

test("textOf(formula, inputs) leaves a letter of one value alone, though it stands in a sum", () => {
  const some = inputs.filter(({ letter }) => letter !== "n");
  expect(textOf({ ...weighed, text: "sum(k * d)" }, some)).toBe("(k * d_1 + k * d_2)");
});

test("evaluatePlain and evaluateWithUnits come to the same SI figure", () => {
  // 10 (2 · 5 + 3 · 7) + 7
  expect(evaluatePlain(weighed, inputs)).toBe(317);
  expect(evaluateWithUnits(weighed, inputs)).toBe(317);
});

test("evaluateWithUnits(formula, inputs) comes out in SI of whatever units are put in", () => {
  const speed = formula({
    ...given,
    id: "speed",
    text: "s / t",
    symbols: { s: ["a way", "m"], t: ["a time", "d"] },
    result: ["v", "a speed", "m/s"],
  });
  const put = (way: number, days: number) => [
    { letter: "s", steps: [step(way, "m")], list: false },
    { letter: "t", steps: [step(days, "d")], list: false },
  ];
  // Two days are 172 800 seconds.
  expect(evaluateWithUnits(speed, put(345_600, 2))).toBeCloseTo(2, 12);
});

test("evaluateWithUnits(formula, inputs) takes running time over time for a pure number", () => {
  const ratio = (unit: string) =>
    formula({
      ...given,
      id: "ratio",
      text: "a / b",
      symbols: { a: ["x", "s"], b: ["y", "s"] },
      result: ["c", "z", unit],
    });
  const times = [
    { letter: "a", steps: [step(6, "s")], list: false },
    { letter: "b", steps: [step(3, "s")], list: false },
  ];
  expect(evaluateWithUnits(ratio("s/s"), times)).toBe(2);
  expect(evaluateWithUnits(ratio("1"), times)).toBe(2);
  expect(() => evaluateWithUnits(ratio("Pa"), times)).toThrow(new Error("ratio comes to a pure number, not to Pa"));
  const shares = [
    { letter: "a", steps: [step(0.5, "s/s")], list: false },
    { letter: "b", steps: [step(0.25, "1")], list: false },
  ];
  expect(evaluateWithUnits(ratio("1"), shares)).toBe(2);
});

test("evaluateWithUnits(formula, inputs) names the formula whose result has a unit and should have none", () => {
  const product = formula({
    ...given,
    id: "product",
    text: "a * 2",
    symbols: { a: ["x", "m"] },
    result: ["c", "z", "1"],
  });
  expect(() => evaluateWithUnits(product, [{ letter: "a", steps: [step(3, "m")], list: false }])).toThrow(
    new Error("product comes to 6 m, not to a pure number"),
  );
});
