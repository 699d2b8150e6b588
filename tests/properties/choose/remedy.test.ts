import type { System } from "@thirstline/spec/system";
import { check, hoseBores, plain, remedy, remedySentence } from "@thirstline/study";
import { describe, expect, test } from "vitest";
import { demoSystem } from "./arrangements.js";

const demos = ["heron-finer", "crane-narrow-hose", "generator-soiled", "lorry-blocked-vent", "dewatering-paper"];

describe.each(demos)("remedy(%s)", (name) => {
  const system = demoSystem(name);
  const answer = remedy(system);

  test("ranks single changes by what they leave in hand, and no change that helps friction makes it worse", () => {
    const hands = answer.single.map(({ inHand }) => inHand);
    hands.slice(1).forEach((hand, at) => {
      expect(hand).toBeLessThanOrEqual((hands[at] ?? 0) + 2e-6);
    });
    for (const { changes, inHand } of answer.single) {
      const [change] = changes;
      if (change?.kind === "fewer fittings" || change?.kind === "shorter run" || change?.kind === "wider bore") {
        expect(inHand).toBeGreaterThanOrEqual(answer.now.inHand - 1e-9);
      }
    }
  });

  test("names only pairs that are better than any change alone", () => {
    for (const { inHand, overClean, changes } of answer.pairs) {
      expect(changes).toHaveLength(2);
      const best = answer.single[0];
      expect(inHand > (best?.inHand ?? 0) || (overClean ?? 0) < (best?.overClean ?? 0)).toBe(true);
    }
  });

  test("is at the temperature where least is in hand, as check finds it", () => {
    const at = answer.worst.temperature;
    expect(check(system, { temperatures: [at] }).points[0]?.inHand.low).toBe(answer.now.inHand);
  });
});

test("remedy(ferry with finer elements) finds what a branch more, and twice the area, come to by hand", () => {
  const system = demoSystem("heron-finer");
  const { single } = remedy(system, { temperatures: [263.15] });
  const halved: System = {
    ...system,
    suction: system.suction.map((part) =>
      part.part === "bank"
        ? {
            ...part,
            branches: part.branches.map((branch) =>
              branch.map((one) =>
                one.part === "filter" && one.medium.by === "flow test"
                  ? {
                      ...one,
                      medium: { ...one.medium, points: one.medium.points.map((p) => ({ ...p, drop: p.drop / 2 })) },
                    }
                  : one,
              ),
            ),
          }
        : part,
    ),
  };
  const expected = check(halved, { temperatures: [263.15] }).points[0];
  const found = single.find(({ changes }) => changes[0]?.kind === "larger element" && changes[0].parts.length === 2);
  expect(found?.inHand).toBeCloseTo(expected?.inHand.low ?? Number.NaN, 12);
  expect(found?.ceiling).toBeCloseTo(expected?.ceilings.atChange.flow.low ?? Number.NaN, 15);
});

test("remedy(lorry with a blocked vent) opens the vent; (soiled generator) cleans or doubles; (hot petrol) cools", () => {
  const first = (name: string) => remedy(demoSystem(name)).single[0]?.changes[0]?.kind;
  expect(first("lorry-blocked-vent")).toBe("open vent");
  expect(["clean element", "one more branch"]).toContain(first("generator-soiled"));
  const kinds = remedy(demoSystem("workboat-winter-petrol")).single.map(({ changes }) => changes[0]?.kind);
  expect(kinds).toContain("cooler fuel");
  expect(kinds).not.toContain("warmer fuel");
});

test("remedy(system, { costs }) adds up what a pair costs, and knows none where one of the two has none", () => {
  const { single, pairs } = remedy(demoSystem("crane-narrow-hose"), {
    costs: { "wider bore": 120, "warmer fuel": 30 },
  });
  expect(single[0]?.cost).toBe(120);
  expect(pairs[0]?.cost).toBe(150);
  expect(pairs.some(({ cost }) => cost === null)).toBe(true);
});

test("hoseBores are the published dash sizes, rising", () => {
  expect(hoseBores.map((bore) => (bore / 0.0254) * 32)).toEqual(
    [7, 9, 11, 14, 18, 22, 28].map((one) => expect.closeTo(one, 9)),
  );
});

test("remedySentence(answer) says so when nothing helps", () => {
  const answer = remedy(demoSystem("workboat-winter-petrol"));
  const none = { ...answer, single: answer.single.map((one) => ({ ...one, inHand: answer.now.inHand })), pairs: [] };
  expect(plain(remedySentence(none, "metric"))).toBe(
    "No single change helps Workboat, last winter's petrol: the fuel's vapour pressure binds at 38 °C whatever is done on the way to it.",
  );
});
