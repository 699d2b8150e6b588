import { expect, test } from "vitest";
import { shown } from "./shown.js";

test.each([
  ["10 mm", '"10 mm"'],
  [10, '"10"'],
  ['3/8"', `'3/8"'`],
  ["a\u0000b\n", '"a\\u0000b\\u000a"'],
  ["x".repeat(50), `"${"x".repeat(37)}..."`],
  [[1], "a list"],
  [{}, "a block of keys"],
  [null, "nothing"],
  [true, '"true"'],
])("shown(%j) is %s", (value, text) => {
  expect(shown(value)).toBe(text);
});
