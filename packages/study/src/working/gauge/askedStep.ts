import type { Instant } from "../../gauge/Instant.js";
import { termGains } from "../../gauge/termGains.js";
import * as formulas from "../formulas/gauge.js";
import type { Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import type { FitScene } from "./FitScene.js";
import { fittedState } from "./fittedSteps.js";
import { number } from "./number.js";
import { timeStep } from "./readingSteps.js";
import { tableStep } from "./tableSteps.js";

/** What a step at a reading would make of the vacuum, were there one: asked where the feed pressure fell; null for none. */
export function askedStep(fit: FitScene, at: number): Step | null {
  const instant = fit.instants[at] as Instant;
  const gain = termGains(fit.weighed, fit.fitted)({ kind: "step", at });
  if (!gain) return null;
  const { pull, pullTaken, square, squareTaken } = gain.parts;
  const sum = (name: string, value: number) =>
    inWords("summed over the readings from that one on, each over its standard deviation", number(name, value));
  const taken = (name: string, value: number) =>
    inWords("by the slopes and the covariance of the fit", number(name, value));
  const x = worked(
    formulas.scoreSize,
    {
      p: sum("what a step adds times what is missed", pull),
      q: taken("what the fit's own parameters take of it", pullTaken),
      s: sum("what a step adds, squared", square),
      u: taken("what the fit's own parameters take of it, squared", squareTaken),
    },
    { name: "step in resistance over clean" },
  );
  const state = fittedState(fit);
  const r = state.ratioAt(timeStep(fit, instant));
  const tenth = worked(formulas.slopeStep, { r });
  const more = worked(formulas.ratioWithMore, { r, e: tenth });
  const P = worked(formulas.pressureSlope, {
    a: tableStep(fit, instant, state.demand, more, "whole"),
    b: tableStep(fit, instant, state.demand, r, "whole"),
    s: tenth,
  });
  return worked(formulas.sizeTimesSlope, { x, P });
}
