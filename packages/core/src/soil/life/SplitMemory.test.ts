import { expect, test } from "vitest";
import { SplitMemory } from "./SplitMemory.js";

const rates = (rate: number) => new Map([["a", rate]]);

test("SplitMemory.find(split, load) is what was kept of a split like it, whichever load that was", () => {
  const memory = new SplitMemory();
  expect(memory.find([0.25, 0.75], 0)).toBeNull();
  memory.keep([0.25, 0.75], rates(2), 0);
  for (const split of [
    [0.25, 0.75],
    [0.25 + 5e-13, 0.75 - 5e-13],
  ]) {
    expect(memory.find(split, 0)?.rates).toEqual(rates(2));
    expect(memory.find(split, 3)?.rates).toEqual(rates(2));
  }
});

test("SplitMemory.find(split, load) is null for a split unlike it in any share, longer or shorter, or no number", () => {
  const memory = new SplitMemory();
  memory.keep([0.25, 0.75], rates(2), 0);
  for (const split of [
    [0.25, 0.75 - 1e-9],
    [0.25 + 1e-9, 0.75],
    [-0.25, 0.75],
    [0.25],
    [0.25, 0.75, 0],
    [Number.NaN, 0.75],
  ])
    expect(memory.find(split, 0)).toBeNull();
});

test("SplitMemory.keep(split, rates, load) keeps each load's last beside the last of all", () => {
  const memory = new SplitMemory();
  const given = [0.25, 0.75];
  memory.keep(given, rates(2), 0);
  given[0] = 9;
  memory.keep([0.5, 0.5], rates(3), 1);
  expect(memory.find([0.25, 0.75], 0)?.rates).toEqual(rates(2));
  expect(memory.find([0.25, 0.75], 1)).toBeNull();
  expect(memory.find([0.5, 0.5], 0)?.rates).toEqual(rates(3));
  memory.keep([1], rates(4), 1);
  expect([memory.find([0.5, 0.5], 1), memory.find([1], 0)?.rates]).toEqual([null, rates(4)]);
});
