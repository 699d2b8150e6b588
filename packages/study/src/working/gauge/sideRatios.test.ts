import { expect, test } from "vitest";
import { EVENLY, oneGauge, plainBothSides, plainReadings } from "../../../../../tests/support/gaugeScenes.js";
import { told } from "../../../../../tests/support/steps.js";
import { FitScene } from "./FitScene.js";
import { sideRatios } from "./sideRatios.js";

const readings = plainReadings(EVENLY, (at) => ({ feedPressure: 60e3 - 900 * at }));
const said = (fit: FitScene, ratio: number) => {
  const instant = fit.instants[5];
  if (!instant) throw new Error("no reading");
  return sideRatios(fit, instant, ratio).map(({ element, step }) => [element, ...told(step)]);
};
const name = (element: string) => `resistance over clean of ${element}`;

test("sideRatios(fit, instant, ratio) before the pump are those of its own elements alone", () => {
  const { explained } = oneGauge({ system: plainBothSides, readings });
  expect(said(explained, 3)).toEqual([["fitted", name("fitted"), 3, "1", "plain", "of the model's table"]]);
});

test("sideRatios(fit, instant, ratio) behind the pump have the elements before it as their own gauge has them by then", () => {
  const before = oneGauge({ system: plainBothSides, readings });
  const behind = oneGauge({ system: plainBothSides, side: "delivery", readings });
  const fits = { ...behind.fits, suction: before.fit };
  const { model, fit } = before.soil.soil.best;
  const grown = model.stateAt(fit.parameters).ratioAt(50 * 3600);
  expect(grown).toBeGreaterThan(2);
  const own = ["behind", name("behind"), 3, "1", "plain", "of the model's table"];
  expect(said(new FitScene({ ...behind.given, fits }, behind.explained), 3)).toEqual([
    ["fitted", name("fitted"), expect.closeTo(grown, 9), "1", "plain", "as its own gauge has it at that time"],
    own,
  ]);
  const clean = ["fitted", name("fitted"), 1, "1", "plain", "as its own gauge has it at that time"];
  expect(said(behind.explained, 3)).toEqual([clean, own]);
  expect(said(new FitScene({ ...behind.given, fits: null }, behind.explained), 3)).toEqual([clean, own]);
});
