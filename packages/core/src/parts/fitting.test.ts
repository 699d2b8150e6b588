import { fitting, fuelState, solve, twoKConstants } from "@thirstline/core";
import { expect, test } from "vitest";

// v = 1.209578 m/s in 10 mm: one velocity head is 607.177325 Pa, Re 3023.94 at 4 mm2/s
const diesel = fuelState({ density: 830, kinematicViscosity: 4e-6 });
const flow = 9.5e-5;

test("fitting({ k: 0.9 }) costs 0.9 velocity heads", () => {
  expect(solve(fitting({ bore: 0.01, k: 0.9 }), diesel).drop(flow)).toBeCloseTo(546.459592585566, 9);
});

test("fitting({ twoK, count: 2 }) costs twice K1/Re + Kinf (1 + 0.0254/bore) velocity heads", () => {
  // 800/3023.94 + 0.4 (1 + 2.54) = 1.680555
  const elbows = fitting({ bore: 0.01, count: 2, twoK: twoKConstants["elbow 90 screwed"] });
  expect(solve(elbows, diesel).drop(flow)).toBeCloseTo(2040.78998659682, 9);
});

test("fitting({ equivalentLength: 30 }) costs what 30 bores of line cost", () => {
  const cold = fuelState({ density: 830, kinematicViscosity: 4e-5 }); // Re 302: 128 mu L Q / (pi D^4) with L = 0.3 m
  expect(solve(fitting({ bore: 0.01, equivalentLength: 30 }), cold).drop(flow)).toBeCloseTo(3855.16562313091, 9);
});

test("fitting({ count: 3 }) costs three times one of it, by each statement of the loss", () => {
  const losses = [{ k: 0.9 }, { twoK: { k1: 500, kInfinity: 0.7 } }, { equivalentLength: 30, roughness: 1e-5 }];
  for (const loss of losses) {
    const [one, three] = [1, 3].map((count) => solve(fitting({ bore: 0.01, count, ...loss }), diesel).drop(flow));
    expect((three ?? 0) / (one ?? 0)).toBeCloseTo(3, 13);
  }
});

test.each([
  [{ bore: 0, k: 1 }, "fitting requires bore to be more than 0 m, got 0"],
  [{ bore: 0.01, count: 0, k: 1 }, "fitting requires count to be at least 1, got 0"],
  [{ bore: 0.01, k: -1 }, "fitting requires k to be at least 0, got -1"],
  [{ bore: 0.01, twoK: { k1: -1, kInfinity: 1 } }, "fitting requires twoK.k1 to be at least 0, got -1"],
  [{ bore: 0.01, twoK: { k1: 1, kInfinity: -1 } }, "fitting requires twoK.kInfinity to be at least 0, got -1"],
  [{ bore: 0.01, equivalentLength: 0 }, "fitting requires equivalentLength to be more than 0 bores, got 0"],
  [
    { bore: 0.01, equivalentLength: 30, roughness: 1 },
    "fitting requires roughness to be between 0 and 0.0005 m, got 1",
  ],
  [{ bore: 0.01 }, "fitting requires loss to be stated once: k, twoK or equivalentLength, got 0"],
  [
    { bore: 0.01, k: 1, equivalentLength: 30 },
    "fitting requires loss to be stated once: k, twoK or equivalentLength, got 2",
  ],
])("fitting(%j) is refused", (given, message) => {
  expect(() => fitting(given)).toThrow(message);
});
