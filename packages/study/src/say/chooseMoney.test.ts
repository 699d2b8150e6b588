import { expect, test } from "vitest";
import { moneyText } from "./chooseMoney.js";

test.each([
  [84, "84"],
  [7.5, "7.50"],
  [0.004, "0"],
  [99.99, "99.99"],
  [100, "100"],
  [1234.56, "1235"],
  [-7.5, "-7.50"],
  [-1234.56, "-1235"],
])("moneyText(%d) has cents below a hundred, where there are any: %s", (amount, text) => {
  expect(moneyText(amount)).toBe(text);
});
