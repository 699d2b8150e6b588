import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { demoSystem } from "../../../../../tests/support/fleets.js";
import { check } from "../../check/check.js";
import { proofOf } from "../proof.js";
import { sceneOf } from "../scene/Scene.js";
import { largestShare, rowFigures } from "./rowFigures.js";

const figuresOf = (system: System, change: Parameters<typeof sceneOf>[1] = {}) => rowFigures(sceneOf(system, change));
const figure = (system: System, name: string, change?: Parameters<typeof sceneOf>[1]) =>
  figuresOf(system, change)
    .find((one) => one.name === name)
    ?.make() ?? null;

test.each(["heron", "generator", "lorry"])(
  "rowFigures(scene) comes to the rows of check, and every figure proves: %s",
  (demo) => {
    const system = demoSystem(demo);
    const [point] = check(system).points;
    const makers = figuresOf(system);
    const value = (name: string) => {
      const step = makers.find((one) => one.name === name)?.make() ?? null;
      if (step) expect([name, proofOf({ step }).misses]).toEqual([name, []]);
      return step?.value ?? null;
    };
    for (const row of [...(point?.suction ?? []), ...(point?.delivery ?? [])]) {
      const near = (own: number | null | undefined) =>
        own === null || own === undefined ? null : expect.closeTo(own, 6);
      const found = ["drop of", "share of", "pressure behind", "depth of"].map((what) => value(`${what} ${row.name}`));
      expect([row.name, ...found]).toEqual([row.name, near(row.drop), near(row.share), near(row.pressure), row.depth]);
      expect(value(`flow in ${row.name}`)).toBeCloseTo(row.flow ?? Number.NaN, 12);
    }
  },
);

test("rowFigures(scene) names a figure by its part, whose place it carries", () => {
  const [drop] = figuresOf(demoSystem("heron")).filter(({ name }) => name === "drop of prefilter B");
  expect([drop?.group, drop?.make()?.name, drop?.make()?.part]).toEqual([
    "prefilter B",
    "drop of prefilter B",
    ["suction", 3, "branches", 1, 0],
  ]);
  const depth = figure(demoSystem("heron"), "depth of prefilter B");
  expect(stepLines(depth ? [depth] : [])).toEqual([
    "depth of prefilter B (plain, 1) @ suction.3.branches.1.0 | words counted: the banks it stands inside:  | 1",
  ]);
});

test("rowFigures(scene) says of a part that nothing flows through that it has no share", () => {
  const heron = demoSystem("heron");
  const shut = {
    ...heron,
    suction: heron.suction.map((part) =>
      part.part === "bank"
        ? {
            ...part,
            branches: part.branches.map((branch, at) =>
              at === 0 ? branch.map((one) => (one.part === "filter" ? { ...one, blocked: true } : one)) : branch,
            ),
          }
        : part,
    ),
  } as System;
  const share = figure(shut, "share of prefilter A");
  expect(stepLines(share ? [share] : [])[0]).toMatch(
    /^share of prefilter A \(ratio, 1\) @ .* \| words nothing flows through it: {2}\| 0$/,
  );
  expect(figure(shut, "drop of prefilter A")).toBeNull();
});

/** Its right tank stands so full, and so little is asked for, that fuel runs from it into the left one. */
const uneven = (): System => {
  const lorry = demoSystem("lorry");
  return { ...lorry, tanks: lorry.tanks.map((tank, at) => ({ ...tank, lowDepth: at === 0 ? 0.06 : 0.5 })) };
};

test("rowFigures(scene) tells the flow back into a tank, turned round", () => {
  const back = figure(uneven(), "flow back into left tank", { demand: 1e-6 });
  expect(back?.value).toBeGreaterThan(0);
  expect(figure(uneven(), "flow in left tank", { demand: 1e-6 })?.value).toBe(-(back?.value ?? Number.NaN));
  expect(stepLines(back ? [back] : [])[0]).toMatch(
    "flow back into left tank (flow, m3/s) @ tanks.0 | words the flow from this tank, turned round: flow through the branch",
  );
  expect(figuresOf(demoSystem("lorry")).some(({ name }) => name.startsWith("flow back"))).toBe(false);
});

test("rowFigures(scene) tells by how much an estimate may be off, of what is estimated only", () => {
  const factor = figure(demoSystem("dewatering-paper"), "estimate factor of paper pick-up filter");
  expect(factor && proofOf({ step: factor }).misses).toEqual([]);
  expect(factor?.value).toBeGreaterThan(1);
  expect(figuresOf(demoSystem("heron")).some(({ name }) => name.startsWith("estimate factor"))).toBe(false);
});

test("largestShare(scene) is the most of the shares on the way itself, and none where nothing costs", () => {
  for (const demo of ["heron", "generator"]) {
    const system = demoSystem(demo);
    const most = check(system).points[0]?.most?.share;
    expect(largestShare(sceneOf(system, { elements: "now" }))?.value).toBeCloseTo(most ?? Number.NaN, 9);
  }
  expect(largestShare(sceneOf(demoSystem("heron"), { elements: "now" }))?.name).toBe("largest share");
});
