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
