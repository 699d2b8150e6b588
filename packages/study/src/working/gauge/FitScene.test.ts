import { expect, test } from "vitest";
import { EVENLY, oneGauge, plainReadings } from "../../../../../tests/support/gaugeScenes.js";
import { FitScene, fitScene } from "./FitScene.js";

test("FitScene.names tell what is fitted in the fit's order, whatever terms there are", () => {
  const { explained } = oneGauge({
    readings: plainReadings(EVENLY, (at) => ({ row: at + 21, changed: false })),
    terms: [
      { kind: "outlier", at: 1 },
      { kind: "step", at: 2 },
      { kind: "thin", at: 3 },
      { kind: "cold", below: 280 },
      { kind: "fall" },
    ],
  });
  expect(explained.names).toEqual([
    "demand off, in standard deviations",
    "zero off, in standard deviations",
    "logarithm of the growth",
    "logarithm of the soil at the start",
    "size of what stands off at reading 22, in standard deviations",
    "size of the step from reading 23 on, in resistance over clean",
    "size of the flow that is missing from reading 24 on, as a share",
    "size of what cold adds, as a share of the resistance every 10 K",
    "size of what is lost from the first reading to the last, in resistance over clean",
  ]);
  expect(explained.fitted.model.count).toBe(explained.names.length);
});

test("FitScene.names leave out growth where there is none, and a start that is known", () => {
  const of = (changed: boolean, law: "none" | "cake") =>
    oneGauge({
      readings: plainReadings(EVENLY.slice(0, 5), (at) => ({ changed: changed && at === 0 })),
      laws: [law],
    }).explained.names.slice(2);
  expect(of(true, "cake")).toEqual(["logarithm of the growth"]);
  expect(of(false, "none")).toEqual(["logarithm of the soil at the start"]);
  expect(of(true, "none")).toEqual([]);
});

test("fitScene(given, plain) is one for each fit, and keeps what is made", () => {
  const { explained, given } = oneGauge({ readings: plainReadings(EVENLY.slice(0, 5)), laws: ["cake", "none"] });
  const { facts, side, weighed, fitted } = explained;
  const plain = { facts, side, weighed, fitted };
  expect(fitScene(given, plain)).toBe(explained);
  expect(fitScene({ ...given }, plain)).not.toBe(explained);
  expect(fitScene(given, { ...plain, fitted: { ...fitted } })).not.toBe(explained);
  const scene = new FitScene(given, plain);
  let made = 0;
  const make = () => ++made;
  expect([scene.kept("one", make), scene.kept("one", make), scene.kept("other", make)]).toEqual([1, 1, 2]);
  expect(scene.instants).toBe(weighed.run.instants);
});
