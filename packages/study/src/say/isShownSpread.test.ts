import { expect, test } from "vitest";
import { bandFigure } from "./bandText.js";
import { isShownSpread } from "./isShownSpread.js";

const band = (low: number, middle: number, high: number) => ({ low, middle, high });

test("isShownSpread(band) is of a hundredth and more, and only where the ends read apart", () => {
  expect(isShownSpread(band(100e3, 100e3, 101e3), "vacuum", "metric")).toBe(true);
  expect(isShownSpread(band(100e3, 100e3, 100.9e3), "vacuum", "metric")).toBe(false);
  expect(isShownSpread(band(-101e3, -100e3, -100e3), "vacuum", "metric")).toBe(true);
  expect(isShownSpread(band(-100.9e3, -100e3, -100e3), "vacuum", "metric")).toBe(false);
  // 1.96 and 2.04 kPa both read 2.0 kPa.
  expect(isShownSpread(band(1960, 2000, 2040), "vacuum", "metric")).toBe(false);
  expect(bandFigure(band(1960, 2000, 2060), "vacuum", "metric")).toBe("2.0 to 2.1");
});
