import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { bench, lives, nested } from "../../../../../tests/properties/working/benches.js";
import { type Scene, sceneOf } from "./Scene.js";

test("sceneOf(system, change) is one scene a setting, whichever way it is come to", () => {
  const system = bench({});
  const scene = sceneOf(system, {});
  expect(sceneOf(system, {})).toBe(scene);
  expect(scene.at({})).toBe(scene);
  const warm = sceneOf(system, { temperature: 300 });
  expect(warm).not.toBe(scene);
  expect(scene.at({ temperature: 300 })).toBe(warm);
  expect(warm.at({ temperature: null })).toBe(scene);
  expect(sceneOf(bench({}), {})).not.toBe(scene);
});

test("sceneOf(system, {}) is what check shows first: clean elements, likely figures, the file's own temperature", () => {
  expect(sceneOf(nested, {}).setting).toEqual({
    temperature: null,
    demand: null,
    at: null,
    pumped: null,
    elements: "clean",
    end: "middle",
    passage: "smooth",
    restrictions: null,
  });
});

test("scene.at({ restrictions }) tells elements filled in different ways apart", () => {
  const scene = sceneOf(structuredClone(nested), {});
  const filled = (ratio: number) => scene.at({ restrictions: new Map([["plugged", ratio]]) });
  expect(filled(2)).toBe(filled(2));
  expect(filled(3)).not.toBe(filled(2));
  expect(filled(3)).not.toBe(scene);
  // The plugged element is a medium alone, at the whole flow: three times its clean resistance costs three times as much.
  const vacuum = ({ model, suctionFlow }: typeof scene) => -model.intake.pressure(suctionFlow);
  const rise = (ratio: number) => vacuum(filled(ratio)) - vacuum(filled(1));
  expect(rise(3) / rise(2)).toBeCloseTo(2, 6);
});

test("scene.demand and scene.suctionFlow are what a search puts in, and else what is asked for", () => {
  const scene = sceneOf(bench({}), {});
  const whole = 50e-3 / 3600;
  expect(scene.demand).toBeCloseTo(whole, 15);
  expect(scene.suctionFlow).toBeCloseTo(whole, 15);
  expect(scene.at({ at: 1e-5 })).toMatchObject({ demand: 1e-5, suctionFlow: 1e-5 });
  expect(scene.at({ pumped: 2e-5 }).suctionFlow).toBe(2e-5);
  expect(scene.at({ pumped: 2e-5 }).demand).toBeCloseTo(whole, 15);
  expect(scene.at({ at: 0 }).demand).toBe(0);
  expect(scene.at({ pumped: 0 }).suctionFlow).toBe(0);
});

test("scene.flowThrough(name) is a filter's flow at the demand asked for; null for a name that is none", () => {
  const scene = sceneOf(structuredClone(nested), {}).at({ at: 1e-6 });
  expect(scene.flowThrough("plugged")).toBeCloseTo(50e-3 / 3600, 12);
  expect(scene.flowThrough("hose")).toBeNull();
});

test("scene.kept(name, make) makes a thing once, even one that is nothing", () => {
  const scene = sceneOf(bench({}), {});
  let made = 0;
  const make = () => {
    made += 1;
    return undefined;
  };
  scene.kept("nothing", make);
  scene.kept("nothing", make);
  expect(made).toBe(1);
  scene.kept("something else", make);
  expect(made).toBe(2);
});

test("scene.at(change) keeps no more scenes than a bounded number, and goes on without the oldest", () => {
  const scene = sceneOf(bench({}), {});
  const first = scene.at({ at: 1e-9 });
  for (let at = 2; at < 300; at++) scene.at({ at: at * 1e-9 });
  expect(scene.at({ at: 1e-9 })).toBe(first);
  for (let at = 300; at < 500; at++) scene.at({ at: at * 1e-9 });
  expect(scene.at({ at: 1e-9 })).not.toBe(first);
});

test("a scene's elements are clean, as they are, or at their stated drops", () => {
  const vacuum = (scene: Scene) => -scene.model.intake.pressure(scene.suctionFlow);
  const soiled = sceneOf(structuredClone(nested), {});
  expect(vacuum(soiled.at({ elements: "now" }))).toBeGreaterThan(vacuum(soiled));
  // Nothing but a tank of 0.2 m and an element to be changed at 5 kPa.
  const due = sceneOf(structuredClone(lives["past it at once"] as System), {}).at({ elements: "at change" });
  const { ambientPressure } = due.supply;
  expect(vacuum(due) + ambientPressure).toBeCloseTo(5000 - due.fuel.density * 9.80665 * 0.2, 6);
  // Without a stated drop there is none to show.
  const plain = sceneOf(bench({}), {});
  expect(plain.at({ elements: "at change" }).supply).toEqual(plain.at({ elements: "now" }).supply);
});
