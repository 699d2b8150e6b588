import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { plainSystem } from "../../../../../tests/support/plainSystem.js";
import { fromFile } from "../worked.js";
import { atLevel } from "./modelSteps.js";

const hose: System["suction"][number] = { part: "line", name: "hose", length: 1, bore: 0.008, roughness: 1.5e-6 };
const tanks = [0.8, 0.6].map((fullDepth, at) => ({
  name: `tank ${at}`,
  fullDepth,
  lowDepth: 0.2,
  vent: { kind: "open" as const },
  path: [hose],
}));
const system: System = { ...plainSystem, tanks };
const low = (scene: ReturnType<typeof atLevel>["scene"]) => scene.built.tanks.map(({ depthLow }) => depthLow);

test("atLevel(system, depth, change) puts every tank at the level noted, or half-way between full and low", () => {
  // A copy, since what is made of a level is kept with its system.
  const own = { ...system };
  expect(low(atLevel(own, 0.33, {}).scene)).toEqual([0.33, 0.33]);
  expect(low(atLevel(own, undefined, {}).scene)).toEqual([0.5, 0.4].map((depth) => expect.closeTo(depth, 12)));
  expect(low(atLevel(own, 0, {}).scene)).toEqual([0, 0]);
  expect(own.tanks.map(({ lowDepth }) => lowDepth)).toEqual([0.2, 0.2]);
});

test("atLevel(system, depth, change) shares what is made of a level, whatever else is asked", () => {
  const one = { ...system };
  const first = atLevel(one, 0.33, {}).scene;
  expect(atLevel(one, 0.33, {}).scene.built).toBe(first.built);
  expect(atLevel(one, 0.34, {}).scene.built).not.toBe(first.built);
  const change = { temperature: 280, demand: 1e-5 };
  expect(atLevel(one, 0.33, change).scene.setting).toMatchObject({ ...change, elements: "now" });
});

test("atLevel(system, depth, change) tells a low depth as the level noted, or taken", () => {
  const step = fromFile("tanks[0].low depth", { name: "depth", value: 0.3, unit: "m", part: ["tanks", 0] });
  const of = (depth: number | undefined) => atLevel(system, depth, {}).told(step).origin;
  expect([of(0.3), of(undefined)]).toEqual([
    { by: "source", source: "the level noted at the reading: low depth" },
    { by: "source", source: "a level half-way between full and low: low depth" },
  ]);
});
