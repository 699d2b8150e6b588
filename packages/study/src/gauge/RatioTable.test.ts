import { expect, test } from "vitest";
import { demandWeights, RatioTable, tableDemands, tableRatios } from "./RatioTable.js";

const near = (values: readonly number[], places = 12) => values.map((one) => expect.closeTo(one, places));

test("demandWeights(demand) is all of one figure at each of the table's demands", () => {
  expect([0.7, 1, 1.4].map(demandWeights)).toEqual([near([1, 0, 0]), near([0, 1, 0]), near([0, 0, 1])]);
});

test("demandWeights(demand) is the parabola through the three, between and beyond", () => {
  for (const demand of [0.3, 0.85, 1.2, 2]) {
    const weights = demandWeights(demand);
    const of = (figure: (demand: number) => number) =>
      tableDemands.reduce((sum, one, at) => sum + (weights[at] as number) * figure(one), 0);
    expect(of(() => 1)).toBeCloseTo(1, 12);
    expect(of((one) => one)).toBeCloseTo(demand, 12);
    expect(of((one) => one * one)).toBeCloseTo(demand * demand, 12);
  }
});

test("new RatioTable(of) asks at every resistance for every demand", () => {
  const asked: (readonly [number, number])[] = [];
  new RatioTable((demand, ratio) => asked.push([demand, ratio]));
  expect(asked).toEqual(tableRatios.flatMap((ratio) => [0.7, 1, 1.4].map((demand) => [demand, ratio])));
  expect([tableRatios[0], tableRatios.at(-1)]).toEqual([1, 1e4]);
});

test("table.at(demand, ratio) is exact at its own demands and resistances", () => {
  const of = (demand: number, ratio: number) => demand ** 3 * Math.sqrt(ratio);
  const table = new RatioTable(of);
  for (const demand of tableDemands)
    for (const ratio of tableRatios) expect(table.at(demand, ratio) / of(demand, ratio)).toBeCloseTo(1, 12);
});

test("table.at(demand, ratio) is straight in resistance and a parabola in demand, on beyond both ends", () => {
  const of = (demand: number, ratio: number) => 3 + 2 * demand * demand * ratio;
  const table = new RatioTable(of);
  for (const demand of [0.5, 0.9, 1.3, 1.6])
    for (const ratio of [-2, 0.5, 1, 1.2, 4, 30, 500, 2e4])
      expect(table.at(demand, ratio) / of(demand, ratio)).toBeCloseTo(1, 10);
});

test("table.at(demand, ratio) between two resistances is part of the way from one figure to the other", () => {
  const table = new RatioTable((_demand, ratio) => ratio * ratio);
  // From 3.3 to 5, and from 5 to 7.5.
  expect(table.at(1, 4.15)).toBeCloseTo((3.3 ** 2 + 25) / 2, 9);
  expect(table.at(1, 6)).toBeCloseTo(25 + 0.4 * (7.5 ** 2 - 25), 9);
});

test("table.around(ratio) has the resistances a figure lies between, with a figure for each demand", () => {
  const table = new RatioTable((demand, ratio) => demand * ratio);
  expect(table.around(4)).toEqual([
    { ratio: 3.3, figures: near([0.7 * 3.3, 3.3, 1.4 * 3.3]) },
    { ratio: 5, figures: near([3.5, 5, 7]) },
  ]);
  const between = (ratio: number) => table.around(ratio).map((end) => end.ratio);
  expect([0.2, 1, 1.5, 1.51, 1e4, 2e4].map(between)).toEqual([
    [1, 1.5],
    [1, 1.5],
    [1, 1.5],
    [1.5, 2.2],
    [1000, 1e4],
    [1000, 1e4],
  ]);
});

test("table.slope(demand, ratio) is taken over a tenth of what is grown, or of the clean resistance", () => {
  const table = new RatioTable((_demand, ratio) => ratio * ratio);
  // All within one stretch, where the table is straight: from 1 to 1.5 by 2.5, from 50 to 120 by 170.
  expect(table.slope(1, 1)).toBeCloseTo(2.5, 9);
  expect(table.slope(1, 60)).toBeCloseTo(170, 9);
  // From 10 on by 0.9, the last stretch of 7.5 to 11 and not yet the next; from 24 on by 2.3, across 25.
  expect(table.slope(1, 10)).toBeCloseTo(18.5, 9);
  expect(table.slope(1, 24)).toBeCloseTo((41 + 1.3 * 75) / 2.3, 9);
});
