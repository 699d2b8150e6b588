import { expect, test } from "vitest";
import { demoSystem } from "../../../../../tests/support/fleets.js";
import { sceneOf } from "../scene/Scene.js";
import { filterAt, filtersWithPlaces } from "./filterAt.js";

test("filtersWithPlaces(scene) goes with the fuel, through tanks and banks to the engine", () => {
  const heron = demoSystem("heron");
  const [fine] = (heron.delivery ?? []).filter(({ part }) => part === "filter");
  const system = {
    ...heron,
    tanks: heron.tanks.map((tank) => ({ ...tank, path: fine ? [{ ...fine, name: "pick-up" }] : [] })),
  };
  expect(filtersWithPlaces(sceneOf(system, {})).map(({ part, path }) => [part.name, path.join(".")])).toEqual([
    ["pick-up", "tanks.0.path.0"],
    ["prefilter A", "suction.3.branches.0.0"],
    ["prefilter B", "suction.3.branches.1.0"],
    ["fine filter", "delivery.1"],
  ]);
});

test("filtersWithPlaces(scene) of a system without a delivery side has those before the engine", () => {
  expect(filtersWithPlaces(sceneOf(demoSystem("generator"), {})).map(({ part }) => part.name)).toEqual([
    "bowl filter B10",
  ]);
});

test("filterAt(scene, path) is the filter of the file and of the model; no other part is one", () => {
  const scene = sceneOf(demoSystem("heron"), {});
  const found = filterAt(scene, ["suction", 3, "branches", 1, 0]);
  expect(found?.core.name).toBe("prefilter B");
  expect(found?.given.part.name).toBe("prefilter B");
  expect(found?.given.path).toEqual(["suction", 3, "branches", 1, 0]);
  expect(found?.given.flow).toEqual({
    name: "flow",
    value: 0,
    unit: "m3/s",
    kind: "flow",
    origin: { by: "words", words: "not asked here", from: [] },
  });
  expect(filterAt(scene, ["suction", 0])).toBeNull();
  expect(filterAt(scene, ["suction", 3])).toBeNull();
});
