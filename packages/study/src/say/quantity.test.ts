import { expect, test } from "vitest";
import { quantity } from "./quantity.js";

test.each([
  [0.12345e-3 / 3600, "flow", "0.12"],
  [123.4e-3 / 3600, "flow", "123"],
  [99.94e-3 / 3600, "flow", "99.9"],
  [99.96e-3 / 3600, "flow", "100"],
  [9.994e-3 / 3600, "flow", "9.99"],
  [9.996e-3 / 3600, "flow", "10.0"],
  [1.23e-3 / 3600, "flow", "1.23"],
  [1234, "vacuum", "1.2"],
  [1234, "pressure", "1.2"],
  [1234, "absolute pressure", "1.2"],
  [0.1234, "ratio", "12"],
  [9.94 * 3600, "running time", "9.9"],
  [9.96 * 3600, "running time", "10"],
  [273.15 + 20.04, "temperature", "20"],
  [273.15 + 20.06, "temperature", "20.1"],
  [-1, "vacuum", "0.0"],
] as const)(
  "quantity(%d, %j, 'metric') has three digits at most, and no more than its kind is known to: %s",
  (value, kind, shown) => {
    expect(quantity(value, kind, "metric").split(" ")[0]).toBe(shown);
  },
);

test("quantity(Infinity) has no limit where it is a flow or a share, and is none elsewhere, without a unit", () => {
  expect(quantity(Infinity, "flow", "metric")).toBe("no limit");
  expect(quantity(Infinity, "ratio", "metric")).toBe("no limit");
  expect(quantity(Infinity, "vacuum", "metric")).toBe("none");
  expect(quantity(-Infinity, "flow", "metric")).toBe("none");
  expect(quantity(Number.NaN, "flow", "us")).toBe("none");
});

test("quantity(value, kind, system) ends in the unit, and keeps the sign of what is not 0", () => {
  expect(quantity(20300, "vacuum", "us")).toBe("6.0 inHg");
  expect(quantity(-1700, "vacuum", "metric")).toBe("-1.7 kPa");
});

// Borders of how many digits are shown, from both sides: a figure of the border itself rounds up to the next digit.
test.each([
  [9.95 * 3600, "running time", "10 h"],
  [9.94 * 3600, "running time", "9.9 h"],
  [1.2345, "plain", "1.23"],
  [99.95, "plain", "100"],
  [123.4e3, "distance", "123 km"],
  [7.4e3, "distance", "7 km"],
  [1234.5, "altitude", "1235 m"],
  [7.6, "altitude", "8 m"],
  [1.25e-3, "volume", "1.3 L"],
  [25.4e-6, "small volume", "25 mL"],
] as const)("quantity(%d, %j, 'metric') is %s", (value, kind, text) => {
  expect(quantity(value, kind, "metric")).toBe(text);
});
