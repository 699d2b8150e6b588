import type { GaugeReading } from "@thirstline/spec/system";
import type { GaugeCaution, GaugeReason } from "../../gauge/GaugeAnswer.js";
import { FEWEST } from "../../gauge/leftsOf.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import { demandApart } from "../formulas/gauge.js";
import { temperature } from "../fuel/temperature.js";
import type { Step } from "../Step.js";
import { sceneOf } from "../scene/Scene.js";
import { fromSource, worked } from "../worked.js";
import { countedStep } from "./countedStep.js";
import { fittedState } from "./fittedSteps.js";
import type { GaugeGiven } from "./GaugeGiven.js";
import { soilScene } from "./gaugeScenes.js";
import { levelRangeStep } from "./zeroSteps.js";

/** Figures of all readings together. */
export function readingsFigures(given: GaugeGiven): FigureMaker[] {
  const { answer } = given;
  const figure = figuresIn("Readings");
  const { all, used } = answer.readings;
  const since = "counted: those since the elements were new, or all where nothing is known of a change";
  return [
    figure("readings", () => countedStep("readings", all, "counted: the rows of the readings")),
    figure("readings used", () => countedStep("readings used", used, since)),
    ...answer.reasons.flatMap((reason) => reasonFigures(reason)),
    ...answer.cautions.flatMap((caution) => cautionFigures(given, caution)),
  ];
}

function reasonFigures(reason: GaugeReason): FigureMaker[] {
  const figure = figuresIn("Why it cannot be told");
  if (reason.code !== "too few readings" && reason.code !== "no trend") return [];
  const name = "readings at different times";
  const words = "counted: readings of that gauge, those of one hour once";
  return [
    figure(name, () => countedStep(name, reason.count, words)),
    figure("readings needed", () =>
      fromSource("common practice, no source", { name: "readings needed", value: FEWEST, unit: "1", kind: "plain" }),
    ),
  ];
}

function cautionFigures(given: GaugeGiven, caution: GaugeCaution): FigureMaker[] {
  const figure = figuresIn("What the figures rest on");
  const without = (name: string, lacks: (reading: GaugeReading) => boolean): FigureMaker => {
    const run = given.fits?.facts.run.readings ?? [];
    return figure(name, () => countedStep(name, run.filter(({ reading }) => lacks(reading)).length));
  };
  switch (caution.code) {
    case "earlier readings":
      return [
        figure("readings of elements changed since", () =>
          countedStep("readings before the change", given.fits?.facts.run.earlier ?? 0),
        ),
      ];
    case "load taken":
      return [without("readings without a load", ({ load, flow }) => load === undefined && flow === undefined)];
    case "temperature taken":
      return [
        without("readings without a temperature", (reading) => reading.temperature === undefined),
        figure("temperature taken", () => temperature(sceneOf(given.system, {}))),
      ];
    case "level taken":
      return [
        without("readings without a level", ({ depth }) => depth === undefined),
        figure("what the level makes of the vacuum", () => levelRangeStep(given)),
      ];
    case "file and machine apart":
      return [figure("demand over the file's, less one", () => apart(given))];
    default:
      return [];
  }
}

/** The demand of the gauge before the pump; of the one behind it where there is none. */
function apart(given: GaugeGiven): Step | null {
  const { fits } = given;
  const side = fits?.settled.suction ? "suction" : "delivery";
  const fit = fits?.settled[side];
  if (!fits || !fit) return null;
  return worked(demandApart, { f: fittedState(soilScene(given, fits, side, fit.soil).best).demand });
}
