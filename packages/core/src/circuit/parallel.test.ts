import { type BankProfile, filter, fitting, fuelState, netRise, parallel, rise, series, solve } from "@thirstline/core";
import { expect, test } from "vitest";

const diesel = fuelState({ density: 830, kinematicViscosity: 3e-6 });
const tested = (drop: number) => filter({ clean: { drop, flow: 5e-5, dynamicViscosity: 830 * 3e-6 } });

test("parallel(a, b) of filters of 1000 and 3000 Pa splits 3 to 1, and costs 750 Pa", () => {
  const solved = solve(parallel(tested(1000), tested(3000)), diesel);
  expect(solved.drop(5e-5)).toBeCloseTo(750, 9);
  const [bank] = solved.profile(5e-5) as [BankProfile];
  expect(bank.branches.map(([first]) => first?.flow)).toEqual([
    expect.closeTo(3.75e-5, 17),
    expect.closeTo(1.25e-5, 17),
  ]);
});

test("parallel(a, a) costs half of a in laminar flow", () => {
  expect(solve(parallel(tested(1000), tested(1000)), diesel).drop(5e-5)).toBeCloseTo(500, 10);
});

test("netRise(parallel(...)) is what every branch climbs", () => {
  expect(
    netRise(
      series(
        rise({ height: 1 }),
        parallel(series(tested(1), rise({ height: 2 })), series(rise({ height: 2 }), tested(1))),
      ),
    ),
  ).toBe(3);
});

test("parallel refuses one branch, or none", () => {
  expect(() => parallel(tested(1000))).toThrow("parallel requires branches to be two or more, got 1");
  expect(() => parallel()).toThrow("parallel requires branches to be two or more, got 0");
});

test("parallel refuses branches that do not climb alike, and takes what is off by rounding", () => {
  const climbing = (height: number) => series(tested(1000), rise({ height }));
  expect(() => parallel(climbing(0.3), climbing(0.5))).toThrow(
    "parallel requires branches[1]'s net rise to be 0.3 m, as in the first branch, got 0.5",
  );
  const stepped = series(rise({ height: 0.1 }), tested(1000), rise({ height: 0.2 }));
  expect(netRise(parallel(climbing(0.3), stepped))).toBe(0.3);
});

test("parallel refuses a branch that does not resist flow", () => {
  const refusal = "parallel requires branches[1] to be a circuit that resists flow, got";
  expect(() => parallel(tested(1000), series())).toThrow(`${refusal} "series"`);
  expect(() => parallel(tested(1000), rise({ height: 0 }))).toThrow(`${refusal} "rise"`);
  expect(() => parallel(tested(1000), fitting({ bore: 0.01, k: 0 }))).toThrow(`${refusal} "fitting"`);
});
