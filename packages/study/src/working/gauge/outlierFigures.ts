import type { Outlier } from "../../gauge/GaugeAnswer.js";
import type { GaugeFits } from "../../gauge/gaugeFits.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import { expectedPressure, turnedDeviations } from "../formulas/gauge.js";
import type { Step } from "../Step.js";
import { worked } from "../worked.js";
import { explainedScene } from "./explainedScene.js";
import type { GaugeGiven } from "./GaugeGiven.js";
import { placeFigures } from "./placeFigures.js";
import { readingAsNoted, readingStep } from "./readingSteps.js";
import { sigmaStep } from "./scatterSteps.js";
import { sizeStep } from "./termSteps.js";

/** Figures of a reading that stands off. */
export function outlierFigures(given: GaugeGiven, fits: GaugeFits, outlier: Outlier): FigureMaker[] {
  const { side, row } = outlier;
  const fit = fits[side];
  if (!fit) return [];
  const scene = explainedScene(given, fits, side, fit);
  const at = scene.instants.findIndex(({ reading }) => reading.row === row);
  const instant = scene.instants[at];
  const place = fit.explained.terms.findIndex((term) => term.kind === "outlier" && term.at === at);
  if (!instant) return [];
  const figure = figuresIn("Reading that stands off", true);
  const isFeed = side === "delivery";
  const read = () => (isFeed ? readingAsNoted(scene, instant) : readingStep(scene, instant));
  // More feed pressure is less resistance.
  const deviations = (): Step => {
    const k = sizeStep(scene, fit, place);
    return isFeed ? worked(turnedDeviations, { k }) : k;
  };
  return [
    figure("pressure read", read),
    figure("standard deviations off", deviations),
    figure("pressure expected", () =>
      worked(expectedPressure, { v: read(), k: deviations(), s: sigmaStep(scene, at) }),
    ),
    ...placeFigures(outlier),
  ];
}
