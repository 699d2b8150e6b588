import { describe, expect, test } from "vitest";
import { exactQuantity } from "./exactQuantity.js";

const ICE = 273.15;

describe("exactQuantity(value, kind, system) has all the digits that were stated, to five", () => {
  test.each([
    [0.0127, "bore", "us", "0.5 in"],
    [0.0095, "bore", "metric", "9.5 mm"],
    [0.0123456789, "bore", "metric", "12.346 mm"],
    [ICE + 15, "temperature", "metric", "15 °C"],
    [ICE - 12.5, "temperature", "metric", "-12.5 °C"],
    [ICE, "temperature", "metric", "0 °C"],
    [ICE, "temperature", "us", "32 °F"],
    // A thousandth of a degree is not lost among the 273 it is counted from.
    [ICE + 1.0005, "temperature", "metric", "1.0005 °C"],
    // What is left of a rounding is 0, and what is small by itself is not.
    [ICE - 160 / 9, "temperature", "us", "0 °F"],
    [1e-10, "plain", "metric", "1e-10"],
    [2.5, "plain", "metric", "2.5"],
    [0.4, "ratio", "metric", "40 %"],
    [20e3, "vacuum", "metric", "20 kPa"],
  ] as const)("exactQuantity(%d, %j, %j) is %s", (value, kind, system, text) => {
    expect(exactQuantity(value, kind, system)).toBe(text);
  });
});
