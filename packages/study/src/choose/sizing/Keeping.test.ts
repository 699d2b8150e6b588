import type { System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, plainSystem, WARM } from "../../../../../tests/support/plainSystem.js";
import { Keeping } from "./Keeping.js";
import type { SearchGiven } from "./SearchKinds.js";
import { stagePartOf } from "./StagePart.js";
import { stackOf } from "./stack.js";
import { Tally } from "./Tally.js";

/** 16.5 kPa at 200 L/h, and 4 kPa more with the 200 g of a hundred hours. */
const own = elementOf("own", { drop: 16.5e3 });
const picked = { elements: [0], counts: [1], bore: null };
const keeping = (
  more: Partial<SearchGiven> = {},
  system: Partial<System> = {},
  side: "suction" | "delivery" = "suction",
) => {
  const stack = stackOf({ ...plainSystem, ...system }, side);
  const given: SearchGiven = {
    stack,
    elements: [own],
    parallel: 1,
    stages: 1,
    bores: [null],
    temperatures: [WARM],
    code: null,
    rating: null,
    interval: 100 * 3600,
    ...more,
  };
  return new Keeping(given, [stagePartOf(stack, own)]);
};

describe("Keeping.miss(by, picked, drop)", () => {
  // Ten scale numbers under what is delivered: 14/12/9.
  const miss = (code: string, drop = 5) =>
    keeping({ code }, { deliveredFuel: { code: "24/22/19" } }).miss("cleanliness", picked, drop);

  test.each([
    ["12/12/9", 2],
    ["9/9/9", 8],
    ["14/7/3", 11],
    ["*/12/9", 0],
    ["15/13/3", 6],
  ])("by cleanliness, where %s is asked, is %i scale numbers over, and then by drop", (code, over) => {
    expect(keeping({}, { deliveredFuel: { code: "24/22/19" } }).codeOf(picked)).toBe("14/12/9");
    expect(miss(code)).toBe(over * 1e12 + 5);
    expect(miss(code, 6)).toBeGreaterThan(miss(code));
  });

  test("by all else is the drop", () => {
    expect(keeping({ code: "9/9/9" }).miss("interval", picked, 5)).toBe(5);
    expect(keeping().miss("cleanliness", picked, 5)).toBe(5);
  });
});

describe("Keeping.fault(picked, life, tally) where sums do not tell", () => {
  const limits = (feedPressure: number) => ({
    limits: { vacuumClean: 15e3, vacuumAtChange: 30e3, feedPressure },
    suction: [],
    delivery: [own.filter],
  });
  const faultOf = (feedPressure: number) => {
    const tally = new Tally();
    const fault = keeping({}, limits(feedPressure), "delivery").fault(picked, null, tally);
    return [fault, tally.lives];
  };

  test("follows the life to the end of the interval, and counts it", () => {
    // 80 kPa of relief less 20.5 in a hundred hours, and a little less for the grains that slip through.
    expect(faultOf(59e3)).toEqual([null, 1]);
    expect(faultOf(60e3)).toEqual(["interval", 1]);
  });
});

test("Keeping.orders counts each order of elements once, however often it is asked about", () => {
  const of = keeping();
  expect(of.orders).toBe(0);
  of.codeOf(picked);
  of.codeOf({ ...picked, counts: [2] });
  expect(of.orders).toBe(1);
});
