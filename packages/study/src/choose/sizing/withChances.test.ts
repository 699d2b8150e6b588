import type { LifeSpread, SizeAnswer } from "@thirstline/study";
import { nextToDraw, withChances } from "@thirstline/study";
import { expect, test } from "vitest";

const spread = (chance: number): LifeSpread => ({
  low: 1e6,
  middle: 2e6,
  high: 3e6,
  chance,
  chanceError: 0.01,
  atMost: null,
  draws: 100,
});

/** An answer with arrangements of these yearly costs, changed ten times a year, one element each. */
function answerOf(costs: readonly (number | null)[], best: Partial<SizeAnswer["best"]> = {}): SizeAnswer {
  return {
    arrangements: costs.map((yearlyCost, at) => ({
      stages: [{ element: `E${at}`, count: 1 }],
      bore: null,
      elements: 1,
      changesAYear: 10,
      yearlyCost,
      vacuum: 1000 * (at + 1),
      code: "15/13/10",
      pareto: false,
    })),
    best: { cost: 0, vacuum: 0, changes: 0, ...best },
  } as unknown as SizeAnswer;
}

test("nextToDraw(answer, few) begins with the cheapest few and the best of each ranking", () => {
  expect(nextToDraw(answerOf([100, 110, 120, 130], { vacuum: 3 }), 2).sort()).toEqual([0, 1, 3]);
});

test("withChances(answer, spreads, stoppage) adds stoppages at their chance, and the order and the best follow", () => {
  const first = answerOf([100, 110, 300], { vacuum: 0, changes: 2 });
  const drawn = withChances(
    first,
    new Map([
      [0, spread(0.2)],
      [1, spread(0)],
    ]),
    50,
  );
  expect(drawn.arrangements.map(({ stages, yearlyCost }) => [stages[0]?.element, yearlyCost])).toEqual([
    ["E1", 110],
    ["E0", 100 + 10 * 0.2 * 50],
    ["E2", 300],
  ]);
  expect(drawn.best).toEqual({ cost: 0, vacuum: 1, changes: 2 });
  expect(drawn.arrangements[1]?.stoppages).toBe(100);
});

test("nextToDraw(answer, few) goes on while an undrawn one could be cheaper than the cheapest drawn, and ends", () => {
  const first = answerOf([100, 110, 120, 500]);
  const dear = withChances(
    first,
    new Map([
      [0, spread(0.5)],
      [1, spread(0.5)],
    ]),
    100,
  );
  const next = nextToDraw(dear, 2);
  expect(next.map((at) => dear.arrangements[at]?.stages[0]?.element)).toEqual(["E2", "E3"]);
  const cheap = withChances(
    first,
    new Map([
      [0, spread(0)],
      [1, spread(0)],
    ]),
    100,
  );
  expect(nextToDraw(cheap, 2)).toEqual([]);
});

test("withChances(answer, spreads, null) leaves a cost as it is, and one that is not known unknown", () => {
  const drawn = withChances(answerOf([null, null]), new Map([[0, spread(0.5)]]), null);
  expect(drawn.arrangements.map(({ yearlyCost }) => yearlyCost)).toEqual([null, null]);
  expect(drawn.arrangements[0]?.stoppages).toBeNull();
});

test("nextToDraw(answer, few) leaves out what is drawn, and a ranking of which none is the best", () => {
  const none = answerOf([100, 110, 120], { cost: null, vacuum: null, changes: 2 });
  expect(nextToDraw(none, 1)).toEqual([0, 2]);
  const once = withChances(none, new Map([[0, spread(0)]]), 10);
  expect(nextToDraw(once, 1)).toEqual([2]);
  expect(nextToDraw(answerOf([], { cost: null, vacuum: null, changes: null }), 3)).toEqual([]);
});

test("nextToDraw(answer, few) draws no more than few at a time, cheapest first, of those that could be cheaper", () => {
  const drawn = withChances(
    answerOf([100, 110, 120, 130, 140, 600], { vacuum: 0, changes: 0 }),
    new Map([[0, spread(0.5)]]),
    100,
  );
  // The first costs 600 with its stoppages, so all are open but it and the one that costs as much.
  expect(drawn.arrangements.map(({ yearlyCost }) => yearlyCost)).toEqual([110, 120, 130, 140, 600, 600]);
  const settled = { ...drawn, best: { cost: 4, vacuum: 4, changes: 4 } };
  const next = nextToDraw({ ...settled, arrangements: settled.arrangements.slice() }, 2);
  expect(next).toEqual([0, 1]);
});

test("nextToDraw(answer, few) draws five times as many as asked at most", () => {
  const many = answerOf(Array.from({ length: 12 }, (_, at) => 100 + at));
  const dear = (count: number) =>
    withChances(many, new Map(Array.from({ length: count }, (_, at) => [at, spread(0.9)])), 1000);
  // With those that are drawn put first, as if their cost were the least, only the count of them is left to end it.
  const ahead = (count: number) => {
    const drawn = dear(count);
    const order = [...drawn.arrangements].sort((one, other) => (other.spread ? 1 : 0) - (one.spread ? 1 : 0));
    return nextToDraw({ ...drawn, arrangements: order, best: { cost: 0, vacuum: 0, changes: 0 } }, 2).length;
  };
  expect([ahead(9), ahead(10), ahead(11)]).toEqual([2, 0, 0]);
});

test("nextToDraw(answer, few) has nothing to draw where no cost is known of what is drawn but the rest have none either", () => {
  const drawn = withChances(answerOf([null, null, null], { vacuum: 0, changes: 0 }), new Map([[0, spread(0.5)]]), 100);
  expect(nextToDraw({ ...drawn, best: { cost: null, vacuum: 0, changes: 0 } }, 1)).toEqual([1]);
});

test("withChances(answer, spreads, stoppage) counts a stoppage once a change, however many elements are changed", () => {
  const [one] = answerOf([100]).arrangements;
  const pair = { ...answerOf([100]), arrangements: one ? [{ ...one, elements: 2, changesAYear: 20 }] : [] };
  expect(withChances(pair, new Map([[0, spread(0.2)]]), 50).arrangements[0]).toMatchObject({
    stoppages: 100,
    yearlyCost: 200,
  });
});

test("withChances(answer, spreads, stoppage) leaves those of the same cost in their order, and a best that is none as none", () => {
  const answer = answerOf([100, 100, 100], { cost: null, vacuum: null, changes: 1 });
  const found = withChances(answer, new Map(), 50);
  expect(found.arrangements.map(({ stages }) => stages[0]?.element)).toEqual(["E0", "E1", "E2"]);
  expect(found.best).toEqual({ cost: null, vacuum: null, changes: 1 });
});
