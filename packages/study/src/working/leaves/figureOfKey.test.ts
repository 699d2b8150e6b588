import { expect, test } from "vitest";
import { figureOfKey, type KeyedQuestion, keysOf } from "./figureOfKey.js";
import type { Leaf } from "./Leaf.js";

test.each<[question: KeyedQuestion, key: string, leaf: Leaf]>([
  ["check", "share", { figure: "largest share", asked: {} }],
  ["check", "vacuum", { figure: "vacuum", asked: {} }],
  // What a curve says of no flow is asked there.
  ["curve", "vacuum at rest", { figure: "vacuum", asked: { at: 0 } }],
  ["life", "end", { figure: "end of life", asked: {} }],
  ["life", "next end with prefilter A alone new", { figure: "next end with prefilter A alone new", asked: {} }],
  ["life", "shutting of bowl by water", { figure: "shutting of bowl by water", asked: {} }],
  ["card", "vacuum alone", { figure: "vacuum now", asked: {}, of: "duplex" }],
  ["card", "vacuum idle", { figure: "vacuum now", asked: {}, of: "lowest load" }],
  ["card", "air", { figure: "least air to move", asked: {}, of: "fitted" }],
  // An element's own figure of a card is of the system with the elements changed.
  ["card", "head over fine filter", { figure: "head over fine filter", asked: {}, of: "fitted" }],
  ["gauge", "left", { figure: "running time left", asked: {}, of: "left" }],
])("figureOfKey(%j, %j) is %j", (question, key, leaf) => {
  expect(figureOfKey(question, key)).toStrictEqual(leaf);
});

test.each<[KeyedQuestion, string]>([
  ["check", "draining of bowl"],
  ["card", "next end with prefilter A alone new"],
  ["life", "head over fine filter"],
  ["life", "colour"],
  ["gauge", "vacuum"],
])("figureOfKey(%j, %j) is null, as that question says no such figure", (question, key) => {
  expect(figureOfKey(question, key)).toBeNull();
});

test("keysOf(question) leaves out what is told by an element's name", () => {
  expect(keysOf("gauge")).toStrictEqual(["left", "temperature"]);
  expect(keysOf("card")).not.toContain("head over fine filter");
  expect(keysOf("curve")).toContain("vacuum at rest");
});
