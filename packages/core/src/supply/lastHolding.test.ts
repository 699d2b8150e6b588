import { expect, test } from "vitest";
import { lastHolding } from "./lastHolding.js";

test("lastHolding(margin, guess) is where a falling margin meets 0, from a guess on either side", () => {
  for (const guess of [1e-9, 3e-3, 50]) expect(lastHolding((flow) => 2 - flow * 1e3, guess) / 2e-3).toBeCloseTo(1, 13);
});

test("lastHolding(margin, guess) is the flow below a step, and the margin there still holds", () => {
  const step = (flow: number) => (flow < 0.3 ? 1 : -1);
  const found = lastHolding(step, 1);
  expect(step(found)).toBe(1);
  expect(0.3 - found).toBeLessThanOrEqual(1e-14);
});

test("lastHolding(margin, guess) is 0 where nothing holds, and Infinity where everything does", () => {
  expect(lastHolding(() => -1, 1)).toBe(0);
  expect(lastHolding(() => 0, 1)).toBe(Infinity);
  expect(lastHolding((flow) => (flow > 0 ? -Infinity : 1), 1)).toBeLessThan(1e-80);
});
