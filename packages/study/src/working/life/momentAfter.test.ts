import { expect, test } from "vitest";
import { lives } from "../../../../../tests/properties/working/benches.js";
import { sceneOf } from "../scene/Scene.js";
import { filledScene, type LifeScene, lifeScene, momentsOf } from "./lifeFacts.js";
import { momentAfter } from "./momentAfter.js";

const HOUR = 3600;

function lifeOf(name: string): LifeScene {
  const life = lifeScene(sceneOf(structuredClone(lives[name] as (typeof lives)[string]), {}));
  if (!life) throw new Error(`${name} has no life`);
  return life;
}

const atOnce = () => lifeOf("past it at once");

test("momentAfter(life, time) is the start before it, the end past it, and what is followed to between them", () => {
  const life = atOnce();
  const { end, moments } = life.found;
  expect(end?.time).toBeCloseTo(8 * HOUR, 6);
  expect(momentAfter(life, -1)).toBe(moments[0]);
  expect(momentAfter(life, 0)).toBe(moments[0]);
  expect(momentAfter(life, 8 * HOUR)).toBe(end);
  expect(momentAfter(life, 8 * HOUR * (1 - 1e-12))).toBe(end);
  expect(momentAfter(life, 9 * HOUR)).toBe(end);
  const between = momentAfter(life, 2.5 * HOUR);
  expect(between?.time).toBeCloseTo(2.5 * HOUR, 6);
  // One season and one element, all but clean: it catches evenly.
  const [half, whole] = [between?.soil[0] ?? 0, momentAfter(life, 5 * HOUR)?.soil[0] ?? 0];
  expect(half).toBeGreaterThan(0);
  expect(whole / half).toBeCloseTo(2, 6);
});

test("momentAfter(life, time) of a life without an end goes on to what was asked", () => {
  const life = lifeOf("nothing large, no loads, cold and long between changes");
  expect(life.found.end ?? null).toBeNull();
  expect(momentAfter(life, 7 * HOUR)?.time).toBeCloseTo(7 * HOUR, 6);
});

test("lifeScene(scene) stands where a life ends, or at the last moment looked at", () => {
  const ended = atOnce();
  expect(ended.last).toBe(ended.found.end);
  expect(ended.place).toBe(ended.found.end?.point);
  const endless = lifeOf("nothing large, no loads, cold and long between changes");
  expect(endless.last).toBe(endless.found.moments.at(-1));
  expect(endless.place).toBe(0);
});

test("momentsOf(life) has the end once, and nothing behind it", () => {
  const life = atOnce();
  const times = momentsOf(life).map(({ time }) => time / HOUR);
  expect(times).toEqual([...new Set(times)].sort((one, two) => one - two));
  expect(times.at(-1)).toBeCloseTo(8, 9);
  expect(momentsOf(life).at(-1)).toBe(life.found.end);
  const endless = lifeOf("nothing large, no loads, cold and long between changes");
  expect(momentsOf(endless)).toEqual(endless.found.moments);
});

test("filledScene(life, moment) fills each element by name, at the duty point the life is judged at", () => {
  const life = lifeOf("by gravity, in petrol with ethanol");
  const { restriction } = life.last;
  const filled = filledScene(life, life.last).setting;
  expect([...(filled.restrictions ?? [])]).toEqual([
    ["paper 1", restriction[0]],
    ["paper 2", restriction[1]],
  ]);
  expect(restriction[0]).toBeGreaterThan(1);
  expect(filled).toMatchObject({ temperature: 288.15, demand: null, at: null, pumped: null, elements: "now" });
  expect([...(filledScene(life, null).setting.restrictions?.values() ?? [])]).toEqual([1, 1]);
});
