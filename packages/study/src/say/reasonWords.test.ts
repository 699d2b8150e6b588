import { expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { CheckPoint, Reason } from "../check/CheckAnswer.js";
import { reasonWords } from "./reasonWords.js";
import { plain } from "./words.js";

const band = (middle: number, high = middle, low = middle) => ({ low, middle, high });
const point = {
  vacuum: band(30e3),
  vacuumNow: null,
  vacuumLimits: { clean: 20e3, atChange: 40e3 },
  lowest: { pressure: band(50e3), part: "rise" },
  feedPressure: band(8e3),
  feedLimit: 25e3,
  inHand: band(0.3, 0.4, 0.1),
  fuel: { vapourPressure: 60e3 },
  demand: { total: 0.36 / 3600 },
};
const said = (reason: object, more: object = {}) =>
  plain(
    reasonWords(reason as Reason, {
      pump: "fixed",
      point: { ...point, ...more } as unknown as CheckPoint,
      units: "metric",
    }),
  );
const broken = (limit: string, more: object = {}) => said({ code: "broken", limit }, more);
const worse = "on the worse reading of flow between laminar and turbulent";

test("reasonWords(little in hand) takes the bad end of what is in hand", () => {
  expect(said({ code: "little in hand", limit: "vapour" })).toBe(
    "only 10 % in hand before the fuel's vapour pressure binds",
  );
});

test("reasonWords(unsettled) names what a flow test would settle", () => {
  expect(said({ code: "unsettled", limit: "feed pressure", parts: ["A", "B"] })).toBe(
    "at the bad end of what is known of A, B the feed pressure is broken, at the good end it is not; a flow test would settle it",
  );
});

test("reasonWords(no vacuum limit) sends to the manual", () => {
  expect(said({ code: "no vacuum limit" })).toBe(
    "no vacuum limit is given, and for this pump and fuel there is no published one to take; the maker's manual has it",
  );
});

const over = "at the pump against a clean limit of 20.0 kPa, so there is no room for soil";
test.each([
  [{}, `clean elements already draw 30.0 kPa ${over}`],
  [{ vacuum: band(19e3, 21e3) }, `clean elements may already draw 21.0 kPa ${over}`],
  [{ vacuum: band(20e3, 21e3) }, `clean elements may already draw 21.0 kPa ${over}`],
  [
    { vacuum: band(19e3, 20e3) },
    `${worse} clean elements go over the clean limit of 20.0 kPa, so there is no room for soil`,
  ],
])("reasonWords(over clean limit) with %j quotes only what is over it", (more, words) => {
  expect(said({ code: "over clean limit" }, more)).toBe(words);
  expect(broken("vacuum clean", more)).toBe(words);
});

test.each([
  [
    "vacuum at change",
    { vacuum: band(52e3) },
    "the vacuum at the pump comes to 52.0 kPa, over the limit at change of 40.0 kPa",
  ],
  [
    "vacuum at change",
    { vacuumNow: band(45e3) },
    "the vacuum at the pump comes to 45.0 kPa, over the limit at change of 40.0 kPa",
  ],
  [
    "vacuum at change",
    { vacuum: band(40e3) },
    `${worse} the vacuum at the pump goes over the limit at change of 40.0 kPa`,
  ],
  [
    "vacuum at change",
    { vacuum: band(120e3), lowest: { pressure: band(-1), part: "rise" } },
    "the pump would have to draw 120 kPa, which is more than the air presses and over the limit at change of 40.0 kPa",
  ],
  ["feed pressure", {}, "the pressure at the injection pump comes to 8.0 kPa, under the 25.0 kPa it needs"],
  [
    "feed pressure",
    { feedPressure: band(25e3) },
    `${worse} the pressure at the injection pump falls under the 25.0 kPa it needs`,
  ],
  ["vapour", {}, "the pressure behind rise falls to 50.0 kPa, under the 60.0 kPa at which the fuel boils"],
  [
    "vapour",
    { lowest: { pressure: band(60e3), part: "rise" } },
    `${worse} the pressure behind rise falls under the 60.0 kPa at which the fuel boils`,
  ],
  ["vapour", { lowest: { pressure: band(-1), part: "rise" } }, "the air cannot press so much fuel past rise"],
  ["pump capacity", {}, "the demand of 360 L/h is more than the pump can move"],
])("reasonWords(broken %s) with %j says what it comes to and what it may", (limit, more, words) => {
  expect(broken(limit, more)).toBe(words);
});

test.each([
  [{ code: "little in hand", limit: "vapour" }, ["in hand"]],
  [{ code: "over clean limit" }, ["vacuum", "clean limit"]],
  [{ code: "broken", limit: "vacuum at change" }, ["limit at change"]],
  [{ code: "broken", limit: "feed pressure" }, ["feed pressure", "feed limit"]],
  [{ code: "broken", limit: "vapour" }, ["lowest pressure", "vapour pressure"]],
  [{ code: "broken", limit: "pump capacity" }, ["demand"]],
])("reasonWords(%j) names its figures as workings do", (reason, names) => {
  const words = reasonWords(reason as Reason, {
    pump: "fixed",
    point: point as unknown as CheckPoint,
    units: "metric",
  });
  expect(words.flatMap((piece) => (typeof piece === "string" ? [] : [piece.figure]))).toEqual(names);
});

test("reasonWords(broken) names the vacuum that is over its limit, and the one no pump could draw", () => {
  const named = (more: object) =>
    marked(
      reasonWords(
        { code: "broken", limit: "vacuum at change" },
        { pump: "fixed", point: { ...point, ...more } as unknown as CheckPoint, units: "metric" },
      ),
    );
  expect(named({ vacuum: band(52e3) })).toContain("comes to {vacuum|52.0 kPa}, over the limit at change of {limit");
  const lowest = { pressure: band(-1), part: "rise" };
  expect(named({ vacuum: band(120e3), lowest })).toContain("have to draw {vacuum|120 kPa}, which is more than the air");
});

test.each([
  [
    "vacuum at change",
    { lowest: null, vacuum: band(52e3) },
    "the vacuum at the pump comes to 52.0 kPa, over the limit at change of 40.0 kPa",
  ],
  [
    "vacuum at change",
    { lowest: { pressure: band(0), part: "rise" }, vacuum: band(99e3) },
    "the vacuum at the pump comes to 99.0 kPa, over the limit at change of 40.0 kPa",
  ],
  [
    "vapour",
    { lowest: { pressure: band(0), part: "rise" } },
    "the pressure behind rise falls to 0.0 kPa, under the 60.0 kPa at which the fuel boils",
  ],
])("reasonWords(broken %s) with %j says what is known of it", (limit, more, words) => {
  expect(broken(limit, more)).toBe(words);
});

test("reasonWords(over clean limit) quotes the likely vacuum where that is over it, and the bad end only where it is not", () => {
  expect(said({ code: "over clean limit" }, { vacuum: band(30e3, 35e3) })).toContain("already draw 30.0 kPa");
});
