import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { figureLines } from "../../../../../tests/properties/working/figureLines.js";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { demoSystem } from "../../../../../tests/support/fleets.js";
import { curve } from "../../curve/curve.js";
import type { Asked } from "../Asked.js";
import { proofOf } from "../proof.js";
import { sceneOf } from "../scene/Scene.js";
import { curveFigures } from "./curveFigures.js";

const demos = new Map(["pickup-single", "workboat"].map((name) => [name, demoSystem(name)] as const));
const demoOf = (name: string) => demos.get(name) as System;
const DEMAND = "demand at a point of the curve";

function figure(name: string, asked: Asked, demo = "pickup-single") {
  const { temperature = null, demand = null, at = null } = asked;
  const makers = curveFigures(sceneOf(demoOf(demo), { temperature, demand, at }), asked);
  const step = makers.find((one) => one.name === name)?.make() ?? null;
  if (step) expect(proofOf({ step }).misses).toEqual([]);
  return step;
}
const endOf = (demo: string, more = {}) => curve(demoOf(demo), more).points[0]?.demand.at(-1) ?? Number.NaN;

test.each([
  ["pickup-single", {}],
  ["pickup-single", { demand: 1e-5 }],
  ["workboat", {}],
  // The pump moves six times as much, too far off to be seen.
  ["pickup-single", { demand: 5e-6 }],
] as const)("curveFigures(scene, asked) ends the curve where the curve ends: %s, asked %j", (demo, asked) => {
  const step = figure("end of the curve", asked, demo);
  expect(step?.value).toBeCloseTo(endOf(demo, asked), 12);
  const [b] = step?.origin.by === "formula" ? step.origin.inputs : [];
  expect(stepLines(b?.steps ?? [])).toEqual(["how far beyond (plain, 1) | source common practice, no source | 1.15"]);
});

test("curveFigures(scene, asked) takes the end that was asked for", () => {
  const step = figure("end of the curve", { to: 2e-4 });
  expect(stepLines(step ? [step] : [])).toEqual(["end of the curve (flow, m3/s) | asked to | 0.0002"]);
});

test("curveFigures(scene, asked) tells which point of the curve a demand is, where one is asked for", () => {
  expect(figure(DEMAND, {})).toBeNull();
  const to = 2e-4;
  const step = figure(DEMAND, { to, at: 5e-5, points: 5 });
  expect([step?.value, ...stepLines(step ? [step] : [])]).toEqual([
    5e-5,
    expect.stringMatching(/\| curve-point: Q_e end of the curve; i place of the point, from 0; n steps of the curve$/),
    "end of the curve (flow, m3/s) | asked to | 0.0002",
    "place of the point, from 0 (plain, 1) | words counted:  | 1",
    "steps of the curve (plain, 1) | words counted:  | 4",
  ]);
  // Sixty steps where nothing else is asked.
  const usual = figure(DEMAND, { to, at: to / 2 });
  expect(stepLines(usual ? [usual] : []).slice(2)).toEqual([
    "place of the point, from 0 (plain, 1) | words counted:  | 30",
    "steps of the curve (plain, 1) | words counted:  | 60",
  ]);
});

test("curveFigures(scene, asked) tells terminal drops, and what the elements cost now at the file's own temperature", () => {
  const pickup = demoOf("pickup-single");
  const system = {
    ...pickup,
    delivery: (pickup.delivery ?? []).map((part) => (part.part === "filter" ? { ...part, terminalDrop: 25e3 } : part)),
  };
  const makers = curveFigures(sceneOf(system, { temperature: 270 }), {}).slice(2);
  expect(figureLines(makers.slice(0, 1))).toEqual([
    "fine filter F3: terminal drop of fine filter F3 = 25000 | terminal drop of fine filter F3 (pressure, Pa) @ delivery.1 | file delivery[1].filter.terminal drop | 25000",
  ]);
  expect(makers.slice(1).map(({ name }) => name)).toContain(
    "drop of fine filter F3 as it is, at the file's own temperature",
  );
  expect(makers.slice(1).every(({ name }) => name.startsWith("drop of "))).toBe(true);
  const inside = (makers.at(-1)?.make() ? stepLines([makers.at(-1)?.make()].flatMap((step) => step ?? [])) : []).join(
    "\n",
  );
  expect(inside).toContain("temperature (temperature, K) | file fuel.temperature | 288.15");
  // Without a terminal drop nothing is said of elements past it.
  expect(curveFigures(sceneOf(pickup, {}), {})).toHaveLength(2);
});
