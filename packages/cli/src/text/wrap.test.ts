import { expect, test } from "vitest";
import { cut, fill, left, right, wrap } from "./wrap.js";

test("wrap(text) breaks between words, and hangs the lines after the first", () => {
  expect(wrap("one two three four", "  ", 9)).toEqual(["one two", "  three", "  four"]);
});

test("wrap(text) keeps a number with its unit", () => {
  expect(wrap("a limit of 20.0 kPa", "", 15)).toEqual(["a limit of", "20.0 kPa"]);
});

test("wrap(text) of nothing is no line", () => {
  expect(wrap("")).toEqual([]);
});

test("left(text, width) and right(text, width) fill up, and left cuts", () => {
  expect(left("ab", 4)).toBe("ab  ");
  expect(right("ab", 4)).toBe("  ab");
  expect(left("abcdef", 4)).toBe("abc…");
  expect(cut("abcd", 4)).toBe("abcd");
});

test("fill(items, width) never takes an item apart", () => {
  expect(fill(["one two", "three", "four"], 16)).toEqual(["one two   three", "four"]);
});
