import { expect, test } from "vitest";
import { meantWord, nearest } from "./nearest.js";

const keys = ["length", "bore", "surface", "roughness", "full depth", "flow", "k"];

test.each([
  ["bor", "bore"],
  ["boer", "bore"],
  ["Lenght", "length"],
  ["fullDepth", "full depth"],
  ["ruoghness", "roughness"],
  ["flw", "flow"],
])('nearest("%s") is "%s"', (word, meant) => {
  expect(nearest(word, keys)).toBe(meant);
});

test.each(["colour", "x", "", "diameter", "l".repeat(41)])('nearest("%s") finds none near enough', (word) => {
  expect(nearest(word, keys)).toBeUndefined();
});

test("nearest(word) names none where two are as near", () => {
  expect(nearest("grave", ["gravel", "graven"])).toBeUndefined();
});

test("nearest(word) takes no figure for a slip", () => {
  expect(nearest("elbow 45", ["elbow 90"])).toBeUndefined();
});

test("meantWord(word) goes by other words first, and only by its own", () => {
  expect(meantWord("pipe", ["line", "pope"], { pipe: "line" })).toBe("line");
  expect(meantWord("constructor", ["line"], {})).toBeUndefined();
});
