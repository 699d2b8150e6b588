import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { proofOf } from "../proof.js";
import type { Step } from "../Step.js";
import { chanceErrorStep, chanceStep, countStep, type Drawn, quantileStep } from "./drawn.js";

const system = {
  tanks: [{ name: "tank" }],
  suction: [
    { part: "line", name: "hose" },
    { part: "filter", name: "prefilter", medium: { points: [{}, {}] } },
  ],
  spreads: [
    { path: ["demand", "return"], low: 1.55556e-5, high: 2.33333e-5 },
    { path: ["suction", 0, "bore"], low: 0.0076, high: 0.0084 },
    { path: ["suction", 1, "medium", "points", 0, "drop"], low: 3000, high: 5000 },
    // The same unknown as the one before it.
    { path: ["suction", 1, "medium", "points", 1, "drop"], low: 6000, high: 9000, group: 2 },
    { path: ["suction", 1, "capacityTest", "soil"], low: 0.02, high: 0.06, group: 4 },
    { path: ["tanks", 0, "lowDepth"], low: 0.1, high: 0.2 },
  ],
} as unknown as System;

/** Twenty draws, 0 to 19: two in each of ten sets. */
const twenty = Float64Array.from({ length: 20 }, (_, at) => at);
const drawnOf = (draws: Float64Array, more: Partial<Drawn> = {}): Drawn => ({ system, draws, seed: 7, ...more });
const shown = { name: "vacuum, 10 % of draws", unit: "Pa", kind: "vacuum" } as const;
const rule =
  "Halton's sequence turned by a seeded shift, in ten sets; each spread is drawn evenly between its ends, or evenly over its logarithm where one end is more than 1.5 times the other; sorted, the value";

const drawsIn = ({ origin }: Step) => (origin.by === "draws" ? origin : null);

test.each([
  ["low", 2, "10 %"],
  ["middle", 10, "50 %"],
  ["high", 18, "90 %"],
] as const)("quantileStep(drawn, %j, shown) is what so many of the draws stay below", (which, value, share) => {
  // Of twenty sorted values two lie below the third.
  const step = quantileStep(drawnOf(twenty.toReversed()), which, shown);
  expect(step).toMatchObject({ ...shown, value });
  expect(drawsIn(step)?.words).toBe(`20 draws with seed 7: ${rule} that ${share} of them stay below`);
  expect(drawsIn(step)?.from).toEqual([]);
});

test("quantileStep(drawn, which, shown) counts only draws that came to a figure", () => {
  const some = Float64Array.from([Number.NaN, 5, Number.NaN]);
  const step = quantileStep(drawnOf(some), "middle", shown);
  expect(step.value).toBe(5);
  expect(drawsIn(step)?.words).toMatch(/^1 draws with seed 7: /);
  expect(countStep(drawnOf(some), "draws")).toEqual({
    name: "draws",
    value: 1,
    unit: "1",
    kind: "plain",
    origin: { by: "words", words: "counted: the draws of seed 7 that made a system that can be", from: [] },
  });
});

test("what varies is told by its place in the file, each unknown once, and what varies besides after it", () => {
  const varying = (more: Partial<Drawn>) => drawsIn(quantileStep(drawnOf(twenty, more), "low", shown))?.varying;
  const all = [
    "demand.return, 0.00001556 to 0.00002333 in SI",
    "suction[0].line.bore, 0.0076 to 0.0084 in SI",
    "suction[1].filter.flow test[0].drop, 3000 to 5000 in SI",
    "suction[1].filter.capacity test.soil, 0.02 to 0.06 in SI",
    "tank.low depth, 0.1 to 0.2 in SI",
  ];
  expect(varying({})).toEqual(all);
  expect(varying({ only: (place) => place < 2, also: ["handbook capacity"] })).toEqual([
    ...all.slice(0, 2),
    "handbook capacity",
  ]);
  const { spreads: _, ...sure } = system;
  expect(varying({ system: sure as System })).toEqual([]);
});

const name = "chance that a limit is broken";

test("chanceStep(drawn, name, is) is the mean over the sets, each counted", () => {
  // Of the ten sets of two each has one draw of ten or more; of draws from 15 on only five sets have one.
  const step = chanceStep(drawnOf(twenty), name, (draw) => draw >= 15);
  expect(step).toMatchObject({ name, value: 0.25, unit: "1" });
  expect(proofOf({ step }).misses).toEqual([]);
  const sets = step.origin.by === "formula" ? (step.origin.inputs[0]?.steps ?? []) : [];
  expect(sets.map(({ value }) => value)).toEqual([0, 0, 0, 0, 0, 0.5, 0.5, 0.5, 0.5, 0.5]);
  expect(sets[9]).toMatchObject({ name: `${name} in set 10`, unit: "1", kind: "ratio" });
  expect(sets[9] && drawsIn(sets[9])).toMatchObject({ words: "2 draws of set 10 with seed 7, counted", from: [] });
});

test("chanceErrorStep(drawn, name, is) is what the sets disagree by", () => {
  const step = chanceErrorStep(drawnOf(twenty), name, (draw) => draw >= 15);
  // Ten shares a quarter off their mean: a variance of 10/9 of a sixteenth, over ten.
  expect(step.name).toBe(`standard error of ${name}`);
  expect(step.value).toBeCloseTo(Math.sqrt(1 / 9 / 16), 12);
  expect(proofOf({ step }).misses).toEqual([]);
  const m = step.origin.by === "formula" ? step.origin.inputs.find(({ letter }) => letter === "m")?.steps[0] : null;
  expect(m).toMatchObject({ name: "chance over all sets", value: 0.25 });
});

test("chanceStep and chanceErrorStep leave out draws that came to nothing, and sets that have no others", () => {
  // Two sets have a draw, and one of those a second that came to nothing.
  const some = Float64Array.from([1, 3, ...Array<number>(8).fill(Number.NaN), Number.NaN, 5]);
  const step = chanceStep(drawnOf(some), name, (draw) => draw > 4);
  expect(step.value).toBe(0.25);
  const sets = step.origin.by === "formula" ? (step.origin.inputs[0]?.steps ?? []) : [];
  expect(sets.map((one) => [one.name, one.value, drawsIn(one)?.words])).toEqual([
    [`${name} in set 1`, 0, "1 draws of set 1 with seed 7, counted"],
    [`${name} in set 2`, 0.5, "2 draws of set 2 with seed 7, counted"],
  ]);
  const n = step.origin.by === "formula" ? step.origin.inputs.find(({ letter }) => letter === "n")?.steps[0] : null;
  expect(n).toMatchObject({ name: "how many sets", value: 2, origin: { by: "words", words: "counted" } });
  const error = chanceErrorStep(drawnOf(some), name, (draw) => draw > 4);
  expect(error.value).toBeCloseTo(0.25, 12);
  expect(proofOf({ step: error }).misses).toEqual([]);
});

test("chanceErrorStep(drawn, name, is) of one set alone says that it shows no error", () => {
  const step = chanceErrorStep(drawnOf(Float64Array.from([1])), name, () => true);
  expect(step).toEqual({
    name,
    value: 0,
    unit: "1",
    kind: "ratio",
    origin: { by: "words", words: "one set of draws alone shows no error", from: [] },
  });
});
