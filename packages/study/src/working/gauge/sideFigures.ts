import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import { turnedPressure } from "../formulas/gauge.js";
import type { Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import { elementFigures } from "./elementFigures.js";
import { weightStep } from "./evidenceSteps.js";
import { fittedState } from "./fittedSteps.js";
import type { SoilScene } from "./gaugeScenes.js";
import { reckonedStep } from "./missSteps.js";
import { readingAsNoted, readingStep, timeStep } from "./readingSteps.js";
import { countStep, gaugeErrorStep, sigmaStep } from "./scatterSteps.js";

/** Figures of one gauge. */
export function sideFigures(scene: SoilScene): FigureMaker[] {
  const { soil, best, side, sceneOf } = scene;
  const group = side === "suction" ? "Vacuum gauge" : "Feed pressure gauge";
  const [figure, known] = [figuresIn(group, true), figuresIn(group)];
  const [reckoned, noted] = [figuresIn("Each reading", true), figuresIn("Each reading")];
  const state = () => fittedState(best);
  const isFeed = side === "delivery";
  // A feed pressure is shown as it is read.
  const shown = (step: Step) => (isFeed ? worked(turnedPressure, { p: step }) : step);
  return [
    known("readings", () => countStep(best)),
    figure("scatter of a reading", () => sigmaStep(best, best.instants.length - 1)),
    known("error of the gauge", () => gaugeErrorStep(best)),
    figure("demand over the file's", () => state().demand),
    figure("what all readings are off by", () => shown(state().zero)),
    ...soil.laws.flatMap(({ fitted: { model } }, at): FigureMaker[] => {
      const { law, mix } = model.shape;
      if (law === "none") return [];
      const words = "one of three mixes tried; of a law's mixes the one that explains the readings best";
      const plain = { name: "mix", value: mix ?? 0, unit: "1", kind: "plain" } as const;
      return [
        figure(`weight of ${law}`, () => weightStep(at, soil.laws, sceneOf)),
        ...(mix === null ? [] : [known(`mix of ${law}`, () => inWords(words, plain))]),
      ];
    }),
    ...elementFigures(scene),
    ...best.instants.flatMap((instant, at) => [
      noted(`running time at reading ${at + 1}`, () => timeStep(best, instant)),
      noted(`pressure read at reading ${at + 1}`, () =>
        isFeed ? readingAsNoted(best, instant) : readingStep(best, instant),
      ),
      reckoned(`pressure reckoned at reading ${at + 1}`, () => shown(reckonedStep(state(), at, "whole"))),
    ]),
  ];
}
