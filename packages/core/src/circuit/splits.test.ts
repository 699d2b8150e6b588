import { expect, test } from "vitest";
import { fuelState } from "../fuel/index.js";
import { filter, line, strainer, valve } from "../parts/index.js";
import type { Circuit } from "./Circuit.js";
import { compile } from "./compile.js";
import { parallel } from "./parallel.js";
import { Split } from "./Split.js";
import { series } from "./series.js";
import { splitByBracket } from "./splitByBracket.js";
import { newtonStep, splitByNewton } from "./splitByNewton.js";
import { splitByOpenSet } from "./splitByOpenSet.js";

const diesel = fuelState({ density: 830, kinematicViscosity: 3e-6 });
const tested = (drop: number) => filter({ clean: { drop, flow: 5e-5, dynamicViscosity: 2.49e-3 } });
const hose = (bore: number) => line({ length: 2, bore, roughness: 1e-5 });
const check = (opening: number, kv = 1e-4) => valve({ opening, kv });
const cloth = strainer({ aperture: 1e-4, wire: 6e-5, area: 1e-3 });

function splitOf(branches: readonly Circuit[], heads: readonly number[], total: number): Split {
  const runs = branches.map((branch) => compile(branch, { fuel: diesel, passage: "smooth", end: "middle" }).run);
  const split = new Split(
    runs,
    branches.map((_, at) => heads[at] ?? 0),
  );
  split.total = total;
  return split;
}

/** Shares what it says: flows add up, and every branch costs the shared drop, or is held shut by less than opens it. */
function expectShared(split: Split): void {
  const { runs, heads, flows, total, drop } = split;
  expect(flows.reduce((sum, flow) => sum + flow, 0) / (total || 1)).toBeCloseTo(total === 0 ? 0 : 1, 12);
  runs.forEach((run, at) => {
    const [flow, head] = [flows[at] ?? Number.NaN, heads[at] ?? 0];
    if (run.oneWay && flow === 0) expect(drop).toBeLessThanOrEqual(head + run.rest + 1e-9);
    else expect((head + run.friction(flow)) / drop).toBeCloseTo(1, 9);
  });
}

const frictions: [string, Circuit[]][] = [
  ["filters", [tested(1000), tested(3000), tested(5000)]],
  ["unlike lines", [hose(0.004), hose(0.01), series(hose(0.006), hose(0.012))]],
  ["a strainer and a bank", [cloth, series(hose(0.008), parallel(hose(0.006), tested(2000)))]],
];

test.each(frictions)("splitByNewton, splitByOpenSet and splitByBracket agree on %s", (_, branches) => {
  for (const total of [1e-6, 5e-5, 4e-4, -2e-4]) {
    const [newton, open, closed] = [0, 1, 2].map(() => splitOf(branches, [], total)) as [Split, Split, Split];
    expect([splitByNewton(newton), splitByOpenSet(open, false)]).toEqual([true, true]);
    splitByBracket(closed);
    for (const split of [newton, open, closed]) {
      expectShared(split);
      expect(split.settled).toBe(true);
      expect(split.drop / newton.drop).toBeCloseTo(1, 10);
      expect(split.slope / newton.slope).toBeCloseTo(1, 6);
    }
  }
});

test.each(frictions)("newtonStep(split, pace) closes in on %s within eight rounds", (_, branches) => {
  for (const total of [1e-6, 5e-5, 4e-4, -2e-4]) {
    const split = splitOf(branches, [], total);
    split.flows.fill(total / branches.length);
    let rounds = 0;
    do newtonStep(split, rounds === 0 ? "first step" : "next step");
    while (!split.settled && ++rounds < 40);
    expect(rounds).toBeLessThan(8);
    expectShared(split);
  }
});

const held: [string, Circuit[], number[]][] = [
  ["check valves", [series(hose(0.008), check(500)), series(hose(0.006), check(2000)), tested(3000)], []],
  ["check valves alone", [check(500), check(900, 2e-4)], []],
  ["heads of their own", [hose(0.006), hose(0.008), tested(2000)], [0, 800, 3000]],
  ["heads of their own and a check valve", [series(hose(0.006), check(300)), hose(0.008)], [2000, 0]],
];

test.each(held)("splitByOpenSet and splitByBracket agree on branches with %s", (_, branches, heads) => {
  for (const total of [1e-7, 2e-5, 3e-4, -1e-4]) {
    if (total < 0 && branches.every(({ kind }) => kind === "valve")) continue;
    const [open, closed] = [0, 1].map(() => splitOf(branches, heads, total)) as [Split, Split];
    expect(splitByOpenSet(open, false)).toBe(true);
    splitByBracket(closed);
    for (const split of [open, closed]) {
      expectShared(split);
      expect([split.settled, split.kinked]).toEqual([true, true]);
      expect(split.drop / open.drop).toBeCloseTo(1, 9);
      expect(split.slope / open.slope).toBeCloseTo(1, 5);
      split.flows.forEach((flow, at) => {
        expect(Math.abs(flow - (open.flows[at] ?? Number.NaN)) / Math.abs(total)).toBeLessThan(1e-9);
      });
    }
    // From its own answer it is there at once.
    expect(splitByOpenSet(open, true)).toBe(true);
    expectShared(open);
  }
});

test("splitByBracket of check valves alone is at rest until one opens, and lets nothing back", () => {
  for (const [total, drop] of [
    [0, 500],
    [-1e-5, -Infinity],
  ] as const) {
    const split = splitOf([check(900), check(500)], [], total);
    split.flows.fill(1);
    splitByBracket(split);
    expect([split.drop, split.slope, Array.from(split.flows)]).toEqual([drop, Infinity, [0, 0]]);
  }
});

test("splitByOpenSet of no total leaves level branches at rest, and fuel from the high tank in the low one", () => {
  const level = splitOf([hose(0.008), series(hose(0.006), check(300))], [], 0);
  level.flows.fill(1);
  expect(splitByOpenSet(level, false)).toBe(true);
  expect([level.drop, Array.from(level.flows), level.slope]).toEqual([0, [0, 0], level.runs[0]?.slope]);
  const apart = splitOf([hose(0.008), hose(0.008)], [0, 1000], 0);
  expect(splitByOpenSet(apart, false)).toBe(true);
  expect(apart.drop).toBeCloseTo(500, 9);
  expect((apart.flows[0] ?? 0) + (apart.flows[1] ?? 0)).toBe(0);
  expect(apart.flows[0]).toBeGreaterThan(0);
});

test("splitByNewton of no total leaves every branch at rest, with the slope they have together there", () => {
  const split = splitOf([tested(1000), tested(3000)], [], 0);
  split.flows.fill(1);
  expect(splitByNewton(split)).toBe(true);
  // 1000 and 3000 Pa at 5e-5 m3/s side by side
  expect([split.drop, Array.from(split.flows), split.settled, split.kinked]).toEqual([0, [0, 0], true, false]);
  expect(split.slope).toBeCloseTo(750 / 5e-5, 3);
});
