import type { Averaged } from "../../gauge/averaged.js";
import type { GaugeFits } from "../../gauge/gaugeFits.js";
import type { GaugeSide } from "../../gauge/instantsOf.js";
import type { SoilFit } from "../../gauge/SideFit.js";
import type { Step } from "../Step.js";
import { type DrawnFigure, quantileStep, type SHARES } from "./drawSteps.js";
import { type FitScene, fitScene } from "./FitScene.js";
import type { GaugeGiven } from "./GaugeGiven.js";
import { timeStep } from "./readingSteps.js";

/** One gauge with what soil makes of its readings. */
export interface SoilScene {
  readonly given: GaugeGiven;
  readonly fits: GaugeFits;
  readonly side: GaugeSide;
  readonly soil: SoilFit;
  /** the scene of one of its laws */
  readonly sceneOf: (fitted: Averaged["fitted"]) => FitScene;
  /** that of the likeliest law */
  readonly best: FitScene;
}

/** A gauge's soil, fitted to these readings of it. */
export function soilScene(given: GaugeGiven, fits: GaugeFits, side: GaugeSide, soil: SoilFit): SoilScene {
  const { weighed } = soil;
  const sceneOf = (fitted: Averaged["fitted"]) => fitScene(given, { facts: fits.facts, side, weighed, fitted });
  return { given, fits, side, soil, sceneOf, best: sceneOf(soil.best) };
}

/** Resistance over clean of the element that goes first at the last reading; `which` of its interval. */
export function leadNow({ soil, sceneOf, best }: SoilScene, which: keyof typeof SHARES): Step | null {
  const last = best.instants.at(-1);
  if (!last) return null;
  const drawn: DrawnFigure = {
    draws: soil.draws,
    sceneOf,
    figure: ({ state }) => state.ratioAt(last.time),
    stepOf: (state) => state.ratioAt(timeStep(state.fit, last)),
    of: "ratio",
  };
  return quantileStep(drawn, which);
}
