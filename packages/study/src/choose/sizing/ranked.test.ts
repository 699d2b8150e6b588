import type { CatalogueElement, System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, plainSystem } from "../../../../../tests/support/plainSystem.js";
import { rankedOf } from "./ranked.js";
import type { Found } from "./SearchKinds.js";
import { stackOf } from "./stack.js";

const HOUR = 3600;
/** Places in it: 0 costs 10, 1 costs 25 and half an hour of work, 2 nobody knows what. */
const elements: readonly CatalogueElement[] = [
  elementOf("cheap", { drop: 1e3, price: 10 }),
  elementOf("dear", { drop: 1e3, price: 25, labour: HOUR / 2 }),
  elementOf("unpriced", { drop: 1e3 }),
];
const foundOf = (stages: readonly (readonly [element: number, count: number])[], vacuum: number): Found => ({
  elements: stages.map(([element]) => element),
  counts: stages.map(([, count]) => count),
  bore: null,
  vacuum,
  code: "15/13/10",
});
/** 1000 h of running a year, changed every 100 h where nothing else is said. */
const ranked = (
  found: readonly Found[],
  {
    system = plainSystem,
    interval = 100 * HOUR,
    keep = 20,
    labourRate,
  }: Partial<{
    system: System;
    interval: number;
    keep: number;
    labourRate: number;
  }> = {},
) =>
  rankedOf(found, {
    stack: stackOf(system, "suction"),
    elements,
    system,
    interval,
    options: labourRate === undefined ? {} : { labourRate },
    keep,
  });
const namesOf = ({ arrangements }: ReturnType<typeof ranked>) =>
  arrangements.map(({ stages }) => stages.map(({ element, count }) => `${count} ${element}`).join(" + "));

test("rankedOf(found, ranking) costs what all elements do at every change of a year, and counts those changed", () => {
  const { arrangements } = ranked([
    foundOf([[0, 3]], 5e3),
    foundOf(
      [
        [0, 2],
        [1, 1],
      ],
      4e3,
    ),
  ]);
  expect(arrangements).toMatchObject([
    { elements: 3, changesAYear: 30, yearlyCost: 300, vacuum: 5e3, code: "15/13/10", bore: null },
    { elements: 3, changesAYear: 30, yearlyCost: 450, vacuum: 4e3 },
  ]);
});

test("rankedOf(found, ranking) adds the work at its rate where both are stated", () => {
  const costOf = (element: number, labourRate?: number) =>
    ranked([foundOf([[element, 1]], 5e3)], labourRate === undefined ? {} : { labourRate }).arrangements[0]?.yearlyCost;
  expect([costOf(1), costOf(1, 60), costOf(0, 60), costOf(2, 60)]).toEqual([250, 550, 100, null]);
});

test.each<[string, Partial<System>, number]>([
  ["the interval", {}, 10],
  ["the distance of a year over that of an interval", { service: { interval: 1, distance: 5e6 } }, 16],
  ["the calendar", { service: { interval: 1, calendar: (365.25 / 20) * 24 * HOUR } }, 20],
  [
    "the interval where distance and calendar come later",
    { service: { interval: 1, distance: 1e9, calendar: 1e9 } },
    10,
  ],
])("rankedOf(found, ranking) changes as often as by %s", (_, more, changes) => {
  const system = { ...plainSystem, duty: { hoursADay: 4, daysAYear: 250, distance: 80e6 }, ...more };
  const [first] = ranked([foundOf([[0, 1]], 5e3)], { system }).arrangements;
  expect(first?.changesAYear).toBeCloseTo(changes, 9);
});

test("rankedOf(found, ranking) cannot count a distance without one of a year, nor anything without duty and service", () => {
  const distance = { ...plainSystem, service: { interval: 1, distance: 5e6 } };
  expect(ranked([foundOf([[0, 1]], 5e3)], { system: distance }).arrangements[0]?.changesAYear).toBe(10);
  const { duty: _duty, service: _service, ...bare } = plainSystem;
  expect(ranked([foundOf([[0, 1]], 5e3)], { system: bare }).arrangements[0]).toMatchObject({
    changesAYear: 0,
    life: null,
  });
});

test("rankedOf(found, ranking) lists by yearly cost, then vacuum, then number of elements; what has no price last", () => {
  const found = [
    foundOf([[2, 1]], 1e3),
    foundOf([[0, 5]], 6e3),
    foundOf([[1, 2]], 6e3),
    foundOf([[0, 5]], 5e3),
    foundOf([[1, 2]], 5e3),
    foundOf([[0, 4]], 9e3),
  ];
  expect(namesOf(ranked(found))).toEqual(["4 cheap", "2 dear", "5 cheap", "2 dear", "5 cheap", "1 unpriced"]);
});

test("rankedOf(found, ranking) lists the first found of two alike first, and takes it for the best", () => {
  const alike = [0.02, 0.01].map((bore) => ({ ...foundOf([[0, 1]], 5e3), bore }));
  const { arrangements, best } = ranked(alike, { keep: 1 });
  expect(arrangements.map(({ bore }) => bore)).toEqual([0.02, 0.01]);
  expect(best).toEqual({ cost: 0, vacuum: 0, changes: 0 });
});

describe("rankedOf(found, ranking) knows the best", () => {
  const found = [
    foundOf([[1, 1]], 9e3), // 250, fewest, cheaper than the other single one
    foundOf([[0, 2]], 8e3), // 200, cheapest
    foundOf([[1, 3]], 2e3), // 750, least vacuum
    foundOf([[2, 1]], 9.5e3), // no price
  ];

  test("by cost, by vacuum and by changes, as places in the list", () => {
    const answer = ranked(found);
    expect(namesOf(answer)).toEqual(["2 cheap", "1 dear", "3 dear", "1 unpriced"]);
    expect(answer.best).toEqual({ cost: 0, vacuum: 2, changes: 1 });
  });

  test("of those with as much vacuum the cheaper, and of as many elements the cheaper, then the one with less vacuum", () => {
    const { best } = ranked([foundOf([[1, 2]], 3e3), foundOf([[0, 2]], 3e3), foundOf([[0, 2]], 2.5e3)]);
    expect(best).toEqual({ cost: 0, vacuum: 0, changes: 0 });
    const other = ranked([foundOf([[1, 2]], 3e3), foundOf([[0, 3]], 3e3), foundOf([[0, 2]], 4e3)]);
    expect(namesOf(other)).toEqual(["2 cheap", "3 cheap", "2 dear"]);
    expect(other.best).toEqual({ cost: 0, vacuum: 1, changes: 0 });
  });

  test("and works out the life of those alone, all elements of them in place", () => {
    const { arrangements } = ranked([...found, foundOf([[0, 4]], 8e3)]);
    expect(arrangements.map((one) => "life" in one)).toEqual([true, true, false, true, false]);
    // Each of n takes 30 kPa less the metre, less its own share of 1 kPa, over 12 kPa and times n of 600 g, at 2 g/h.
    const hours = arrangements.map(({ life }) => (life ?? 0) / HOUR);
    const byHand = (n: number) => (((30e3 - 830 * 9.80665) * n - 1e3) / 12e3) * n * 300;
    expect((hours[0] ?? 0) / byHand(2)).toBeGreaterThan(1);
    expect((hours[0] ?? 0) / byHand(2)).toBeLessThan(1.01);
    expect((hours[1] ?? 0) / byHand(1)).toBeLessThan(1.01);
  });

  test("but of cost none where no price is known, and none at all where nothing is found", () => {
    expect(ranked([foundOf([[2, 1]], 5e3), foundOf([[2, 2]], 4e3)]).best).toEqual({
      cost: null,
      vacuum: 0,
      changes: 1,
    });
    expect(ranked([])).toEqual({ best: { cost: null, vacuum: null, changes: null }, arrangements: [] });
  });
});

test("rankedOf(found, ranking) keeps so many of each ranking, and all that nothing beats", () => {
  const found = [
    foundOf([[0, 1]], 9e3), // cheapest, fewest
    foundOf([[0, 2]], 7e3), // beaten by none
    foundOf([[1, 2]], 8e3), // beaten by 2 cheap; the second fewest together with it
    foundOf([[1, 4]], 3e3), // least vacuum
    foundOf([[1, 5]], 5e3), // beaten by 4 dear, the second least vacuum
  ];
  expect(namesOf(ranked(found, { keep: 1 }))).toEqual(["1 cheap", "2 cheap", "4 dear"]);
  expect(namesOf(ranked(found, { keep: 2 }))).toEqual(["1 cheap", "2 cheap", "4 dear", "5 dear"]);
  expect(namesOf(ranked(found, { keep: 3 }))).toEqual(["1 cheap", "2 cheap", "2 dear", "4 dear", "5 dear"]);
  expect(ranked(found, { keep: 3 }).arrangements.map(({ pareto }) => pareto)).toEqual([true, true, false, true, false]);
});

test("rankedOf(found, ranking) takes of those with as much vacuum at the same cost the one of fewest elements for the best", () => {
  const { best, arrangements } = ranked([foundOf([[0, 5]], 5e3), foundOf([[1, 2]], 5e3)]);
  expect(arrangements.map(({ elements: count }) => count)).toEqual([2, 5]);
  expect(best).toEqual({ cost: 0, vacuum: 0, changes: 0 });
});
