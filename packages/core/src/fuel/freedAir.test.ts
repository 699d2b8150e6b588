import { expect, test } from "vitest";
import { freedAir } from "./freedAir.js";

const diesel = { densityAt15: 840, temperature: 293.15, saturatedAt: 101325 };

test("freedAir(40 kPa of vacuum) is the example", () => {
  expect(freedAir({ ...diesel, pressure: 61325 })).toBeCloseTo(0.0782, 4);
});

test("freedAir(no suction) is none", () => {
  expect(freedAir({ ...diesel, pressure: 101325 })).toBe(0);
  expect(freedAir({ ...diesel, pressure: 200e3 })).toBe(0);
});

test("freedAir refuses a perfect vacuum", () => {
  expect(() => freedAir({ ...diesel, pressure: 0 })).toThrow("freedAir requires pressure to be more than 0 Pa, got 0");
});
