import { expect, test } from "vitest";
import { isWorthTheWork } from "./isWorthTheWork.js";

const now = { inHand: 0.1, overClean: 500 };

test.each([
  [{ inHand: 0.1006, overClean: 500 }, true],
  [{ inHand: 0.1004, overClean: 500 }, false],
  [{ inHand: 0.1, overClean: 449 }, true],
  [{ inHand: 0.1, overClean: 451 }, false],
  [{ inHand: 0.1, overClean: null }, true],
  [{ inHand: 0.05, overClean: 600 }, false],
])("isWorthTheWork(%j) over 10 %% in hand and 500 Pa over the clean limit is %j", (one, worth) => {
  expect(isWorthTheWork(one, now)).toBe(worth);
});

test("isWorthTheWork(one, now) takes what keeps the clean limit already for no gain", () => {
  expect(isWorthTheWork({ inHand: 0.1, overClean: null }, { inHand: 0.1, overClean: null })).toBe(false);
  expect(isWorthTheWork({ inHand: Infinity, overClean: null }, { inHand: Infinity, overClean: null })).toBe(false);
});
