import { expect, test } from "vitest";
import { atmosphere } from "./atmosphere.js";

test("atmosphere(2400) is the example, and 0 m is the standard pressure itself", () => {
  expect(atmosphere(2400)).toBeCloseTo(75625.7, 1);
  expect(atmosphere(0)).toBe(101325);
});

test("atmosphere(altitude, geometric) lies slightly above geopotential", () => {
  expect(atmosphere(2400, "geometric")).toBeGreaterThan(atmosphere(2400));
  expect(atmosphere(2400, "geometric") / atmosphere(2400)).toBeLessThan(1.0002);
});

test("atmosphere(altitude) falls all the way up", () => {
  for (let metres = -500; metres < 11000; metres += 100) {
    expect(atmosphere(metres + 100)).toBeLessThan(atmosphere(metres));
  }
});

test("atmosphere refuses altitudes beyond the troposphere, NaN, and an unknown kind", () => {
  expect(() => atmosphere(-501)).toThrow("atmosphere requires altitude to be between -500 and 11000 m, got -501");
  expect(() => atmosphere(11001)).toThrow("got 11001");
  expect(() => atmosphere(Number.NaN)).toThrow("got NaN");
  expect(() => atmosphere(0, "pressure" as "geometric")).toThrow(
    'atmosphere requires kind to be one of geopotential, geometric, got "pressure"',
  );
});
