import { expect, test } from "vitest";
import type { CardFacts } from "../card/CardAnswer.js";
import { cardLog } from "./cardLog.js";
import { plain } from "./words.js";

const HOUR = 3600;
const YEAR = 365.25 * 24 * HOUR;
const next = { change: { time: 250 * HOUR, by: "manual's interval" }, distance: null, calendar: null, source: null };
const itemsOf = (more: object = {}, facts: object = {}) =>
  cardLog(
    {
      system: "Heron",
      elements: [{ name: "A" }, { name: "B" }],
      pump: "fixed",
      next: { ...next, ...more },
      ...facts,
    } as unknown as CardFacts,
    "metric",
  ).map(({ kind, words }) => `${kind}: ${plain(words)}`);
const nextOf = (more: object) => itemsOf(more)[7] ?? "";

test("cardLog(facts, units) is what to write down, in the order it is filled in", () => {
  const items = itemsOf();
  expect(items.slice(0, 7)).toEqual([
    "note: Heron: A and B",
    "field: Date",
    "field: Hours",
    "field: Vacuum before",
    "field: Vacuum clean",
    "line: Element fitted",
    "line: Found in the old one",
  ]);
  expect(items.slice(8)).toEqual(["field: Next due", "field: Done by"]);
});

test("cardLog(facts, units) asks for the distance where the manual counts it, and for pressure where there is no pump", () => {
  expect(itemsOf({ distance: 20e6 })).toContain("field: Hours, distance");
  expect(itemsOf({}, { pump: "none" }).slice(3, 5)).toEqual(["field: Pressure before", "field: Pressure clean"]);
});

test("cardLog(facts, units) says when the next change is due, by which rule and by whose figures", () => {
  expect(nextOf({})).toMatch(/^note: Next change 250 h from now \(the manual's usual interval\)\.$/);
  expect(nextOf({ source: "the manual" })).toMatch(/\); manual's figures from: the manual\.$/);
  expect(nextOf({ distance: 20e6, calendar: YEAR })).toMatch(
    /\), or 20,?000 km or 12 months, whichever comes first\.$/,
  );
});

test.each([
  [YEAR / 12, "1 month"],
  [YEAR / 2, "6 months"],
  [100 * 24 * HOUR, "100 days"],
])("cardLog(facts, units) says a calendar of %d s as a manual would: %s", (calendar, words) => {
  expect(nextOf({ calendar })).toContain(`), or ${words}, whichever comes first.`);
});

test("cardLog(facts, units) says why no next change can be told", () => {
  expect(nextOf({ change: null })).toBe("note: When the next change is due the file does not say; the manual does.");
  expect(nextOf({ change: { time: 0, by: "manual's interval" } })).toBe(
    "note: No interval can be told: it starves already with clean elements; see thirstline check.",
  );
});

test("cardLog(facts, units) names the time of the next change as its working does", () => {
  const figures = cardLog(
    { system: "Heron", elements: [], pump: "fixed", next } as unknown as CardFacts,
    "metric",
  ).flatMap(({ words }) => words.filter((piece) => typeof piece !== "string"));
  expect(figures).toEqual([{ figure: "next change", text: "250 h" }]);
});
