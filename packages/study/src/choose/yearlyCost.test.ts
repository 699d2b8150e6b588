import { expect, test } from "vitest";
import type { LifeAnswer } from "../life/LifeAnswer.js";
import { type CostGiven, yearlyCost } from "./yearlyCost.js";

const HOUR = 3600;
const found = (time: number | null) =>
  ({ year: 1000 * HOUR, change: time === null ? null : { time: time * HOUR, by: "manual's interval" } }) as LifeAnswer;
const costOf = (
  element: { readonly price?: number; readonly labour?: number } | null,
  cost: CostGiven = {},
  { at = ["A"], chance = null as number | null, time = 250 as number | null } = {},
) => yearlyCost({ element: element as never, at, cost }, found(time), chance);

test("yearlyCost(given, found, chance) is of all elements at every change of a year", () => {
  expect(costOf({ price: 20 })).toEqual({ changes: 4, elements: 80, labour: null, stoppages: null, total: 80 });
  expect(costOf({ price: 20 }, {}, { at: ["A", "B"] })).toMatchObject({ changes: 4, elements: 160, total: 160 });
});

test("yearlyCost(given, found, chance) adds the work of each where both it and its rate are stated", () => {
  const work = { price: 20, labour: HOUR / 2 };
  expect(costOf(work, { labourRate: 60 }, { at: ["A", "B"] })).toMatchObject({ labour: 240, total: 160 + 240 });
  expect(costOf(work)).toMatchObject({ labour: null, total: 80 });
  expect(costOf({ price: 20 }, { labourRate: 60 })).toMatchObject({ labour: null, total: 80 });
});

test("yearlyCost(given, found, chance) adds a stoppage at its chance before each change, however many the elements", () => {
  const stoppage = 500;
  expect(costOf({ price: 20 }, { stoppage }, { at: ["A", "B"], chance: 0.1 })).toMatchObject({
    stoppages: 200,
    total: 360,
  });
  expect(costOf({ price: 20 }, { stoppage })).toMatchObject({ stoppages: null, total: 80 });
  expect(costOf({ price: 20 }, {}, { chance: 0.1 })).toMatchObject({ stoppages: null, total: 80 });
  expect(costOf({ price: 20 }, { stoppage }, { chance: 0 })).toMatchObject({ stoppages: 0, total: 80 });
});

test("yearlyCost(given, found, chance) adds up all three", () => {
  const cost = { labourRate: 60, stoppage: 500 };
  expect(costOf({ price: 20, labour: HOUR / 2 }, cost, { chance: 0.1 })).toEqual({
    changes: 4,
    elements: 80,
    labour: 120,
    stoppages: 200,
    total: 400,
  });
});

test("yearlyCost(given, found, chance) has no total without a price, but what else is known", () => {
  const cost = { labourRate: 60, stoppage: 500 };
  expect(costOf({ labour: HOUR }, cost, { chance: 0.1 })).toEqual({
    changes: 4,
    elements: null,
    labour: 240,
    stoppages: 200,
    total: null,
  });
  expect(costOf(null, cost)).toEqual({ changes: 4, elements: null, labour: null, stoppages: null, total: null });
});

test.each([[null], [0]])(
  "yearlyCost(given, found, chance) of what is changed after %j h has no figure at all",
  (time) => {
    const none = { changes: null, elements: null, labour: null, stoppages: null, total: null };
    const cost = { labourRate: 60, stoppage: 500 };
    expect(costOf({ price: 20, labour: HOUR }, cost, { chance: 0.1, time })).toEqual(none);
  },
);
