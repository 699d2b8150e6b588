import { expect, test } from "vitest";
import { chanceOf } from "./chanceOf.js";
import { drawsOf, SETS } from "./drawsOf.js";
import { ifPossible } from "./ifPossible.js";
import { quantilesOf } from "./quantilesOf.js";
import { quasiRandom } from "./quasiRandom.js";

const isOne = (draw: number) => draw === 1;
/** Two draws of each set, one after another as they come: those of some sets are 1. */
const drawsWith = (first: readonly number[], second: readonly number[]) =>
  Float64Array.from({ length: 2 * SETS }, (_, at) => ((at < SETS ? first : second).includes(at % SETS) ? 1 : 0));

test("chanceOf(draws, is) is the share of the draws", () => {
  expect(chanceOf(drawsWith([], []), isOne)).toEqual({ chance: 0, chanceError: 0 });
  const all = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];
  expect(chanceOf(drawsWith(all, all), isOne)).toEqual({ chance: 1, chanceError: 0 });
  expect(chanceOf(drawsWith(all, []), isOne)).toEqual({ chance: 0.5, chanceError: 0 });
});

test("chanceOf(draws, is) errs by how far the sets disagree, over the root of how many there are", () => {
  // Five sets of ten are all 1, the others none: a variance of 10/4 over 9, and the root of a tenth of it.
  const { chance, chanceError } = chanceOf(drawsWith([0, 1, 2, 3, 4], [0, 1, 2, 3, 4]), isOne);
  expect(chance).toBeCloseTo(0.5, 12);
  expect(chanceError).toBeCloseTo(Math.sqrt(2.5 / 9 / 10), 12);
});

test("chanceOf(draws, is) leaves out draws that are no number, and sets of nothing else", () => {
  const draws = Float64Array.from({ length: 2 * SETS }, (_, at) => (at % SETS < 2 ? at % SETS : Number.NaN));
  // Two sets are left, none and all: a chance of a half with a variance of a half, over two.
  expect(chanceOf(draws, isOne)).toEqual({ chance: 0.5, chanceError: expect.closeTo(0.5, 12) });
  draws[SETS] = Number.NaN;
  expect(chanceOf(draws, isOne).chance).toBe(0.5);
  expect(chanceOf(Float64Array.of(1), isOne)).toEqual({ chance: 1, chanceError: 0 });
  expect(chanceOf(Float64Array.of(Number.NaN), isOne)).toEqual({ chance: 0, chanceError: 0 });
});

test("drawsOf(count, seed) gives draw i of the whole from set i modulo 10, each set turned by itself", () => {
  const draw = drawsOf(3, 7);
  for (const index of [0, 1, 9, 10, 11, 35]) {
    expect(draw(index)).toEqual(quasiRandom(70 + (index % 10), 3)(Math.floor(index / 10)));
  }
  expect(drawsOf(0, 7)(4)).toEqual([]);
});

test("ifPossible(otherwise, answer) stands in for what core refuses, and for no other error", () => {
  const failing = (name: string) => () => {
    throw Object.assign(new Error("no"), { name });
  };
  expect(ifPossible(0, () => 5)).toBe(5);
  expect(ifPossible("none", failing("InputError"))).toBe("none");
  expect(() => ifPossible(0, failing("TypeError"))).toThrow("no");
  expect(() =>
    ifPossible(0, () => {
      throw "InputError";
    }),
  ).toThrow("InputError");
});

test("quantilesOf(draws) is the draws that 10, 50 and 90 in 100 stay below, however they come", () => {
  const hundred = Float64Array.from({ length: 100 }, (_, at) => (at * 37) % 100);
  expect(quantilesOf(hundred)).toEqual({ low: 10, middle: 50, high: 90 });
  expect(quantilesOf(Float64Array.of(7))).toEqual({ low: 7, middle: 7, high: 7 });
  expect(quantilesOf(Float64Array.of(9, Number.NaN, 10, Infinity))).toEqual({ low: 9, middle: 10, high: Infinity });
  const none = Number.NaN;
  expect(quantilesOf(Float64Array.of(none, none))).toEqual({ low: none, middle: none, high: none });
});
