import { expect, test } from "vitest";
import { parseFormula } from "./parseFormula.js";

test.each([
  ["a % b", "%"],
  ["a == b", "=="],
  ["a!", "!"],
  ["createUnit(x)", "createUnit"],
  ["x.y", "AccessorNode"],
  ["x[1]", "AccessorNode"],
  ["a:b", "RangeNode"],
  ["{a: 1}", "ObjectNode"],
  ['"text"', "ConstantNode"],
  ["true", "ConstantNode"],
  ["null", "ConstantNode"],
  // Within what is let through, too.
  ["1 + (2 * import(x))", "import"],
  ["sum(x.y)", "AccessorNode"],
  // A method that is called as a function we know.
  ["x.sum(1)", "FunctionNode"],
])("parseFormula(%j) says that a formula may not hold %j", (text, what) => {
  expect(() => parseFormula(text)).toThrow(new Error(`a formula may not hold "${what}": ${text}`));
});

test.each(["abs(a) + exp(b) - log(c) * log10(d) / sign(e)", "max(a, b)^min(c, d)", "sqrt(sum(a)) * -(2.5e-3)"])(
  "parseFormula(%j) lets plain arithmetic through",
  (text) => {
    expect(parseFormula(text).compile().evaluate).toBeTypeOf("function");
  },
);

test("parseFormula(text) refuses far more text than any formula has", () => {
  expect(() => parseFormula("1".padEnd(50_001))).toThrow(new Error("a formula of 50001 characters"));
  expect(parseFormula("1".padEnd(50_000)).compile().evaluate(new Map())).toBe(1);
});

test("parseFormula(text) keeps a tree while few are known, and forgets it before they are too many", () => {
  const text = "kept + 1";
  const first = parseFormula(text);
  expect(parseFormula(text)).toBe(first);
  for (let at = 0; at < 500; at++) parseFormula(`other + ${at}`);
  expect(parseFormula(text)).not.toBe(first);
  // Two of a few are both kept, whatever came before them.
  const [one, two] = [parseFormula("one + 1"), parseFormula("two + 1")];
  expect([parseFormula("one + 1") === one, parseFormula("two + 1") === two]).toEqual([true, true]);
});
