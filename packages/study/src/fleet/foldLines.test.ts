import { expect, test } from "vitest";
import { foldLines } from "./foldLines.js";

test.each([
  ["a", 75, 75],
  ["é", 37, 37],
  ["漢", 25, 25],
  ["🚢", 18, 18],
])("foldLines(text) of lines of %s folds after as many as 75 octets hold: %i", (letter, fits, first) => {
  expect(foldLines(letter.repeat(fits))).toBe(letter.repeat(fits));
  expect(foldLines(letter.repeat(fits + 1))).toBe(`${letter.repeat(first)}\r\n ${letter}`);
});

test("foldLines(text) counts the space that a continued line begins with", () => {
  expect(foldLines("a".repeat(75 + 74))).toBe(`${"a".repeat(75)}\r\n ${"a".repeat(74)}`);
  expect(foldLines("a".repeat(75 + 75))).toBe(`${"a".repeat(75)}\r\n ${"a".repeat(74)}\r\n a`);
});

test("foldLines(text) folds anew what was folded otherwise, each line by itself", () => {
  expect(foldLines("SUMMARY:ab\r\n cd\r\n\tef\r\nEND:X\r\n")).toBe("SUMMARY:abcdef\r\nEND:X\r\n");
});

test("foldLines(text) knows the ends of each size of letter", () => {
  // 0x7f is one octet and 0x80 two, 0x7ff two and 0x800 three, 0xffff three and 0x10000 four.
  const rest = (letter: string, octets: number) => foldLines("a".repeat(75 - octets) + letter).includes("\r\n");
  const sizes: readonly (readonly [string, number])[] = [
    ["\x7f", 1],
    ["\x80", 2],
    ["\u07ff", 2],
    ["\u0800", 3],
    ["\uffff", 3],
    ["\u{10000}", 4],
  ];
  for (const [letter, octets] of sizes) {
    expect([letter, rest(letter, octets), rest(letter, octets - 1)]).toEqual([letter, false, true]);
  }
});
