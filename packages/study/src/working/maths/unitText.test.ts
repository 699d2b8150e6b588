import { expect, test } from "vitest";
import { unitText } from "./unitText.js";

test.each([
  ["d", "day"],
  ["s/d", "s/day"],
  ["1/d", "day^-1"],
  ["kg/s", "kg/s"],
  ["m2/s", "m^2/s"],
  ["1/kg2", "kg^-2"],
  ["stated currency", "cd"],
])("unitText(%j) is %j, as the parser reads it", (unit, text) => {
  expect(unitText(unit)).toBe(text);
});
