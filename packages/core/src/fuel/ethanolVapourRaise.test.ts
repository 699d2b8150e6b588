import { expect, test } from "vitest";
import { ethanolVapourRaise } from "./ethanolVapourRaise.js";

test("ethanolVapourRaise(0.05, EU waiver) is the example", () => {
  expect(ethanolVapourRaise(0.05, "EU waiver")).toBeCloseTo(8000, 9);
});

test("ethanolVapourRaise(share, rule) holds the last value above 10 %", () => {
  expect(ethanolVapourRaise(0.85, "EU waiver")).toBeCloseTo(7800, 9);
  expect(ethanolVapourRaise(1, "US waiver")).toBeCloseTo(6894.757293168361, 9);
});

test("ethanolVapourRaise refuses a share outside 0 to 1 and an unknown rule", () => {
  expect(() => ethanolVapourRaise(10, "EU waiver")).toThrow(
    "ethanolVapourRaise requires share to be between 0 and 1, got 10",
  );
  expect(() => ethanolVapourRaise(0.1, "waiver" as "EU waiver")).toThrow(
    'rule to be one of EU waiver, US waiver, got "waiver"',
  );
});
