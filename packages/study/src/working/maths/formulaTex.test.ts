import { expect, test } from "vitest";
import { reynolds } from "../formulas/flow.js";
import { openArea } from "../formulas/screens.js";
import { formulaTex, letterTex } from "./formulaTex.js";

test.each([
  ["a", "a"],
  ["Re", "\\mathrm{Re}"],
  ["nu", "\\nu"],
  ["phi", "\\varphi"],
  ["rho_15", "\\rho_{15}"],
  ["dp", "\\Delta p"],
  ["dp_1", "\\Delta p_{1}"],
  ["V_l", "V_{l}"],
  ["d_i_1", "d_{i\\mathrm{,}1}"],
])("letterTex(%j) is %j", (letter, tex) => {
  expect(letterTex(letter)).toBe(tex);
});

test.each([
  // What binds less than its surroundings is in brackets, and nothing else is.
  ["((a))", "a"],
  ["a + (b + c)", "a + b + c"],
  ["a - b - c", "a - b - c"],
  ["a - (b - c)", "a - \\left(b - c\\right)"],
  ["a - (b + c)", "a - \\left(b + c\\right)"],
  ["a - b * c", "a - b \\, c"],
  ["a * b * c", "a \\, b \\, c"],
  ["a * (b * c)", "a \\, \\left(b \\, c\\right)"],
  ["(a - b) * c", "\\left(a - b\\right) \\, c"],
  ["(a + b) / (c - d)", "\\frac{a + b}{c - d}"],
  ["a / (b / c)", "\\frac{a}{\\frac{b}{c}}"],
  ["c * (a / b)", "c \\, \\frac{a}{b}"],
  ["a^(b + c)", "a^{b + c}"],
  ["(a + b)^2", "\\left(a + b\\right)^{2}"],
  ["c * a^2", "c \\, a^{2}"],
  // An exponent beside a bare fraction or a power would seem to stand over a part of it.
  ["(a / b)^2", "\\left(\\frac{a}{b}\\right)^{2}"],
  ["(a^b)^c", "\\left(a^{b}\\right)^{c}"],
  ["2^(a / b)", "2^{\\frac{a}{b}}"],
  // A sign binds as a product does.
  ["-a", "-a"],
  ["-a * b", "-a \\, b"],
  ["a * -b", "a \\, \\left(-b\\right)"],
  ["-(a + b)", "-\\left(a + b\\right)"],
  ["-(a * b)", "-\\left(a \\, b\\right)"],
  ["(-a)^2", "\\left(-a\\right)^{2}"],
  ["a^-2", "a^{-2}"],
  ["1 / -a", "\\frac{1}{-a}"],
  // Between a letter and a letter a space will do; before a number there is a dot.
  ["2 * a", "2 \\, a"],
  ["a * 2", "a \\cdot 2"],
  ["a * 2^b", "a \\cdot 2^{b}"],
  ["a * b^2", "a \\, b^{2}"],
  ["a * (2 + b)", "a \\, \\left(2 + b\\right)"],
  ["a * -2", "a \\cdot \\left(-2\\right)"],
  ["0.5 * a", "0.5 \\, a"],
  ["6e-7 * a", "6 \\cdot 10^{-7} \\, a"],
  ["1e21", "1 \\cdot 10^{21}"],
  ["sqrt(a + b)", "\\sqrt{a + b}"],
  ["abs(a - b)", "\\left|a - b\\right|"],
  ["log(a)", "\\ln\\left(a\\right)"],
  ["log10(a)", "\\log_{10}\\left(a\\right)"],
  ["sign(a)", "\\mathrm{sign}\\left(a\\right)"],
  ["exp(a - b)", "\\exp\\left(a - b\\right)"],
  ["max(a, b + c)", "\\max\\left(a, b + c\\right)"],
  // Of a sum over all what is added is one term.
  ["sum(n * d)", "\\sum_i n \\, d"],
  ["sum(a + b)", "\\sum_i \\left(a + b\\right)"],
])("formulaTex(%j) is %j", (text, tex) => {
  expect(formulaTex({ text, result: { ...reynolds.result, letter: "y" } })).toBe(`y = ${tex}`);
});

test("formulaTex(openArea) squares the whole of its fraction", () => {
  expect(formulaTex(openArea)).toBe("b = \\left(\\frac{w}{w + d}\\right)^{2}");
});
