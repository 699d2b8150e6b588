import { expect, test } from "vitest";
import { cardFacts, itemTexts } from "../../../../tests/support/cardFacts.js";
import type { CardFacts, CardPriming } from "../card/CardAnswer.js";
import { cardPriming } from "./cardPriming.js";

const said = (more: Partial<CardFacts> = {}) => itemTexts(cardPriming(cardFacts(more), "metric"));
const bleed =
  "step: Bleed from the tank on, each until fuel runs without bubbles, and shut it while it still runs: 1 A, 2 the lift " +
  "pump's outlet, 3 the injection pump.";
const unions = "step: Injector unions last, and only as the manual says. Wipe up every drop.";
const wipe = "step: Wipe up every drop before starting.";
const petrol =
  "step: Move fuel up until it comes without bubbles, from the tank on: 1 A, 2 the lift pump's outlet, 3 the injection " +
  "pump. Petrol systems seldom have bleed screws; loosen no union near anything hot.";

test("cardPriming(facts, units) opens, moves the air, bleeds in order and wipes up", () => {
  expect(said()).toEqual([
    "step: Open the cock, close the tank cap. Air to move with the primer: {most air|1.0 L}; the sweep of a stroke is not " +
      "stated, so strokes are not counted.",
    bleed,
    unions,
  ]);
});

test.each([
  ["diesel", "fixed", [bleed, unions]],
  ["diesel", "none", [bleed, wipe]],
  ["petrol", "fixed", [petrol, wipe]],
  ["petrol", "none", [petrol, wipe]],
] as const)("cardPriming(facts, units) of %s with the pump %j bleeds what it has", (fuel, pump, words) => {
  expect(said({ fuel, pump }).slice(1)).toEqual(words);
});

const { priming } = cardFacts();
const air = (more: Partial<CardPriming>, pump: CardFacts["pump"] = "fixed") =>
  said({ pump, priming: { ...priming, ...more } })[0]?.replace("step: Open the cock, close the tank cap. ", "");

test("cardPriming(facts, units) opens the file's own cock by its name", () => {
  expect(said({ cock: "tank cock" })[0]).toContain("step: Open tank cock, close the tank cap. Air to move");
});

const stroke = { stroke: 25e-6, strokes: { least: 155, most: 277 } };
const counted = "at 25 mL a stroke and 80 % of it moving (assumed).";
test.each([
  [
    { ...stroke, least: 3.1e-3, most: 5.54e-3 },
    `Hand primer: {strokes|155} to {most strokes|277} strokes for {air|3.1 L} ({most air|5.5 L} if lines ran empty) of air, ${counted}`,
  ],
  [
    { ...stroke, least: 3.1e-3, most: 3.1e-3, strokes: { least: 155, most: 155 } },
    `Hand primer: {most strokes|155} strokes for {most air|3.1 L} of air, ${counted}`,
  ],
  [
    { ...stroke, least: 0, most: 2.4e-3, strokes: { least: 0, most: 120 } },
    `Hand primer: up to {most strokes|120} strokes for {most air|2.4 L} of air, ${counted}`,
  ],
  [
    { ...stroke, least: 3.1e-3, most: 5.54e-3, unknown: ["A"] },
    `Hand primer: {strokes|155} to {most strokes|277} strokes for {air|3.1 L} ({most air|5.5 L} if lines ran empty) of air, more by what A holds, ${counted}`,
  ],
  [
    { ...stroke, strokes: null },
    "Air to move with the primer: {most air|1.0 L}; the sweep of a stroke is not stated, so strokes are not counted.",
  ],
  [
    { least: 0, most: 2.4e-3, unknown: ["A", "B"] },
    "Air to move with the primer: up to {most air|2.4 L}, more by what A and B hold; the sweep of a stroke is not stated, so strokes are not counted.",
  ],
  [{ least: 0, most: 0 }, "Next to no air came in."],
  [
    { least: 0, most: 0, unknown: ["A", "B"] },
    "How much air to move is not known: the file states no body for A and B.",
  ],
])("cardPriming(facts, units) of %j says how much air there is and what moves it", (more, words) => {
  expect(air(more)).toBe(words);
});

test.each([
  [{}, "The head pushes the air out by itself: {most air|1.0 L}."],
  [{ ...stroke, unknown: ["A"] }, "The head pushes the air out by itself: {most air|1.0 L}, more by what A holds."],
  [{ least: 0, most: 0.5e-3 }, "The head pushes the air out by itself: up to {most air|500 mL}."],
  [{ least: 0, most: 0 }, "Next to no air came in."],
])("cardPriming(facts, units) leaves air to the head where there is no pump: %j", (more, words) => {
  expect(air(more, "none")).toBe(words);
});
