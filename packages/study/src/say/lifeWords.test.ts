import { describe, expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { LifeAnswer, LifeCaution } from "../life/LifeAnswer.js";
import { lifeCautions } from "./lifeCautions.js";
import { endClause } from "./lifeSentence.js";
import { chanceShort, chanceText, changeWords, spreadTime, spreadWords } from "./lifeWords.js";
import { namesWords } from "./namesWords.js";
import { plain } from "./words.js";

const HOUR = 3600;

describe("chanceText(chance, draws)", () => {
  test.each([
    [0.18, 0.012, 400, "18 %, give or take 1.2 %"],
    [0.032, 0.004, 400, "3.2 %, give or take 0.4 %"],
    [0, 0, 400, "under 0.3 %, no draw"],
    [1, 0, 1000, "over 99.9 %, every draw"],
  ])("of %f by %f in %i draws says %s", (chance, chanceError, draws, text) => {
    expect(chanceText({ chance, chanceError }, draws)).toBe(text);
  });
});

describe("changeWords(answer, units)", () => {
  const measures = { burnt: 0, distance: null, years: 0, date: null, hourMeter: null, distanceMeter: null };
  const asked = (change: number, by: string, end: number | null) =>
    ({
      change: { ...measures, time: change * HOUR, by },
      interval: { time: 250 * HOUR, atMost: 500 * HOUR, source: "a manual" },
      end: end === null ? null : { ...measures, time: end * HOUR },
    }) as unknown as LifeAnswer;
  const words = (answer: LifeAnswer) => plain(changeWords(answer, "metric") ?? []);

  test("never lets elements run past what the manual allows, however clean", () => {
    const never =
      "Never go past 500 h, the longest the manual allows (a manual), however clean the elements still are.";
    expect(words(asked(250, "manual's interval", 1096))).toContain(never);
    expect(words(asked(250, "manual's interval", null))).toContain(never);
  });

  test("says when elements do not last what the manual allows", () => {
    expect(words(asked(250, "manual's interval", 456))).toContain("500 h (a manual), is more than these elements last");
  });

  test("says not to wait for the manual where restriction comes first", () => {
    expect(words(asked(120, "restriction", 120))).toBe(
      "Change at 120 h: of interval, distance, calendar and restriction, whichever comes first, it is restriction. " +
        "Do not wait for 500 h (a manual): the engine would starve before.",
    );
  });
});

describe("lifeCautions(answer, units)", () => {
  test("says once what is true of several elements", () => {
    const cautions: LifeCaution[] = ["a", "b", "c"].map((element) => ({ code: "capacity assumed", element }));
    expect(lifeCautions({ cautions }, "metric")).toEqual([
      "how much soil a, b and c can hold was not tested; handbook capacities by area stand in, good to a factor of 2 or 3",
    ]);
  });

  test("keeps apart what differs", () => {
    const cautions: LifeCaution[] = [
      { code: "law assumed", element: "a", law: "cake" },
      { code: "law assumed", element: "b", law: "intermediate" },
    ];
    expect(lifeCautions({ cautions }, "metric")).toHaveLength(2);
  });
});

test("endClause(by, pump) names where a gauge would show it", () => {
  const feed = { kind: "limit", limit: "feed pressure" } as const;
  expect(plain(endClause(feed, "none"))).toBe("the pressure at the engine falls under what it needs");
  expect(plain(endClause(feed, "fixed"))).toBe("the pressure at the injection pump falls under what it needs");
  expect(plain(endClause({ kind: "terminal drop", element: "P10" }, "fixed"))).toBe("P10 comes to its terminal drop");
});

test("spreadTime(time, answer, units) says of what meets no limit that it is longer than looked ahead", () => {
  const answer = { horizon: 300 * HOUR } as LifeAnswer;
  expect(spreadTime(100 * HOUR, answer, "metric")).toBe("100 h");
  expect(spreadTime(Number.POSITIVE_INFINITY, answer, "metric")).toBe("over 300 h");
});

test("namesWords(names) lists names as a sentence does", () => {
  expect([[], ["a"], ["a", "b"], ["a", "b", "c"]].map(namesWords)).toEqual(["", "a", "a and b", "a, b and c"]);
});

test("chanceText(chance, draws) has a tenth of a percent below 10 %, and takes at least one draw", () => {
  expect(chanceText({ chance: 0.1, chanceError: 0.0999 }, 400)).toBe("10 %, give or take 10.0 %");
  expect(chanceText({ chance: 0, chanceError: 0 }, 0)).toBe("under 100 %, no draw");
});

test("chanceShort(spread) leaves out how well a chance is known", () => {
  expect(chanceShort({ chance: 0.18, chanceError: 0.012, draws: 400 })).toBe("18 %");
  expect(chanceShort({ chance: 0, chanceError: 0, draws: 400 })).toBe("under 0.3 %");
});

describe("spreadWords(answer, units) says the chance of starving, and of how many draws", () => {
  const spread = { draws: 400, chance: 0.18, chanceError: 0.012, atMost: { chance: 0.5, chanceError: 0.02 } };
  const interval = { time: 250 * HOUR, atMost: 500 * HOUR, source: null };
  const said = (more: object) => {
    const words = spreadWords({ spread, interval, ...more } as unknown as LifeAnswer, "metric");
    return words && marked(words);
  };
  const usual = "Chance of starving before 250 h: {chance|18 %, give or take 1.2 %}";
  const draws = "400 draws of what is uncertain";
  test.each([
    [{}, `${usual}; before the 500 h allowed at most: {chance|50 %, give or take 2.0 %} (${draws}).`],
    [{ spread: { ...spread, atMost: null } }, `${usual} (${draws}).`],
    [{ interval: null }, `From ${draws}.`],
    [{ spread: null }, null],
    [{ spread: { ...spread, draws: 0 } }, null],
  ])("%j", (more, words) => expect(said(more)).toBe(words));
});

describe("changeWords(answer, units) by each rule", () => {
  const change = { time: 250 * HOUR, by: "calendar" };
  const interval = { time: 250 * HOUR, atMost: 500 * HOUR, source: null };
  const said = (more: object) => {
    const words = changeWords({ change, interval, end: null, ...more } as unknown as LifeAnswer, "metric");
    return words && marked(words);
  };
  const first = (rule: string) =>
    `Change at {change|250 h}: of interval, distance, calendar and restriction, whichever comes first, it is ${rule}.`;
  const never = "Never go past {at most|500 h}, the longest the manual allows, however clean the elements still are.";
  test.each([
    ["manual's interval", "the manual's usual interval"],
    ["manual's longest interval", "the longest the manual allows"],
    ["distance", "the manual's distance"],
    ["calendar", "the manual's calendar time"],
  ])("%s", (by, rule) => expect(said({ change: { ...change, by } })).toBe(`${first(rule)} ${never}`));

  test("with the longest the manual allows from both sides of what the elements last", () => {
    const rule = first("the manual's calendar time");
    expect(said({ end: { time: 500 * HOUR } })).toBe(`${rule} ${never}`);
    expect(said({ end: { time: 499 * HOUR } })).toBe(
      `${rule} The longest the manual allows, {at most|500 h}, is more than these elements last.`,
    );
  });

  test("without an interval, and without a change", () => {
    const rule = first("the manual's calendar time");
    expect(said({ interval: null })).toBe(`${rule} The manual's interval is not in the file, and it decides.`);
    expect(said({ change: { ...change, time: 0 } })).toBeNull();
    expect(said({ change: null })).toBeNull();
  });
});
