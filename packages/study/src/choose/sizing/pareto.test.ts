import { expect, test } from "vitest";
import { type Measures, paretoOf } from "./pareto.js";

const of = (cost: number, vacuum: number, elements: number): Measures => ({ cost, vacuum, elements });

test("paretoOf(all) keeps what no other beats in all three, in the order given", () => {
  const all = [of(9, 9, 1), of(5, 8, 2), of(6, 8, 2), of(5, 4, 3), of(4, 9, 2)];
  expect(paretoOf(all)).toEqual([true, true, false, true, true]);
});

test("paretoOf(all) keeps both of two that are alike", () => {
  expect(paretoOf([of(5, 5, 1), of(5, 5, 1)])).toEqual([true, true]);
});

test.each([
  ["cost", of(4, 5, 2)],
  ["vacuum", of(5, 4, 2)],
  ["number of elements", of(5, 5, 1)],
])("paretoOf(all) drops what is beaten in %s alone, whichever comes first", (_, better) => {
  expect(paretoOf([of(5, 5, 2), better])).toEqual([false, true]);
  expect(paretoOf([better, of(5, 5, 2)])).toEqual([true, false]);
});

test("paretoOf(all) takes an unknown cost for the worst, and compares such by the rest", () => {
  expect(paretoOf([of(Infinity, 5, 2), of(Infinity, 4, 2), of(7, 4, 2)])).toEqual([false, false, true]);
  expect(paretoOf([of(Infinity, 3, 2), of(7, 4, 2)])).toEqual([true, true]);
});

test("paretoOf(all) lets one of fewer elements beat one of more, and not one of more beat one of fewer", () => {
  expect(paretoOf([of(1, 9, 3), of(2, 8, 1), of(3, 8.5, 3), of(3, 7, 3)])).toEqual([true, true, false, true]);
});
