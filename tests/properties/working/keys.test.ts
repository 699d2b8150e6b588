import { card, life, lifeSentence, partialWords, type Words, waterWords } from "@thirstline/study";
import {
  cardChoice,
  choiceWorking,
  figureOfKey,
  isFigure,
  type KeyedQuestion,
  keysOf,
  leavesOf,
  type WorkedQuestion,
} from "@thirstline/study/working";
import { expect, test } from "vitest";
import { systemsIn } from "./systems.js";

const demos = systemsIn("demo");
const systems = [...demos, ...systemsIn("files")];
const all = (Object.keys(leavesOf) as WorkedQuestion[]).flatMap((question) =>
  keysOf(question).map((key) => ({ question, key })),
);

/** Keys of a sentence's live figures. */
function keysIn(question: KeyedQuestion, words: readonly Words[]) {
  return words.flat().flatMap((piece) => (typeof piece === "string" ? [] : [{ question, key: piece.figure }]));
}

test.each(all)("figureOfKey($question, $key) is a figure of some system", ({ question, key }) => {
  const leaf = figureOfKey(question, key);
  expect(leaf && systems.some(({ system }) => isFigure(system, leaf.figure, leaf.asked))).toBe(true);
});

test("figureOfKey(question, key) is null where the key is no figure of the question", () => {
  expect(figureOfKey("life", "flow share")).toBeNull();
  expect(figureOfKey("check", "share of the rise of prefilter A")).toBeNull();
});

test("figureOfKey('life', key) tells the figure of every key in what is said of a life, elements and water too", () => {
  let met = 0;
  for (const { name, system } of demos) {
    const answer = life(system);
    const water = answer.water === null ? [] : waterWords(answer.water, "metric");
    const said = [lifeSentence(answer, "metric"), ...partialWords(answer, "metric"), ...water];
    for (const { question, key } of keysIn("life", said)) {
      met++;
      const leaf = figureOfKey(question, key);
      expect(leaf && isFigure(system, leaf.figure, leaf.asked), `${name}: ${key}`).toBe(true);
    }
  }
  expect(met).toBeGreaterThan(40);
});

test("figureOfKey('card', key) tells the figure of every key on a card, the reading at part load too", () => {
  let [met, partly] = [0, 0];
  for (const { name, system } of demos) {
    const answer = card(system);
    const choice = cardChoice(system, answer);
    const said = answer.sections.flatMap(({ items }) => items.map(({ words }) => words));
    for (const { question, key } of keysIn("card", said)) {
      if (key === "vacuum idle") partly++;
      met++;
      const leaf = figureOfKey(question, key);
      expect(leaf && choiceWorking(choice, leaf), `${name}: ${key}`).not.toBeNull();
    }
  }
  expect(met).toBeGreaterThan(60);
  expect(partly).toBeGreaterThan(5);
});
