import { expect, test } from "vitest";
import { capitalWords } from "./capitalWords.js";
import { joined } from "./joined.js";
import { fig, plain, say } from "./words.js";

test("say`...` takes nested words apart, and leaves no empty piece", () => {
  const inner = say`${fig("vacuum", "9.3 kPa")} clean`;
  expect(say`${inner}${"."}`).toEqual([{ figure: "vacuum", text: "9.3 kPa" }, " clean", "."]);
  expect(say``).toEqual([]);
});

test("capitalWords(words) begins with a large letter, and leaves a figure as it is", () => {
  expect(plain(capitalWords(say`the vacuum is ${fig("vacuum", "9.3 kPa")}`))).toBe("The vacuum is 9.3 kPa");
  const figure = say`${fig("count", "a few")} readings`;
  expect(capitalWords(figure)).toEqual(figure);
});

test.each([
  [[], undefined, ""],
  [["a"], undefined, "a"],
  [["a", "b"], undefined, "a, and b"],
  [["a", "b", "c"], undefined, "a, b, and c"],
  [["a", "b", "c"], "; ", "a; b; c"],
])("joined(%j, %j) puts clauses one after another", (parts, between, text) => {
  expect(
    plain(
      joined(
        parts.map((part) => [part]),
        between,
      ),
    ),
  ).toBe(text);
});
