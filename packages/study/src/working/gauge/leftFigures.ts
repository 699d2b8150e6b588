import { timeAtRatio } from "../../gauge/averaged.js";
import { LimitMap } from "../../gauge/LimitMap.js";
import { type FittedSide, limitFacts } from "../../gauge/leftOf.js";
import { leftFacts } from "../../gauge/leftsOf.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import { meterAtLimit, timeLeft } from "../formulas/gauge.js";
import type { Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import { type DrawnFigure, quantileStep, type SHARES } from "./drawSteps.js";
import { fittedState } from "./fittedSteps.js";
import type { SoilScene } from "./gaugeScenes.js";
import { loadStep } from "./lawSteps.js";
import { type LimitsGiven, metStep, metTemperature } from "./limitSteps.js";
import { meterAtStart, startStep, timeStep } from "./readingSteps.js";
import type { StateSteps } from "./StateSteps.js";

/**
 * Figures of the running time left.
 *
 * @param settled the gauge with all its readings: what is left is told from the last of them, also where some are set aside
 */
export function leftFigures(scene: SoilScene, settled: FittedSide["fit"]): FigureMaker[] {
  const { given, fits, side, soil, sceneOf, best } = scene;
  const facts = leftFacts(fits.facts, side, fits.settled);
  const { restrictions, ...rest } = limitFacts(fits.facts[side], soil, facts);
  const map = new LimitMap({ ...rest, restrictions });
  const limits: LimitsGiven = { given, map, restrictions };
  const figure = figuresIn("Running time left", true);
  const last = settled.weighed.run.instants.at(-1);
  const t = () =>
    last
      ? timeStep(best, last)
      : inWords("no reading", { name: "running time", value: 0, unit: "s", kind: "running time" });
  const drawn: DrawnFigure = {
    draws: soil.draws,
    sceneOf,
    figure: (draw) => Math.max(0, timeAtRatio(draw, map.at(draw.state.demand).ratio) - facts.now),
    stepOf: (state) => leftStep(limits, state, t()),
    of: "time",
  };
  const left = (which: keyof typeof SHARES) => () => quantileStep(drawn, which);
  return [
    figure("running time left, low end", left("low")),
    figure("running time left", left("middle")),
    figure("running time left, high end", left("high")),
    figure("temperature where the limit is met", () => metTemperature(limits, fittedState(best).demand)),
    figure("hour meter at the limit", () => {
      const l = left("middle")();
      const { meter } = fits.facts.run;
      return l && meter !== null ? worked(meterAtLimit, { b: meterAtStart(best, meter), t: t(), l }) : null;
    }),
    figure("running time so far", t),
  ];
}

/** What is left by one draw: the load that still fits under its limit, over how fast it comes. */
function leftStep(limits: LimitsGiven, state: StateSteps, t: Step): Step {
  const r = metStep(limits, state.demand);
  const none = { name: "running time left", value: 0, unit: "s", kind: "running time" } as const;
  if (!r) return inWords("no limit is met", none);
  const l = loadStep(state.fit.fitted.model.shape, r);
  return worked(timeLeft, { l, a: state.from, k: state.rate, s: startStep(state.fit), t });
}
