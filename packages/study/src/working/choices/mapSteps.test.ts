import { expect, test } from "vitest";
import { vacuumSum } from "../formulas/path.js";
import type { Step } from "../Step.js";
import { asked, fromFile, fromSource, inWords, searched, worked } from "../worked.js";
import { mapSteps } from "./mapSteps.js";

const plain = (name: string, value = 1) => ({ name, value, unit: "Pa" });
const leaf = fromFile("tank.low depth", plain("leaf"));

test.each<[by: string, step: Step]>([
  ["formula", worked(vacuumSum, { d: [leaf, leaf] })],
  ["words", inWords("counted", plain("top"), [leaf])],
  ["draws", { ...plain("top"), kind: null, origin: { by: "draws", words: "drawn", varying: [], from: [leaf] } }],
  [
    "search, on the left",
    searched("found", plain("top"), [
      { words: "it is", left: leaf, relation: "=", right: fromSource("a test", plain("right")) },
    ]),
  ],
  [
    "search, on the right",
    searched("found", plain("top"), [
      { words: "it is", left: fromSource("a test", plain("left")), relation: "=", right: leaf },
    ]),
  ],
])("mapSteps(step, change) reaches what is inside a step by %s, and leaves the step given as it was", (_, step) => {
  const before = structuredClone(step.origin.by === "formula" ? step.origin.inputs : step);
  const seen: string[] = [];
  const told = mapSteps(step, (one) => {
    seen.push(one.name);
    return one.name === "leaf" ? { ...one, name: "changed" } : one;
  });
  // What is inside comes before what rests on it, and what is shared comes once.
  expect(seen.filter((name) => name === "leaf")).toHaveLength(1);
  expect(seen.at(-1)).toBe(step.name);
  const inside = JSON.stringify(told.origin);
  expect(inside).toContain('"changed"');
  expect(inside).not.toContain('"leaf"');
  expect(step.origin.by === "formula" ? step.origin.inputs : step).toEqual(before);
});

test.each([leaf, asked("to", plain("asked")), fromSource("a book", plain("published"))])(
  "mapSteps(step, change) puts a step that rests on nothing through alone",
  (step) => {
    expect(mapSteps(step, (one) => ({ ...one, value: 2 }))).toEqual({ ...step, value: 2 });
  },
);

test("mapSteps(step, change) keeps what two steps share shared", () => {
  const middle = inWords("counted", plain("middle"), [leaf]);
  const told = mapSteps(worked(vacuumSum, { d: [middle, middle, leaf] }), (one) => one);
  const steps = told.origin.by === "formula" ? (told.origin.inputs[0]?.steps ?? []) : [];
  expect(steps[0]).toBe(steps[1]);
  expect(steps[0]?.origin.by === "words" && steps[0].origin.from[0]).toBe(steps[2]);
});
