import { expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { LifeAnswer } from "../life/LifeAnswer.js";
import { endClause, lifeSentence } from "./lifeSentence.js";
import { partialWords } from "./partialWords.js";
import { plain } from "./words.js";

const HOUR = 3600;
const element = (name: string, share: number, more: object = {}) => ({
  name,
  share,
  restriction: 2,
  soilAtStart: 0,
  ...more,
});
const end = { time: 300 * HOUR, pointTemperature: 263.15, by: { kind: "limit", limit: "feed pressure" } };
const answer = {
  system: "Heron",
  verdict: "lasts",
  pump: "fixed",
  end,
  interval: { time: 250 * HOUR },
  horizon: 27000 * HOUR,
  reasons: [],
  elements: [element("A", 0.2), element("B", 0.8, { restriction: 5 })],
};
const said = (more: object = {}) => plain(lifeSentence({ ...answer, ...more } as unknown as LifeAnswer, "metric"));
const fails = "After 300 h, at full demand and -10 °C, the pressure at the injection pump falls under what it needs.";
const first = "B goes first, with 80 % of all the rise by then.";

test.each([
  [{}, `The elements of Heron last their service interval of 250 h. ${fails} ${first}`],
  [{ interval: null }, `The elements of Heron last. ${fails} ${first}`],
  [{ verdict: "early" }, `The elements of Heron are spent before the service interval of 250 h. ${fails} ${first}`],
  [{ verdict: "early", interval: null }, `The elements of Heron are spent. ${fails} ${first}`],
  [{ elements: [element("A", 1)] }, `The elements of Heron last their service interval of 250 h. ${fails} `],
  [
    { elements: [element("A", 0.5), element("B", 0.5)] },
    `The elements of Heron last their service interval of 250 h. ${fails} A and B go first, with 100 % of all the rise by then.`,
  ],
  [
    { end: null },
    "The elements of Heron last their service interval of 250 h: no limit is met within ten years of its duty, 27000 h. " +
      "By then B resists 5.0 times as much as clean.",
  ],
  [
    { verdict: "early", end: { ...end, time: 0 } },
    "Heron starves already with clean elements: the pressure at the injection pump falls under what it needs at full demand " +
      "and -10 °C. No change of elements will help; look for what else on the way costs so much.",
  ],
  [
    { verdict: "early", end: { ...end, time: 0 }, elements: [element("A", 1, { soilAtStart: 1 })] },
    "Heron starves already with the soil the file states: the pressure at the injection pump falls under what it needs at " +
      "full demand and -10 °C. Look for what on the way costs so much.",
  ],
])("lifeSentence(answer with %j) says how long they last and what ends it", (more, words) => {
  expect(said(more).trim()).toBe(words.trim());
});

test.each([
  [{ kind: "terminal drop", element: "A" }, "A comes to its terminal drop"],
  [{ kind: "limit", limit: "vacuum clean" }, "the vacuum at the pump goes over its limit at change"],
  [{ kind: "limit", limit: "vacuum at change" }, "the vacuum at the pump goes over its limit at change"],
  [{ kind: "limit", limit: "vapour" }, "the pressure on the way falls under the fuel's vapour pressure"],
  [{ kind: "limit", limit: "pump capacity" }, "the demand becomes more than the pump can move"],
])("endClause(%j) says what happens then", (by, words) => {
  expect(plain(endClause(by as Parameters<typeof endClause>[0], "fixed"))).toBe(words);
});

const share = (name: string, before: number, after: number) => ({ element: name, before, after });
const partly = (...partial: object[]) =>
  partialWords({ partial } as unknown as LifeAnswer, "metric").map((words) => plain(words));

test.each([
  [null, "A alone buys more than ten years of duty."],
  [59, "A alone buys nothing, since the limit is met elsewhere."],
  [60, "A alone buys another 0.0 h."],
  [90 * HOUR, "A alone buys another 90 h."],
])("partialWords(answer) of one element that buys %j s says so", (time, words) => {
  expect(partly({ element: "A", time, shares: [share("A", 1, 1)] })).toEqual([words]);
});

test("partialWords(answer) tells what a new element takes from its neighbours, and only where it takes more", () => {
  const shares = [share("A", 0.4, 0.7), share("B", 0.3, 0.2), share("C", 0.3, 0.1)];
  const takes =
    "new, it takes 70 % of the flow where it took 40 %, fills the faster for it, and leaves 20 % to B and 10 % to C";
  expect(partly({ element: "A", time: 90 * HOUR, shares })).toEqual([`A alone buys another 90 h: ${takes}.`]);
  const same = [share("A", 0.5, 0.504), share("B", 0.5, 0.496)];
  expect(partly({ element: "A", time: 90 * HOUR, shares: same })).toEqual(["A alone buys another 90 h."]);
});

test("partialWords(answer) says of elements that are alike once what changing either buys", () => {
  const of = (name: string, other: string, time: number | null, after = 0.7) => ({
    element: name,
    time,
    shares: [share(name, 0.5, after), share(other, 0.5, 1 - after)],
  });
  expect(partly(of("A", "B", 90 * HOUR), of("B", "A", 90 * HOUR))).toHaveLength(1);
  expect(partly(of("A", "B", 90 * HOUR), of("B", "A", 90 * HOUR))[0]).toContain("A (or B) alone buys another 90 h");
  expect(partly(of("A", "B", null), of("B", "A", null))).toHaveLength(1);
  expect(partly(of("A", "B", 90 * HOUR), of("B", "A", 91 * HOUR))).toHaveLength(2);
  expect(partly(of("A", "B", 90 * HOUR), of("B", "A", null))).toHaveLength(2);
  expect(partly(of("A", "B", 90 * HOUR), of("B", "A", 90 * HOUR, 0.6))).toHaveLength(2);
});

test("partialWords(answer) takes for alike what differs by rounding only, and says so of each where no share is known", () => {
  const rounded = 90 * HOUR * (1 + 1e-9);
  const of = (element: string, other: string, time: number, after: number) => ({
    element,
    time,
    shares: [share(element, 0.5, after), share(other, 0.5, 1 - after)],
  });
  expect(partly(of("A", "B", 90 * HOUR, 0.7), of("B", "A", rounded, 0.7 * (1 + 1e-9)))).toHaveLength(1);
  const alone = (element: string) => ({ element, time: 90 * HOUR, shares: [] });
  expect(partly(alone("A"), alone("B"))).toEqual(["A alone buys another 90 h.", "B alone buys another 90 h."]);
});

test("partialWords(answer) names all that are alike, and its figures as workings do", () => {
  const names = ["A", "B", "C"];
  const partial = names.map((element) => ({
    element,
    time: 90 * HOUR,
    shares: names.map((name) => (name === element ? share(name, 0.25, 0.5) : share(name, 0.375, 0.25))),
  }));
  const words = partialWords({ partial } as unknown as LifeAnswer, "metric").map(marked);
  expect(words).toEqual([
    "A (or B or C) alone buys another {next end with A alone new|90 h}: new, it takes {share of flow of A with A new|50 %} of the flow where it took {share of flow of A before A is changed|25 %}, fills the faster for it, and leaves {share of flow of B with A new|25 %} to B and {share of flow of C with A new|25 %} to C.",
  ]);
});

test("lifeSentence(answer, units) names its figures as workings do", () => {
  const named = (more: object) => marked(lifeSentence({ ...answer, ...more } as unknown as LifeAnswer, "metric"));
  expect(named({})).toBe(
    "The elements of Heron last their service interval of {interval|250 h}. After {end|300 h}, at full demand and {temperature|-10 °C}, the pressure at the injection pump falls under what it needs. B goes first, with {share of the rise of B|80 %} of all the rise by then.",
  );
  expect(named({ end: null })).toBe(
    "The elements of Heron last their service interval of {interval|250 h}: no limit is met within ten years of its duty, {horizon|27000 h}. By then B resists {resistance over clean of B|5.0} times as much as clean.",
  );
});

test("lifeSentence(answer, units) without an end tells of the fullest, the first of those alike", () => {
  const elements = [element("A", 0.2, { restriction: 5 }), element("B", 0.8), element("C", 0, { restriction: 5 })];
  expect(said({ end: null, elements })).toContain("By then A resists 5.0 times as much as clean.");
});

test("lifeSentence(answer, units) counts as soiled from the start what has one soiled element", () => {
  const elements = [element("A", 1, { soilAtStart: 1 }), element("B", 0)];
  expect(said({ end: { ...end, time: 0 }, elements })).toContain("starves already with the soil the file states");
});

test("lifeSentence(answer, units) that cannot say tells why, and what figures there are", () => {
  const reasons = [{ code: "no service interval" }, { code: "no filter" }];
  const why =
    "Cannot say whether the elements of Heron last: no service interval is stated to hold the life against, and no filter stands open in the path.";
  expect(said({ verdict: "cannot say", reasons })).toBe(`${why} ${fails} ${first}`);
  expect(said({ verdict: "cannot say", reasons, end: null })).toBe(why);
});

test("partialWords(answer) tells of no neighbours where an element stands beside a bare line", () => {
  expect(partly({ element: "A", time: 90 * HOUR, shares: [share("A", 0.4, 0.7)] })).toEqual([
    "A alone buys another 90 h.",
  ]);
});
