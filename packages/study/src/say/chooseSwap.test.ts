import { describe, expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { SwapAnswer, SwapReason } from "../choose/SwapAnswer.js";
import { swapReasonWords, swapSentence } from "./chooseSwap.js";
import { plain } from "./words.js";

const HOUR = 3600;
const COLD = 273.15 - 12;
const answer = {
  system: "Heron",
  with: "P10 tall",
  at: ["prefilter A", "prefilter B"],
  asked: "15/13/10",
  pump: "fixed",
  verdict: "no",
  reasons: [],
} as unknown as SwapAnswer;
const below = (code: "below" | "always" | "not met") => ({ code, temperature: COLD });
const said = (reason: object, units: "metric" | "us" = "metric") =>
  plain(swapReasonWords({ weight: "note", ...reason } as SwapReason, answer, units));
const sentence = (more: object) => plain(swapSentence({ ...answer, ...more } as SwapAnswer, "metric"));

test.each([
  ["yes", "Yes: Heron may have P10 tall in place of prefilter A and prefilter B."],
  [
    "with care",
    "With care: Heron may have P10 tall in place of prefilter A and prefilter B, knowing what is said below.",
  ],
  [
    "cannot say",
    "Cannot say whether Heron may have P10 tall in place of prefilter A and prefilter B: ask the maker of the element or " +
      "of the machine.",
  ],
  ["no", "No: do not fit P10 tall in place of prefilter A and prefilter B."],
])("swapSentence(answer, units) says the verdict %s in words", (verdict, words) => {
  expect(sentence({ verdict })).toBe(words);
});

test.each([
  [{ code: "coarser than asked", asked: "15/13/10" }, "; it is coarser than the 15/13/10 the manual asks for."],
  [{ code: "starves", below: below("below") }, "; the engine starves below -12 °C."],
  [{ code: "starves", below: below("always") }, "; the engine starves even at -12 °C."],
  [{ code: "starves", below: below("not met") }, "; the engine does not starve down to -12 °C, where figures end."],
  [{ code: "early", time: 180 * HOUR }, "; a limit is met after 180 h."],
  [{ code: "style" }, "; it does not fit."],
  [{ code: "thread" }, "; it does not fit."],
  [{ code: "direction" }, "; it does not fit."],
])("swapSentence(answer, units) of a no ends with what decides it: %j", (reason, words) => {
  expect(sentence({ reasons: [reason] })).toBe(
    `No: do not fit P10 tall in place of prefilter A and prefilter B${words}`,
  );
});

describe("swapReasonWords(reason, answer, units) is a sentence with its figures", () => {
  test.each([
    [
      { code: "coarser than asked", found: "16/14/11", asked: "15/13/10", sizes: ["4", "6", "14"] },
      "Fuel would come to the injection pump at 16/14/11, dirtier at 4, 6 and 14 µm(c) than the 15/13/10 the manual asks for.",
    ],
    [
      { code: "coarser than asked", found: "16/13/10", asked: "15/13/10", sizes: ["4"] },
      "Fuel would come to the injection pump at 16/13/10, dirtier at 4 µm(c) than the 15/13/10 the manual asks for.",
    ],
    [
      { code: "protection kept", found: "14/12/9", asked: "15/13/10" },
      "Fuel comes to the injection pump at 14/12/9, and the manual asks for 15/13/10.",
    ],
    [{ code: "no coarser than now", fineness: "same" }, "It catches as much as what is fitted, at every size."],
    [{ code: "no coarser than now", fineness: "finer" }, "It catches no less than what is fitted, at any size."],
    [
      { code: "coarser than now" },
      "It catches less than what is fitted, and leaves the rest to the elements behind it, which fill the sooner.",
    ],
    [
      { code: "filling not known", why: "catch" },
      "How long it lasts is not known: no beta ratios say what it catches; ask its maker.",
    ],
    [
      { code: "filling not known", why: "capacity" },
      "How long it lasts is not known: neither a capacity test nor its area says how much it takes; ask its maker.",
    ],
    [
      { code: "finer than asked", now: "15/13/10", found: "14/12/9", asked: "15/13/10" },
      "It is finer than what is fitted (14/12/9 for 15/13/10 at the injection pump), and the 15/13/10 the manual asks for " +
        "is kept without it: that is no reason to change.",
    ],
    [
      { code: "rating not met", beta: 75, size: 10e-6 },
      "No element on the way would reach the beta 75 at 10.0 µm the manual asks for.",
    ],
    [
      { code: "rating not known", beta: 200, size: 5e-6 },
      "No data say whether any element on the way reaches the beta 200 at 5.00 µm the manual asks for; ask the maker.",
    ],
    [
      { code: "early", time: 180 * HOUR, interval: 250 * HOUR, source: "the manual" },
      "A limit is met after 180 h, before the 250 h of the manual.",
    ],
    [
      { code: "early", time: 180 * HOUR, interval: 250 * HOUR, source: null },
      "A limit is met after 180 h, before the 250 h of the service interval.",
    ],
    [
      { code: "lasts", time: 900 * HOUR, interval: 250 * HOUR },
      "It lasts 900 h at the likely figures, and is changed after 250 h.",
    ],
    [
      { code: "lasts", time: null, interval: 250 * HOUR },
      "It lasts beyond the 250 h between changes: no limit is met in ten years of this duty.",
    ],
    [
      { code: "style", fitted: "spin-on", other: "cartridge" },
      "It is of another build: cartridge, where spin-on is fitted.",
    ],
    [
      { code: "thread", fitted: "M16x1.5", other: "M20x1.5" },
      "Its thread or port is M20x1.5, and the one fitted has M16x1.5.",
    ],
    [{ code: "thread kept", thread: "M16x1.5" }, "Its thread or port is M16x1.5, as at the place it is for."],
    [
      { code: "direction", fitted: "outside in", other: "inside out" },
      "Fuel goes through it inside out, and through the one fitted outside in.",
    ],
    [
      { code: "thread not known", other: null },
      "No thread or port is stated; compare seal, thread and height by hand before fitting.",
    ],
    [
      { code: "thread not known", other: "M16x1.5" },
      "Its thread or port is M16x1.5; what the machine has is not stated: compare seal, thread and height by hand.",
    ],
    [
      { code: "too much flow", place: "prefilter A", flow: 0.2 / 3600, most: 0.1 / 3600 },
      "Prefilter A carries 200 L/h, and its maker allows it 100 L/h.",
    ],
    [
      { code: "less water", fitted: 0.95, other: null },
      "It is not stated to separate water; the one fitted takes 95 % of the free water.",
    ],
    [
      { code: "less water", fitted: 0.95, other: 0.6 },
      "It separates 60 % of the free water; the one fitted takes 95 %.",
    ],
    [
      { code: "neighbour stays", place: "prefilter A", neighbour: "prefilter B" },
      "Prefilter B, beside prefilter A, stays as it is: fuel takes the easier way, so change both or neither.",
    ],
    [
      { code: "was backwards", place: "prefilter A" },
      "The one at prefilter A is fitted against its arrow; the new one is reckoned the right way round.",
    ],
  ])("%j", (reason, words) => expect(said(reason)).toBe(words));

  const none = "nobody states what it catches beside the one fitted";
  const asks = "so nobody can tell whether the 15/13/10 the manual asks for is kept; ask the maker";
  test.each([
    [
      "its catch",
      "coarser",
      "whether the 15/13/10 the manual asks for is kept is not known: no beta ratios are stated for some element on the " +
        "way; ask its maker",
    ],
    ["the delivered fuel", "not known", `${none}, and the file does not say how dirty the fuel comes, ${asks}`],
    ["the duty", "not known", `${none}, and the file does not say how the machine is run, ${asks}`],
    [
      "what is asked",
      "coarser",
      "it catches less than the one fitted, and the file does not say what the injection pump asks for; ask the maker of " +
        "the machine",
    ],
    [
      "what is asked",
      "mixed",
      "it catches more of some sizes and less of others than the one fitted, and the file does not say what the injection " +
        "pump asks for; ask the maker of the machine",
    ],
  ])("protection not known for want of %s, by one %s", (why, fineness, words) => {
    expect(said({ code: "protection not known", why, fineness })).toBe(`${words[0]?.toUpperCase()}${words.slice(1)}.`);
  });
});

const point = { temperature: COLD, reasons: [{ code: "shut", by: "tank cock" }] };
test.each([
  [{ code: "not judged", point }, "Nobody can say whether it feeds the engine at -12 °C: nothing can pass tank cock."],
  [{ code: "tight", point }, "It is tight at -12 °C: nothing can pass tank cock."],
  [
    { code: "starves", point, below: below("below") },
    "The engine starves below -12 °C; at -12 °C nothing can pass tank cock.",
  ],
])("swapReasonWords(%j) says at which temperature and why", (reason, words) => expect(said(reason)).toBe(words));

test("swapReasonWords(reason, answer, units) ties its figures to the system with the other element", () => {
  const words = swapReasonWords(
    { weight: "note", code: "early", time: 180 * HOUR, interval: 250 * HOUR, source: null },
    answer,
    "metric",
  );
  const figures = words.flatMap((piece) => (typeof piece === "string" ? [] : [[piece.of, piece.figure]]));
  expect(figures).toEqual([
    ["changed", "end of life"],
    ["changed", "service interval"],
  ]);
});

test.each([
  [
    { code: "may starve early", chance: 0.18, chanceError: 0.012, interval: 250 * HOUR, draws: 400 },
    "The chance that it starves the engine before {changed: service interval|250 h} is {changed: chance of an end before the service interval|18 %, give or take 1.2 %}.",
  ],
  [
    { code: "rating not met", beta: 75, size: 10e-6 },
    "No element on the way would reach the beta {changed: beta asked|75} at {changed: size asked|10.0 µm} the manual asks for.",
  ],
  [
    { code: "too much flow", place: "prefilter A", flow: 0.2 / 3600, most: 0.1 / 3600 },
    "Prefilter A carries {changed: most flow at the places|200 L/h}, and its maker allows it {changed: most flow allowed|100 L/h}.",
  ],
  [
    { code: "less water", fitted: 0.95, other: 0.6 },
    "It separates {changed: water kept by the other element|60 %} of the free water; the one fitted takes {changed: water kept by what is fitted|95 %}.",
  ],
  [
    { code: "less water", fitted: 0.95, other: null },
    "It is not stated to separate water; the one fitted takes {changed: water kept by what is fitted|95 %} of the free water.",
  ],
  [
    { code: "life not known", reasons: [{ code: "no filter" }, { code: "no service interval" }] },
    "How long it lasts is not known: no filter stands open in the path; no service interval is stated to hold the life against.",
  ],
  [
    { code: "early", time: 180 * HOUR, interval: 250 * HOUR, source: "manual of the maker" },
    "A limit is met after {changed: end of life|180 h}, before the {changed: service interval|250 h} of the manual of the maker.",
  ],
  [
    { code: "starves", point, below: below("below") },
    "The engine starves below {changed: starves below|-12 °C}; at {changed: temperature|-12 °C} nothing can pass tank cock.",
  ],
])("swapReasonWords(%j) names its figures as workings do", (reason, words) => {
  expect(marked(swapReasonWords({ weight: "note", ...reason } as SwapReason, answer, "metric"))).toBe(words);
});

test("swapReasonWords(tight) tells of the point it is about, and of its pump", () => {
  const broken = { code: "broken", limit: "feed pressure" };
  const flat = (middle: number) => ({ low: middle, middle, high: middle });
  const low = { temperature: COLD, reasons: [broken], feedPressure: flat(8e3), feedLimit: 25e3 };
  expect(said({ code: "tight", point: low })).toBe(
    "It is tight at -12 °C: the pressure at the injection pump comes to 8.0 kPa, under the 25.0 kPa it needs.",
  );
});
