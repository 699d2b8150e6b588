import { figureOfKey, isFigure, keysOf, leavesOf, type WorkedQuestion } from "@thirstline/study/working";
import { expect, test } from "vitest";
import { systemsIn } from "./systems.js";

const systems = [...systemsIn("demo"), ...systemsIn("files")];
const all = (Object.keys(leavesOf) as WorkedQuestion[]).flatMap((question) =>
  keysOf(question).map((key) => ({ question, key })),
);

test.each(all)("figureOfKey($question, $key) is a figure of some system", ({ question, key }) => {
  const leaf = figureOfKey(question, key);
  expect(leaf && systems.some(({ system }) => isFigure(system, leaf.figure, leaf.asked))).toBe(true);
});

test("figureOfKey(question, key) is null where the key does not tell its figure", () => {
  expect(figureOfKey("life", "flow share")).toBeNull();
});
