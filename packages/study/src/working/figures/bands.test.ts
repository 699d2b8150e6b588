import { expect, test } from "vitest";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { demoSystem } from "../../../../../tests/support/fleets.js";
import { proofOf } from "../proof.js";
import type { Scene } from "../scene/Scene.js";
import { sceneOf } from "../scene/Scene.js";
import { fromSource } from "../worked.js";
import { withEnds } from "./bands.js";

/** Its one element's resistance is estimated from its rating. */
const unsure = sceneOf(demoSystem("dewatering-paper"), {});
const sure = sceneOf(demoSystem("pickup-single"), {});

/** What a figure comes to at the likely figures, the low ones and the high ones; null for none. */
function ends(scene: Scene, unit: string, values: Readonly<Record<"low" | "middle" | "high", number | null>>) {
  const of = ({ setting }: Scene) => {
    const value = values[setting.end];
    return value === null
      ? null
      : fromSource("a test", { name: `at the ${setting.end} figures`, value, unit, kind: "pressure" });
  };
  const makers = withEnds(scene, { name: "a figure", group: "Figures", of });
  expect(makers.map(({ name, group }) => [name, group])).toEqual([
    ["a figure", "Figures"],
    ["a figure, low end", "Figures"],
    ["a figure, high end", "Figures"],
  ]);
  return makers.map(({ make }) => make());
}

test.each([
  // The high figures of a resistance may give the low end of a pressure.
  ["Pa", { low: 9, middle: 5, high: 4 }, [5, 4, 9]],
  ["m3/s", { low: 1, middle: 2, high: 3 }, [2, 1, 3]],
  ["1", { low: 3, middle: 2, high: 1 }, [2, 1, 3]],
  // Where an end has none, it is the other's to say which is the low one.
  ["m3/s", { low: Infinity, middle: 2, high: 3 }, [2, 3, Infinity]],
  ["m3/s", { low: 3, middle: 2, high: Infinity }, [2, 3, Infinity]],
  ["m3/s", { low: Infinity, middle: Infinity, high: Infinity }, [Infinity, Infinity, Infinity]],
] as const)("withEnds(scene, figure) in %s finds the lower and the higher of %j", (unit, values, expected) => {
  const steps = ends(unsure, unit, values);
  expect(steps.map((step) => step?.value)).toEqual(expected);
  expect(steps.map((step) => step?.name)).toEqual(["a figure", "a figure, low end", "a figure, high end"]);
  for (const step of steps) if (step) expect(proofOf({ step }).misses).toEqual([]);
});

test("withEnds(scene, figure) makes an end of both, by the kind that the figure has", () => {
  const [, low] = ends(unsure, "Pa", { low: 9, middle: 5, high: 4 });
  expect(stepLines(low ? [low] : [])[0]).toBe("a figure, low end (pressure, Pa) | lower-end: p[] a figure");
  const [, , high] = ends(unsure, "m3/s", { low: 1, middle: 2, high: 3 });
  expect(stepLines(high ? [high] : [])[0]).toMatch("a figure, high end (pressure, m3/s) | highest-flow: Q[] a figure");
});

test("withEnds(scene, figure) has no end where one of both is missing, or where no formula tells the lower of a unit", () => {
  expect(ends(unsure, "Pa", { low: null, middle: 5, high: 4 }).slice(1)).toEqual([null, null]);
  expect(ends(unsure, "Pa", { low: 4, middle: 5, high: null }).slice(1)).toEqual([null, null]);
  expect(ends(unsure, "kg", { low: 3, middle: 5, high: 4 }).slice(1)).toEqual([null, null]);
});

test("withEnds(scene, figure) of a system that is known for sure has one figure by three names", () => {
  const steps = ends(sure, "kg", { low: null, middle: 5, high: null });
  expect(steps.map((step) => [step?.name, step?.value])).toEqual([
    ["a figure", 5],
    ["a figure, low end", 5],
    ["a figure, high end", 5],
  ]);
  expect(ends(sure, "Pa", { low: 1, middle: null, high: 2 })).toEqual([null, null, null]);
});
