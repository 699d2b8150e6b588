import { expect, test } from "vitest";
import { formula } from "../Formula.js";
import { reynolds } from "../formulas/flow.js";
import { vacuumSum } from "../formulas/path.js";
import { fromSource, worked } from "../worked.js";
import { evaluateWithUnits } from "./evaluate.js";
import { expanded } from "./expanded.js";
import { formulaTex } from "./formulaTex.js";
import { parseFormula } from "./parseFormula.js";
import { shownFormula, shownWithValues } from "./shownFormula.js";
import { unitText } from "./unitText.js";

const step = (value: number, unit: string) => fromSource("a test", { name: "a figure", value, unit });

test.each([
  ["kg/m3", "kg/m^3"],
  ["1/m3", "m^-3"],
  ["1/K", "K^-1"],
  ["Pa s", "Pa s"],
  ["Pa s2/m6", "Pa s^2/m^6"],
  ["kg2/(m6 K)", "kg^2/(m^6 K)"],
  ["1", ""],
  ["catalogue currency", "cd"],
])("unitText(%j) is %j", (unit, text) => {
  expect(unitText(unit)).toBe(text);
});

test("expanded(text, sizes) writes sums and choices out, and leaves plain ones alone", () => {
  expect(expanded("a + sum(n * d)", { n: 2, d: 2 })).toBe("a + (n_1 * d_1 + n_2 * d_2)");
  expect(expanded("min(p)", { p: 3 })).toBe("min(p_1, p_2, p_3)");
  expect(expanded("max(0 * d, d) / sum(c)", { c: 1 })).toBe("max(0 * d, d) / (c_1)");
});

test.each(["import('x')", "f(x) = 2", "a = 1", "[1, 2]", "x.y", "createUnit(x)", "a ? b : c", '"text"', "a; b"])(
  "parseFormula(%j) refuses what is not plain arithmetic",
  (text) => {
    expect(() => parseFormula(text)).toThrow("a formula may not hold");
  },
);

test("evaluateWithUnits(formula, inputs) carries units through, and comes out in the one stated", () => {
  const { origin } = worked(reynolds, { Q: step(1e-4, "m3/s"), D: step(0.01, "m"), nu: step(4e-6, "m2/s") });
  if (origin.by !== "formula") throw new Error("not a formula");
  expect(evaluateWithUnits(origin.formula, origin.inputs)).toBeCloseTo(4e-4 / (Math.PI * 4e-8), 9);
});

test("evaluateWithUnits(formula, inputs) refuses units that do not go together, and another unit than stated", () => {
  const given = {
    id: "wrong",
    name: "Wrong",
    symbols: { a: ["a pressure", "Pa"], b: ["a length", "m"] },
    holds: "never",
    accuracy: "none",
    source: "a test",
  } as const;
  const inputs = [
    { letter: "a", steps: [step(1, "Pa")], list: false },
    { letter: "b", steps: [step(1, "m")], list: false },
  ];
  const sum = formula({ ...given, text: "a + b", result: ["c", "a pressure", "Pa"] });
  const product = formula({ ...given, text: "a * b", result: ["c", "a pressure", "Pa"] });
  const ratio = formula({ ...given, text: "a * b", result: ["c", "a number", "1"] });
  expect(() => evaluateWithUnits(sum, inputs)).toThrow("Units do not match");
  expect(() => evaluateWithUnits(product, inputs)).toThrow("Units do not match");
  expect(() => evaluateWithUnits(ratio, inputs)).toThrow("not to a pure number");
});

test("formulaTex(formula) writes fractions, Greek letters, indices and brackets where they are needed", () => {
  expect(formulaTex(reynolds)).toBe("\\mathrm{Re} = \\frac{4 \\, \\left|Q\\right|}{\\pi \\, D \\, \\nu}");
  const tex = (text: string) => formulaTex({ text, result: { ...reynolds.result, letter: "y" } });
  expect(tex("sum(d)")).toBe("y = \\sum_i d");
  expect(tex("(a + b)^2 * c")).toBe("y = \\left(a + b\\right)^{2} \\, c");
  expect(tex("a - (b - c)")).toBe("y = a - \\left(b - c\\right)");
  expect(tex("2 * 3 * sqrt(rho_15)")).toBe("y = 2 \\cdot 3 \\, \\sqrt{\\rho_{15}}");
});

test("shownFormula and shownWithValues read as a person writes", () => {
  expect(shownFormula(reynolds)).toBe("4 · abs(Q) / (π · D · ν)");
  const { origin } = worked(vacuumSum, { d: [step(-1, "Pa"), step(2, "Pa")] });
  if (origin.by !== "formula") throw new Error("not a formula");
  expect(shownWithValues(origin.formula, origin.inputs, (value, unit) => `${value} ${unit}`)).toBe("(-1 Pa) + 2 Pa");
});
