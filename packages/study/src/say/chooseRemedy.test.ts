import { describe, expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { Remedy, RemedyAnswer, RemedyResult } from "../choose/RemedyAnswer.js";
import { remediesWords, remedySentence } from "./chooseRemedy.js";
import { plain } from "./words.js";

const wider: Remedy = { kind: "wider bore", side: "suction", from: 0.008, to: 0.0095, parts: ["hose"], listed: true };
const lower: Remedy = { kind: "lower pump", by: 0.3 };
const cases: readonly (readonly [Remedy, string])[] = [
  [wider, "{now: change 1, to|9.50 mm} bore for {now: change 1, from|8.00 mm} on the suction side"],
  [
    { kind: "shorter run", part: "hose", from: 3, to: 1.5 },
    "hose {now: change 1, to|1.50 m} long, not {now: change 1, from|3.00 m}",
  ],
  [{ kind: "one more branch", parts: ["A", "B"] }, "one more beside A, B"],
  [{ kind: "larger element", parts: ["A", "B"] }, "twice the area in A, B"],
  [{ kind: "warmer fuel", by: 10 }, "fuel {now: change 1, by|10 K} warmer"],
  [{ kind: "cooler fuel", by: 10 }, "fuel {now: change 1, by|10 K} cooler"],
  [lower, "pump {now: change 1, by|0.30 m} lower"],
  [{ kind: "higher tank", by: 0.3 }, "tank {now: change 1, by|0.30 m} higher"],
  [{ kind: "fewer fittings", part: "elbows", from: 4, to: 0 }, "elbows left out"],
  [
    { kind: "fewer fittings", part: "elbows", from: 4, to: 2 },
    "elbows: {now: change 1, to|2} for {now: change 1, from|4}",
  ],
  [{ kind: "clean element", part: "A", restriction: 3 }, "a clean element in A"],
  [{ kind: "open vent", tank: "tank" }, "vent of tank open"],
  [{ kind: "open branch", part: "B" }, "B opened"],
  [{ kind: "fuller tank", tank: "tank", from: 0.1, to: 0.5 }, "tank never under half full"],
];
test.each(cases)("remediesWords([%j], 'metric') says what to do, as a clause", (remedy, words) => {
  expect(marked(remediesWords([remedy], "metric"))).toBe(words);
});

test("remediesWords(changes, 'us') counts a difference of temperature in degrees of its scale, wherever that begins", () => {
  expect(plain(remediesWords([{ kind: "warmer fuel", by: 10 }], "us"))).toBe("fuel 18 °F warmer");
  expect(plain(remediesWords([wider], "us"))).toBe("0.37 in bore for 0.31 in on the suction side");
});

test("remediesWords(changes, units, of) numbers the changes that are made together", () => {
  const { to, from } = { to: "{pairs 0: change 1, to|9.50 mm}", from: "{pairs 0: change 1, from|8.00 mm}" };
  expect(marked(remediesWords([wider, lower], "metric", "pairs 0"))).toBe(
    `${to} bore for ${from} on the suction side, and pump {pairs 0: change 2, by|0.30 m} lower`,
  );
});

describe("remedySentence(answer, units) says what would help most", () => {
  const now = {
    temperature: 263.15,
    verdict: "tight",
    inHand: 0.1,
    limit: "feed pressure",
    changes: [],
    overClean: null,
  };
  const result = (more: object = {}) =>
    ({ ...now, changes: [lower], verdict: "holds", inHand: 0.4, ...more }) as unknown as RemedyResult;
  const answer = { system: "Heron", pump: "fixed", now, single: [result()], pairs: [] } as unknown as RemedyAnswer;
  const said = (more: object = {}) => marked(remedySentence({ ...answer, ...more } as RemedyAnswer, "metric"));
  const at = "{now: temperature where least is in hand|-10 °C}";
  const helps = `What helps Heron, with {now: in hand, low end|10 %} in hand at ${at}, most is pump {single 0: change 1, by|0.30 m} lower:`;
  const hand = "{single 0: in hand, low end|40 %} in hand";

  test.each([
    [{}, `it holds, with ${hand}.`],
    [{ verdict: "tight" }, `it is fed, with ${hand}, but it is tight.`],
    [{ verdict: "tight", overClean: 500 }, `it is fed, with ${hand}, but clean elements go over the clean limit.`],
    [{ verdict: "starves" }, "it still starves."],
    [{ verdict: "cannot say" }, `${hand}, but no figure is a promise.`],
  ])("after %j", (more, words) => expect(said({ single: [result(more)] })).toBe(`${helps} ${words}`));

  test("of what starves as it is says so, and no share in hand", () => {
    expect(said({ now: { ...now, verdict: "starves" } })).toBe(
      `What helps Heron, which starves at ${at}, most is pump {single 0: change 1, by|0.30 m} lower: it holds, with ${hand}.`,
    );
  });

  test("adds the best pair where there is one", () => {
    const pair = result({ changes: [lower, { kind: "higher tank", by: 0.3 }], inHand: 0.7 });
    expect(said({ pairs: [pair, result()] })).toBe(
      `${helps} it holds, with ${hand}. The best pair is pump {pairs 0: change 1, by|0.30 m} lower, and tank {pairs 0: change 2, by|0.30 m} higher: it holds, with {pairs 0: in hand, low end|70 %} in hand.`,
    );
  });

  test("says that none helps where there is none, or the best leaves as little in hand, and what binds", () => {
    const none = (binds: string) =>
      `No single change helps Heron: ${binds} binds at ${at} whatever is done on the way to it.`;
    expect(said({ single: [] })).toBe(none("the feed pressure"));
    expect(said({ single: [result({ inHand: 0.1 })] })).toBe(none("the feed pressure"));
    expect(said({ single: [], pump: "none" })).toBe(none("the head of the tank"));
  });
});
