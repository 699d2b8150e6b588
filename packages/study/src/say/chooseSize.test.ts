import { describe, expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { SizeAnswer, SizeFailure, SizeReason } from "../choose/sizing/SizeAnswer.js";
import { sizeFailureText, sizeReasonWords, sizeSentence, stagesText } from "./chooseSize.js";

const HOUR = 3600;

const failures: readonly (readonly [SizeFailure, string])[] = [
  ["pump capacity", "less than 20 % in hand of what the pump can move"],
  ["vacuum clean", "over the vacuum limit with clean elements"],
  ["vacuum at change", "less than 20 % in hand before the vacuum limit at change"],
  ["feed pressure", "less than 20 % in hand before the feed pressure is too low"],
  ["vapour", "less than 20 % in hand before the fuel boils"],
  ["catch not known", "no beta ratios stated for an element"],
  ["capacity not known", "neither a capacity test nor an area stated for an element"],
  ["most flow", "an element carries more than its maker allows"],
  ["cleanliness", "fuel dirtier at the injection pump than asked"],
  ["rating", "no element tested to the fineness asked"],
  ["interval", "a limit is met before the interval is over"],
];
test.each(failures)("sizeFailureText(%j) says what arrangements fail by", (by, text) => {
  expect(sizeFailureText(by)).toBe(text);
});

const reasons: readonly (readonly [SizeReason, string])[] = [
  [
    { code: "nothing asked" },
    "Nothing says what the injection pump asks for; give a code such as 15/13/10, or the fineness its manual names.",
  ],
  [{ code: "no interval" }, "No interval between changes is stated; give the one wanted."],
  [
    { code: "longer than the manual allows", interval: 600 * HOUR, most: 500 * HOUR },
    "An interval of {search: interval asked|600 h} is longer than the {search: longest interval allowed|500 h} the manual allows.",
  ],
  [
    { code: "no vacuum limit" },
    "No vacuum limit is given, and for this pump and fuel there is no published one to take; the maker's manual has it.",
  ],
  [
    { code: "life cannot be reckoned", why: ["no duty"] },
    "Life cannot be reckoned: the file does not say how the machine is run.",
  ],
  [
    { code: "life cannot be reckoned", why: ["no duty", "no delivered fuel"] },
    "Life cannot be reckoned: the file does not say how the machine is run, and it does not say how dirty the fuel comes.",
  ],
  [{ code: "no solids" }, "The stated cleanliness of the delivered fuel gives no mass of solids."],
  [
    { code: "fuel not judged", temperature: 263.15 },
    "At {search: temperature not judged|-10 °C} no figure is a promise: the fuel is below its cloud point or outside its data.",
  ],
];
test.each(reasons)("sizeReasonWords(%j, 'metric') says why nothing was searched", (reason, words) => {
  expect(marked(sizeReasonWords(reason, "metric"))).toBe(words);
});

describe("sizeSentence(answer, units)", () => {
  const arrangement = (element: string, more: object = {}) => ({
    stages: [{ element, count: 1 }],
    bore: null,
    yearlyCost: 84,
    ...more,
  });
  const answer = {
    system: "Heron",
    verdict: "yes",
    side: "suction",
    asked: { code: "15/13/10", rating: null, interval: 500 * HOUR },
    temperatures: [263.15, 273.15, 288.15],
    candidates: 420,
    passing: 12,
    best: { cost: 1, vacuum: 0, changes: 0 },
    arrangements: [arrangement("P10"), arrangement("P30")],
    nearest: null,
  };
  const said = (more: object = {}) => marked(sizeSentence({ ...answer, ...more } as unknown as SizeAnswer, "metric"));
  const range = "from {search: temperature 1 searched at|-10 °C} to {search: temperature 3 searched at|15 °C}";
  const head = `{search: passing|12} of {search: candidates|420} arrangements on the suction side of Heron meet every limit ${range}.`;
  const cheapest = (named: string, cost = "84", at = 1) =>
    `${head} The cheapest is ${named}, at {arrangement ${at}: cost of a year|${cost}} a year.`;

  test("names the side and the machine where nothing was searched", () => {
    expect(said({ verdict: "cannot say" })).toBe("Cannot say what would do for the suction side of Heron:");
  });

  test("counts those that pass, and names the cheapest", () => {
    expect(said()).toBe(cheapest("P30"));
    const stages = [
      { element: "P30", count: 2 },
      { element: "F4", count: 1 },
    ];
    const wide = arrangement("", { stages, bore: 0.0127, yearlyCost: 7.5 });
    expect(said({ arrangements: [wide], best: { cost: 0, vacuum: null, changes: null } })).toBe(
      cheapest("2 of P30 side by side, then F4, with lines of {arrangement 0: bore of the lines|12.7 mm}", "7.50", 0),
    );
  });

  test("names the one of least vacuum where no price is known, and none where there is neither", () => {
    expect(said({ best: { cost: null, vacuum: 0, changes: 0 } })).toBe(`${head} Least vacuum draws P10.`);
    expect(said({ best: { cost: null, vacuum: null, changes: null } })).toBe(head);
  });

  test("names one temperature where both ends read alike", () => {
    expect(said({ temperatures: [288.15], best: { cost: null, vacuum: null, changes: null } })).toBe(
      "{search: passing|12} of {search: candidates|420} arrangements on the suction side of Heron meet every limit at {search: temperature 1 searched at|15 °C}.",
    );
  });

  const none = `None of {search: candidates|420} arrangements on the suction side of Heron meets every limit ${range}.`;
  const nearest = {
    stages: [{ element: "P10", count: 1 }],
    bore: 0.01,
    code: "16/14/11",
    life: 320 * HOUR,
    inHand: 0.12,
  };
  const near = `${none} The nearest is P10, with lines of {nearest: bore of the lines|10.0 mm}:`;
  const missed = (failure: string) =>
    `${near} ${failure}, with {nearest: least in hand|12 %} in hand at the worst temperature.`;
  const asked = { code: null, rating: null, interval: null };
  test.each([
    [{ by: "vapour" }, {}, missed("less than 20 % in hand before the fuel boils")],
    [
      { by: "interval" },
      {},
      `${near} all else is kept, but a limit is met after {nearest: end of life|320 h}, not the {search: interval asked|500 h} wanted.`,
    ],
    [{ by: "interval", life: null }, {}, missed("a limit is met before the interval is over")],
    [{ by: "interval" }, { asked }, missed("a limit is met before the interval is over")],
    [
      { by: "cleanliness" },
      {},
      `${near} it feeds the engine, but fuel comes to the injection pump at 16/14/11, and 15/13/10 is asked for.`,
    ],
    [{ by: "cleanliness", code: null }, {}, missed("fuel dirtier at the injection pump than asked")],
    [{ by: "cleanliness" }, { asked }, missed("fuel dirtier at the injection pump than asked")],
    [{ by: "rating" }, {}, `${near} it feeds the engine, but is not tested to the fineness asked.`],
  ])("of none that pass says what the nearest misses: %j, %j", (more, besides, words) => {
    expect(said({ verdict: "no", nearest: { ...nearest, ...more }, ...besides })).toBe(words);
  });

  test("of none that pass says no more where none was near", () => expect(said({ verdict: "no" })).toBe(none));
});

test("stagesText(stages) is the stages in a row as a table has them", () => {
  const stages = [
    { element: "P25", count: 2 },
    { element: "F4", count: 1 },
  ];
  expect(stagesText(stages)).toBe("2 x P25, then F4");
});

test("sizeSentence(answer, units) names the bore of the one of least vacuum as its own", () => {
  const answer = {
    system: "Heron",
    verdict: "yes",
    side: "delivery",
    temperatures: [288.15],
    candidates: 2,
    passing: 2,
    best: { cost: null, vacuum: 1, changes: 0 },
    arrangements: [{}, { stages: [{ element: "P10", count: 1 }], bore: 0.01 }],
  } as unknown as SizeAnswer;
  expect(marked(sizeSentence(answer, "metric"))).toContain(
    "on the delivery side of Heron meet every limit at {search: temperature 1 searched at|15 °C}. Least vacuum draws P10, with lines of {arrangement 1: bore of the lines|10.0 mm}.",
  );
});
