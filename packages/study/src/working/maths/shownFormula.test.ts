import { expect, test } from "vitest";
import { formula } from "../Formula.js";
import { fromSource, type Plain } from "../worked.js";
import { shownFormula, shownLetter, shownWithValues } from "./shownFormula.js";
import { valuesTex } from "./valuesTex.js";

const step = (value: number, unit: string) => fromSource("a test", { name: "a figure", value, unit } satisfies Plain);
const given = { id: "test", name: "Test", holds: "always", accuracy: "none", source: "a test" } as const;
const shown = (value: number, unit: string) => (unit === "1" ? String(value) : `${value} ${unit}`);

/** A formula of a text, and its letters put in: a list where several values are given. */
function put(text: string, values: Readonly<Record<string, readonly [number | readonly number[], string]>>) {
  const symbols = Object.fromEntries(
    Object.entries(values).map(([letter, [, unit]]) => [letter, ["x", unit]] as const),
  );
  const inputs = Object.entries(values).map(([letter, [own, unit]]) => ({
    letter,
    steps: (typeof own === "number" ? [own] : own).map((value) => step(value, unit)),
    list: typeof own !== "number",
  }));
  return [formula({ ...given, text, symbols, result: ["y", "z", "1"] }), inputs] as const;
}

test.each([
  ["rho_15", "ρ_15"],
  ["dp", "Δp"],
  ["dp_1", "Δp_1"],
  ["mu", "µ"],
  ["Re", "Re"],
  ["V_l_1", "V_l_1"],
])("shownLetter(%j) is %j", (letter, text) => {
  expect(shownLetter(letter)).toBe(text);
});

test.each([
  ["128 * mu * L * Q / (pi * D^4)", "128 · µ · L · Q / (π · D^4)"],
  ["2 * log(x) + log10(y)", "2 · ln(x) + log10(y)"],
  ["sqrt(dp) - max(d)", "sqrt(Δp) - max(d)"],
  // The letter in a number is none.
  ["1.5e3 * e", "1.5e3 · e"],
])("shownFormula(%j) is %j", (text, read) => {
  expect(shownFormula({ text })).toBe(read);
});

const many = (count: number) => Array.from({ length: count }, (_, at) => at + 1);

test.each([
  // In a plain sum a value and its unit need no brackets; a sign does.
  ["a + b", put("a + b", { a: [1, "Pa"], b: [-2, "Pa"] }), "1 Pa + (-2 Pa)"],
  ["a * b", put("a * b", { a: [1, "Pa"], b: [-2, "m"] }), "(1 Pa) · (-2 m)"],
  // A bare number never needs any.
  ["a * b, of numbers", put("a * b", { a: [1.5, "1"], b: [20, "1"] }), "1.5 · 20"],
  ["abs(a) / b", put("abs(a) / b", { a: [3, "m"], b: [4, "s"] }), "abs(3 m) / (4 s)"],
  ["(a + b) * c", put("(a + b) * c", { a: [1, "m"], b: [2, "m"], c: [3, "1"] }), "((1 m) + (2 m)) · 3"],
  // What is not put in stays a letter.
  ["pi * a", put("pi * a", { a: [2, "m"] }), "π · (2 m)"],
  // A sum over all, alone, is without brackets; as a part of more it has them.
  ["sum(d)", put("sum(d)", { d: [[1, 2], "Pa"] }), "1 Pa + 2 Pa"],
  ["max(d)", put("max(d)", { d: [[1, 2], "Pa"] }), "max(1 Pa, 2 Pa)"],
  ["a - sum(d)", put("a - sum(d)", { a: [9, "Pa"], d: [[1, 2], "Pa"] }), "9 Pa - (1 Pa + 2 Pa)"],
  ["sum(n * d)", put("sum(n * d)", { n: [[3, 4], "1"], d: [[1, 2], "Pa"] }), "(3 · (1 Pa) + 4 · (2 Pa))"],
  ["sum(d) - a", put("sum(d) - a", { d: [[1, 2], "Pa"], a: [9, "Pa"] }), "(1 Pa + 2 Pa) - 9 Pa"],
  [
    "(a + b) - (c + d)",
    put("(a + b) - (c + d)", { a: [1, "Pa"], b: [2, "Pa"], c: [3, "Pa"], d: [4, "Pa"] }),
    "(1 Pa + 2 Pa) - (3 Pa + 4 Pa)",
  ],
  ["sum(d) of twelve", put("sum(d)", { d: [many(12), "1"] }), many(12).join(" + ")],
  // Of more than twelve terms the ends are enough.
  ["sum(d) of thirteen", put("sum(d)", { d: [many(13), "1"] }), "sum(d_1 … d_13)"],
  ["sum(rho) of thirteen", put("sum(rho) * a", { rho: [many(13), "1"], a: [2, "1"] }), "sum(ρ_1 … ρ_13) · 2"],
] as const)("shownWithValues reads as a person writes: %s", (_, [own, inputs], text) => {
  expect(shownWithValues(own, inputs, shown)).toBe(text);
});

test.each([
  ["a + b", put("a + b", { a: [0, "Pa"], b: [-2, "Pa"] }), "0 Pa + \\left(-2 Pa\\right)"],
  ["a * b", put("a * b", { a: [1, "Pa"], b: [2, "1"] }), "\\left(1 Pa\\right) \\, \\left(2\\right)"],
  ["a^2", put("a^2", { a: [1, "m"] }), "\\left(1 m\\right)^{2}"],
  ["a / pi", put("a / pi", { a: [1, "m"] }), "\\frac{\\left(1 m\\right)}{\\pi}"],
  ["max(d) - c", put("max(d) - c", { d: [[1, 2], "Pa"], c: [3, "Pa"] }), "\\max\\left(1 Pa, 2 Pa\\right) - 3 Pa"],
] as const)("valuesTex puts values in place of letters: %s", (_, [own, inputs], tex) => {
  expect(valuesTex(own, inputs, shown)).toBe(tex);
});

test("shownWithValues(formula, inputs, shown) keeps a value together that only ends in a number", () => {
  const [own, inputs] = put("a * b", { a: [3, "Pa"], b: [4, "m"] });
  expect(shownWithValues(own, inputs, (value) => `about ${value}`)).toBe("(about 3) · (about 4)");
});
