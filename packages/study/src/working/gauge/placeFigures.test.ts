import { expect, test } from "vitest";
import { placeFigures } from "./placeFigures.js";

test("placeFigures(place) says how row and line of a reading are counted", () => {
  const told = placeFigures({ row: 3, line: 7 }).map(({ name, group, make }) => [name, group, make()]);
  const plain = { unit: "1", kind: "plain" };
  const counted = (words: string) => ({ by: "words", words, from: [] });
  expect(told).toEqual([
    [
      "row",
      "Where it stands",
      { ...plain, name: "row", value: 3, origin: counted("counted from the first reading, which is 1") },
    ],
    [
      "line of the file",
      "Where it stands",
      { ...plain, name: "line of the file", value: 7, origin: counted("counted from the top of the file, which is 1") },
    ],
  ]);
});

test("placeFigures(place) has no line for a reading that was typed by itself", () => {
  expect(placeFigures({ row: 1, line: null }).map(({ make }) => make()?.value)).toEqual([1, undefined]);
});
