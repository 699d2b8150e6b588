import { expect, test } from "vitest";
import { cardElement, cardFacts, itemTexts } from "../../../../tests/support/cardFacts.js";
import type { CardFacts } from "../card/CardAnswer.js";
import { cardCautions } from "./cardCautions.js";
import { cardSections } from "./cardSections.js";
import { cardTitle } from "./cardTitle.js";

const said = (more: Partial<CardFacts> = {}) => itemTexts(cardCautions(cardFacts(more), "metric"));
const manual =
  "note: The machine's manual and local codes decide; where this card differs, the manual is right. Marine, aviation, " +
  "road-tank and LPG work is for licensed people.";
const burns = "note: Fuel burns: no flame, no smoking, extinguisher in reach, air the place. Stay off hot parts.";
const jet =
  "note: A jet from a high-pressure line pierces skin: keep hands away from injection lines. Skin that was hit goes to a " +
  "surgeon at once, however small the mark.";
const vapour =
  "note: Petrol vapour is heavier than air, creeps along the floor and flashes: work in the open, battery off, no spark, " +
  "no lamp that is not sealed. Let the engine go cold first.";
const relieve = (held = "") =>
  `note: Relieve pressure before a union is opened${held}: crack it slowly, under a rag, face away.`;
const gloves =
  "note: Gloves and eye protection. Catch what runs out; fuel, rags and old elements go to proper disposal, none to drain, " +
  "bilge or ground.";

test("cardCautions(facts, units) says what can hurt, for diesel the jet, for petrol its vapour", () => {
  expect(said()).toEqual([manual, burns, jet, relieve(), gloves]);
  expect(said({ fuel: "petrol" })).toEqual([manual, burns, vapour, relieve(), gloves]);
});

test("cardCautions(facts, units) tells the pressure that may stand behind a lift pump, where there is one", () => {
  const held = " (behind the lift pump there may be {relief|80.0 kPa})";
  expect(said({ relief: 80e3 })[3]).toBe(relieve(held));
  expect(said({ relief: 80e3, pump: "none" })[3]).toBe(relieve());
});

test("cardCautions(facts, units) of a file with nothing to change says so last, and the card ends there", () => {
  const none = cardFacts({ verdict: "cannot say" });
  expect(said(none).at(-1)).toBe("note: The file has no filter or screen: there is nothing to change.");
  expect(said(none)).toHaveLength(6);
  expect(cardSections(none, "metric").map(({ name }) => name)).toEqual(["cautions"]);
  expect(cardTitle(none)).toBe("Nothing to change");
});

test("cardSections(facts, units) is the work in its order, each section with its title and something in it", () => {
  const sections = cardSections(cardFacts(), "metric");
  expect(sections.map(({ name, title }) => [name, title])).toEqual([
    ["cautions", "Before anything else"],
    ["at hand", "Have at hand"],
    ["take off", "Take off"],
    ["fit", "Fit"],
    ["prime", "Prime and bleed"],
    ["water", "Water"],
    ["start", "Start and check"],
    ["otherwise", "If it reads otherwise"],
    ["log", "Write in the log"],
  ]);
  for (const { items } of sections) expect(items.length).toBeGreaterThan(1);
});

const screen = (name: string) => cardElement(name, { style: "screen" });
test.each([
  [[cardElement("A")], "Change A"],
  [[cardElement("A"), screen("S"), cardElement("B", { style: null })], "Change A and B; clean S"],
  [[screen("S"), screen("T")], "Clean S and T"],
])("cardTitle(facts) names what is changed, and what is cleaned (%#)", (elements, title) => {
  expect(cardTitle(cardFacts({ elements }))).toBe(title);
});
