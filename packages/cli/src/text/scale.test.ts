import { expect, test } from "vitest";
import { bar, strip } from "./scale.js";

const flat = (value: number) => ({ low: value, middle: value, high: value });

test("strip(scale, width) is filled up to the vacuum, and marks both limits", () => {
  expect(strip({ vacuum: flat(10e3), limits: { clean: 20e3, atChange: 40e3 } }, 23)).toBe("█████·····┆·········┃··");
});

test("strip(scale, width) shades what is not known", () => {
  const vacuum = { low: 10e3, middle: 15e3, high: 30e3 };
  expect(strip({ vacuum, limits: { clean: null, atChange: 40e3 } }, 23)).toBe("█████▒▒▒▒▒▒▒▒▒▒·····┃··");
});

test("strip(scale, width) goes on past the limit for a vacuum over it", () => {
  const over = strip({ vacuum: flat(80e3), limits: { clean: null, atChange: 40e3 } }, 20) ?? "";
  expect(over.indexOf("┃")).toBe(10);
  expect(over.lastIndexOf("█")).toBeGreaterThan(10);
});

test("strip(scale, width) is none without a limit, or where nothing can pass", () => {
  expect(strip({ vacuum: flat(80e3), limits: { clean: null, atChange: null } }, 20)).toBeNull();
  expect(strip({ vacuum: flat(Number.POSITIVE_INFINITY), limits: { clean: null, atChange: 40e3 } }, 20)).toBeNull();
});

test("bar(share, width) is drawn in eighths of a letter", () => {
  expect(bar(1, 4)).toBe("████");
  expect(bar(0.375, 4)).toBe("█▌");
  expect(bar(0, 4)).toBe("");
});
