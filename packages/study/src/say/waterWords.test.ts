import { expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { WaterAnswer, WaterRow } from "../life/WaterAnswer.js";
import { waterWords } from "./waterWords.js";

const HOUR = 3600;
/** 3.6 g an hour of every 4 g that comes. */
const row = (element: string, more: Partial<WaterRow> = {}): WaterRow => ({
  element,
  kind: "bowl",
  efficiency: 0.9,
  rate: 1e-6,
  drainEvery: 61 * HOUR,
  shutAfter: null,
  ...more,
});
const water: WaterAnswer = {
  season: "winter",
  temperature: 263.15,
  total: 0.2,
  dissolved: 0.05,
  free: 0.15,
  carriedOn: 0.015,
  stages: [row("A")],
};
const said = (more: Partial<WaterAnswer>) => waterWords({ ...water, ...more }, "metric").map(marked);
const at = "At {coldest season|-10 °C} (winter), the coldest of the duty,";
const split = `${at} the fuel dissolves {dissolved|50.0 mg/L} of its 200 mg/L of water, and {free|150 mg/L} is free.`;
const on = "{carried on|15.0 mg/L} of free water reaches the engine.";

test.each([
  [{}, `${split} ${on}`],
  [{ stages: [] }, `${split} No stage is stated to take it out: it goes to the engine.`],
  [
    { dissolved: null },
    `${at} nobody knows how much of the 200 mg/L of water this fuel dissolves; all is taken as free. ${on}`,
  ],
])("waterWords(water with %j) says first how much is free, and what of it reaches the engine", (more, words) => {
  expect(said(more)[0]).toBe(words);
});

test("waterWords(water) has one sentence where none is free", () => {
  expect(said({ free: 0, dissolved: 0.2 })).toEqual([
    `${at} all of the 200 mg/L of water stays dissolved, and nothing is there to drain.`,
  ]);
});

const kept = "keeps {share of free water kept by A|90 %} of what comes to it, 3.60 g an hour";
const absorber = { kind: "absorber", drainEvery: null } as const;
test.each([
  [{}, `A ${kept}: drain its bowl every {draining of A|61 h} at the latest.`],
  [{ drainEvery: null }, `A ${kept}; the size of its bowl is not stated.`],
  [absorber, `A ${kept}, and swells.`],
  [{ ...absorber, shutAfter: 400 * HOUR }, `A ${kept}, and swells shut after {shutting of A by water|400 h}.`],
] as const)("waterWords(water) of a stage with %j says what it keeps, and how long it may", (more, words) => {
  expect(said({ stages: [row("A", more)] }).slice(1)).toEqual([words]);
});

test("waterWords(water) speaks of stages that do the same together, and of others apart", () => {
  const each = "A and B each keep {share of free water kept by A|90 %} of what comes to them, 3.60 g an hour";
  const same = (more: Partial<WaterRow> = {}) => said({ stages: [row("A", more), row("B", more)] }).slice(1);
  expect(same()).toEqual([`${each}: drain their bowls every {draining of A|61 h} at the latest.`]);
  expect(same(absorber)).toEqual([`${each}, and swell.`]);
  const apart = [
    { drainEvery: 62 * HOUR },
    { drainEvery: null },
    { rate: 1.1e-6 },
    { efficiency: 0.8 },
    { kind: "absorber" as const },
  ];
  for (const more of apart) expect(said({ stages: [row("A"), row("B", more)] })).toHaveLength(3);
  const shut = (element: string, hours: number) => row(element, { ...absorber, shutAfter: hours * HOUR });
  expect(said({ stages: [shut("A", 400), shut("B", 500)] })).toHaveLength(3);
  // Alike but for rounding is alike.
  expect(said({ stages: [row("A"), row("B", { rate: 1e-6 * (1 + 1e-9) })] })).toHaveLength(2);
});

test("waterWords(water) names with a stage none that does otherwise, wherever that stands", () => {
  const stages = [row("A"), row("C", { efficiency: 0.5 }), row("B")];
  const names = said({ stages })
    .slice(1)
    .map((text) => text.replace(/ (each )?keeps? .*/, ""));
  expect(names).toEqual(["A and B", "C"]);
});
