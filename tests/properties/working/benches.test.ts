import type { System } from "@thirstline/spec/system";
import { check, life } from "@thirstline/study";
import { type Asked, figuresOf, leafAt, proofOf, type Step, workingOf } from "@thirstline/study/working";
import { expect, test } from "vitest";
import { lifeJson } from "../../../packages/cli/src/json/lifeJson.js";
import { answerLeaves } from "./answerLeaves.js";
import * as benches from "./benches.js";
import { faultsOf } from "./faultsOf.js";
import { sampled } from "./sampled.js";

// Each machine is made anew, since steps are kept with the system they were made of.

/** Every figure of a system, as one step that rests on them all. */
function everything(system: System, asked: Asked): Step {
  const from = figuresOf(system, asked).flatMap(({ name, step }): Step[] => {
    const own = step ?? workingOf(system, name, asked)?.step;
    return own ? [own] : [];
  });
  return { name: "everything", value: from.length, unit: "1", kind: null, origin: { by: "words", words: "", from } };
}

const { everyPart, nested, twins, idle, valved, fedBackward, fuels, pumps, lives } = benches;
const machines = [
  everyPart,
  nested,
  twins,
  idle,
  valved,
  fedBackward,
  ...[fuels, pumps, lives].flatMap((some) => Object.values(some)),
];

const named = (systems: readonly System[]) => systems.map((system) => ({ name: system.name, system }));

test.each(named(machines))("figuresOf($name) come out of formulas that agree with core to 1e-9", ({ system }) => {
  const step = everything(structuredClone(system), { draws: 1 });
  expect(step.value).toBeGreaterThan(40);
  expect(proofOf({ step }).misses).toEqual([]);
});

test.each(named([everyPart, idle, valved]))("figuresOf($name) come out without flow too", ({ system }) => {
  expect(proofOf({ step: everything(structuredClone(system), { at: 0 }) }).misses).toEqual([]);
});

/** What a row of `check` has of a part, and the figure of the workings that comes to it. */
const FIGURES = {
  drop: "drop of",
  flow: "flow in",
  pressure: "pressure behind",
  reynolds: "Reynolds number in",
} as const;

test.each(named(machines.filter((system) => !Object.values(fuels).includes(system))))(
  "figuresOf($name) show of each part what check shows",
  ({ system }) => {
    const own = structuredClone(system);
    const figures = new Map(figuresOf(own).map(({ name, step }) => [name, step?.value]));
    const point = check(own).points[0];
    for (const row of [...(point?.suction ?? []), ...(point?.delivery ?? [])]) {
      for (const [key, figure] of Object.entries(FIGURES)) {
        const shown = row[key as keyof typeof FIGURES];
        const worked = figures.get(`${figure} ${row.name}`);
        const to = `${figure} ${row.name}`;
        if (shown === null || !Number.isFinite(shown)) expect(worked, to).toBeUndefined();
        else
          expect(Math.abs((worked ?? Number.NaN) - shown), to).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(shown)));
      }
      expect(figures.get(`share of ${row.name}`), row.name).toBeCloseTo(row.share, 9);
    }
  },
);

test.each(named(Object.values(lives)))("every figure of life($name) has a working that comes to it", ({ system }) => {
  const own = structuredClone(system);
  const json = lifeJson({ ...life(own), spread: null });
  const faults = faultsOf(sampled(answerLeaves(json, 1000)), {
    leafOf: (path) => leafAt("life", json, path, { ownTemperature: true }),
    workingOf: (leaf) => workingOf(own, leaf.figure, leaf.asked),
  });
  expect(faults).toEqual([]);
});
