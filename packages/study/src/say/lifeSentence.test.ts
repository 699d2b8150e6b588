import { expect, test } from "vitest";
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
