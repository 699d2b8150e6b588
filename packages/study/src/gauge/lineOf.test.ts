import { expect, test } from "vitest";
import { lineOf } from "./fitAll.js";
import type { Instant } from "./Instant.js";
import { RatioTable } from "./RatioTable.js";

/** A gauge that reads 2 kPa with clean elements and 1 kPa more for each time as much resistance. */
const table = new RatioTable((_demand, ratio) => 1000 + 1000 * ratio);
const instantOf = (time: number, read: number, own = table) => ({ time, read, table: own }) as unknown as Instant;

test("lineOf(instants) goes through resistances that grow evenly, and on beyond them", () => {
  const line = lineOf([instantOf(0, 2000), instantOf(100, 3000), instantOf(200, 4000)]);
  expect([0, 50, 200, 400].map(line)).toEqual([1, 1.5, 3, 5].map((ratio) => expect.closeTo(ratio, 6)));
});

test("lineOf(instants) of one reading, or of several at one time, is level at their mean", () => {
  expect(lineOf([instantOf(50, 4000)])(900)).toBeCloseTo(3, 6);
  const line = lineOf([instantOf(50, 3000), instantOf(50, 5000)]);
  expect([line(0), line(900)]).toEqual([expect.closeTo(3, 6), expect.closeTo(3, 6)]);
});

test("lineOf(instants) takes a reading under what clean elements read for less than 1, and never for less than 0", () => {
  expect(lineOf([instantOf(0, 1500)])(0)).toBeCloseTo(0.5, 6);
  expect(lineOf([instantOf(0, -5000)])(0)).toBe(0);
});

test("lineOf(instants) leans to readings in which soil shows most", () => {
  const dull = new RatioTable((_demand, ratio) => 1000 + 10 * ratio);
  const line = lineOf([instantOf(0, 2000), instantOf(100, 3000), instantOf(0, 1090, dull)]);
  expect(line(100)).toBeCloseTo(2, 2);
  expect(line(0)).toBeCloseTo(1, 2);
});
