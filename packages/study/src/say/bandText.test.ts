import { expect, test } from "vitest";
import { bandText } from "./bandText.js";

const band = (low: number, middle: number, high: number) => ({ low, middle, high });

test("bandText(band) gives both ends and the likely figure", () => {
  expect(bandText(band(2100, 2900, 4000), "vacuum", "metric")).toBe("2.1 to 4.0 kPa, likely 2.9");
});

test("bandText(band) gives one figure where the ends are the same", () => {
  expect(bandText(band(20_300, 20_300, 20_300), "vacuum", "us")).toBe("6.0 inHg");
});

test("bandText(band) gives one figure where the ends differ by less than 1 %", () => {
  expect(bandText(band(1.773, 1.778, 1.781), "ratio", "metric")).toBe("178 %");
  expect(bandText(band(1.75, 1.78, 1.81), "ratio", "metric")).toBe("175 to 181 %, likely 178");
});

test("bandText(band) of a figure that does not exist says so", () => {
  expect(
    bandText(band(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY), "flow", "us"),
  ).toBe("no limit");
});
