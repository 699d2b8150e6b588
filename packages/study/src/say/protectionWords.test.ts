import { expect, test } from "vitest";
import type { LifeAnswer } from "../life/LifeAnswer.js";
import { protectionWords } from "./protectionWords.js";
import { plain } from "./words.js";

const element = (name: string, soil: number, soilAtStart = 0) => ({ name, soil, soilAtStart });
const cleanliness = [
  { place: "as delivered", code: "18/16/13" },
  { place: "at the injection pump", code: "15/13/10" },
];
const said = (more: object) => {
  const answer = { cleanliness, protection: null, elements: [], ...more } as unknown as LifeAnswer;
  return plain(protectionWords(answer) ?? ["nothing"]);
};
const end = "15/13/10 comes out at the injection pump";

test.each([
  [null, `${end}; what it asks for is not stated.`],
  [{ code: "15/13/10", kept: true }, `${end}, where 15/13/10 is asked for, which is clean enough.`],
  [{ code: "14/12/9", kept: false }, `${end}, where 14/12/9 is asked for, which is too dirty.`],
])("protectionWords(answer) with %j asked for says what comes out and whether it will do", (protection, words) => {
  expect(said({ protection })).toBe(words);
});

test("protectionWords(answer) is null where nothing was caught", () =>
  expect(said({ cleanliness: [] })).toBe("nothing"));

test.each([
  [[element("A", 3), element("B", 1)], " A does most of the work, and catches 75 % of the soil."],
  [[element("A", 3), element("B", 3), element("C", 4)], " A and B do most of the work, and catch 60 % of the soil."],
  [[element("A", 3), element("B", 3.1)], " B does most of the work, and catches 51 % of the soil."],
  [[element("A", 9, 8), element("B", 3)], " B does most of the work, and catches 75 % of the soil."],
  [[element("A", 3)], ""],
  [[element("A", 2, 2), element("B", 1, 1)], ""],
])("protectionWords(answer) of %j names the stage that catches most, those alike together", (elements, words) => {
  expect(said({ elements })).toBe(`${end}; what it asks for is not stated.${words}`);
});

test("protectionWords(answer) takes for alike what differs by rounding only, and the first of stages that do the same", () => {
  const rounded = 3 * (1 + 1e-9);
  expect(said({ elements: [element("A", 3), element("B", rounded), element("C", 4)] })).toContain(" A and B do most");
  // Far smaller amounts are alike by their share, too, and not because all of them are small.
  expect(said({ elements: [element("A", 3e-9), element("B", 3.1e-9)] })).toContain(" B does most");
  expect(said({ elements: [element("A", 1), element("B", 1), element("C", 2)] })).toContain(" A and B do most");
});
