import { expect, test } from "vitest";
import { cardFacts, itemTexts } from "../../../../tests/support/cardFacts.js";
import type { CardFacts, CardSettling, CardWater } from "../card/CardAnswer.js";
import { cardWater } from "./cardWater.js";

const HOUR = 3600;
const said = (more: Partial<CardFacts>, units: "metric" | "us" = "metric") =>
  itemTexts(cardWater(cardFacts(more), units));
const overnight = "step: Let a tank stand overnight before its water is drained.";

const cases: readonly (readonly [CardWater, string])[] = [
  [
    { code: "no water stated" },
    "How often to drain cannot be told: the file does not say how much water the fuel brings. Look every day at first.",
  ],
  [
    { code: "life not known", reasons: [{ code: "no filter" }, { code: "no service interval" }] },
    "How often to drain cannot be told: no filter stands open in the path, and no service interval is stated to hold the life against. Look every day at first.",
  ],
  [
    { code: "nothing free", temperature: 293.15 },
    "At {coldest season|20 °C}, the coldest of the duty, all stated water stays dissolved: nothing to drain. A dirty delivery changes that; look now and then.",
  ],
  [
    { code: "no separator", temperature: 263.15, free: 0.15 },
    "No stage is stated to keep water: {free|150 mg/L} of it goes on to the engine at -10 °C. Drain the tank.",
  ],
];
test.each(cases)(
  "cardWater(facts, units) with the water %j says how often to drain, or why nobody can",
  (water, words) => {
    expect(said({ water })).toEqual([`step: ${words}`, overnight]);
  },
);

type Stage = Extract<CardWater, { code: "stages" }>["stages"][number];
const stage = (element: string, more: Partial<Stage> = {}): Stage => ({
  element,
  kind: "bowl",
  every: 61 * HOUR,
  why: null,
  ...more,
});
const ofStages = (...stages: Stage[]) =>
  said({ water: { code: "stages", season: "winter", temperature: 263.15, stages } }).slice(0, -1);
const rest = "after 5 to 10 minutes at rest, until clean fuel comes: by then";
const worst = "in the worst of the year (winter, -10 °C).";
test.each([
  [{}, `Drain A every {draining of A|61 h} at the latest, ${rest} it is full ${worst}`],
  [
    { kind: "absorber" },
    "Change A within {shutting of A by water|61 h}: then water alone has shut it (winter, -10 °C).",
  ],
  [{ every: null, why: "none comes" }, "A: no water comes there."],
  [
    { every: null, why: "bowl not stated" },
    "A: how often to drain cannot be told, since the size of a bowl is not stated. Look every day at first.",
  ],
  [{ kind: "absorber", every: null, why: "bowl not stated" }, "A: when water would shut that cannot be told."],
] as const)("cardWater(facts, units) of a stage with %j says when it is to be drained or changed", (more, words) => {
  expect(ofStages(stage("A", more))).toEqual([`step: ${words}`]);
});

test("cardWater(facts, units) speaks of stages that are alike together, and of others apart", () => {
  expect(ofStages(stage("A"), stage("C", { every: 90 * HOUR }), stage("B"))).toEqual([
    `step: Drain A and B every {draining of A|61 h} at the latest, ${rest} they are full ${worst}`,
    `step: Drain C every {draining of C|90 h} at the latest, ${rest} it is full ${worst}`,
  ]);
  expect(ofStages(stage("A"), stage("B", { kind: "absorber" }))).toHaveLength(2);
  const untold = (why: Stage["why"]) => stage("B", { every: null, why });
  expect(ofStages(untold("none comes"), untold("bowl not stated"))).toHaveLength(2);
});

const time = (seconds: number): CardSettling => ({ code: "time", size: 50e-6, depth: 1.1, time: seconds });
test.each([
  [time(4.7 * HOUR), "{settling|4.7 h}"],
  [time(5400), "{settling|1.5 h}"],
  [time(5399), "{settling|90 min}"],
  [time(5341), "{settling|90 min}"],
  [time(5340), "{settling|89 min}"],
])(
  "cardWater(facts, units) with the settling %j tells it in minutes, rounded up, under an hour and a half",
  (settling, shown) => {
    expect(said({ settling }).at(-1)).toBe(
      `step: Let a tank stand ${shown} before its water is drained: so long a drop of 50 µm sinks through 1.10 m at 15 °C.`,
    );
  },
);

test("cardWater(facts, units) drains no ice", () => {
  expect(said({ settling: { code: "may be ice" }, temperature: 268.15 }).at(-1)).toBe(
    "step: At -5 °C free water may be ice, which does not drain: drain tank and bowls when they are warm.",
  );
});
