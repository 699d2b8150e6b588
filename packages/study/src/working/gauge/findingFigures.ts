import type { Shown } from "../../gauge/findingsOf.js";
import type { GaugeFits } from "../../gauge/gaugeFits.js";
import type { SideFit } from "../../gauge/SideFit.js";
import type { Sized } from "../../gauge/sizedOf.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import * as formulas from "../formulas/gauge.js";
import type { Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import { askedStep } from "./askedStep.js";
import { countedStep } from "./countedStep.js";
import { explainedScene } from "./explainedScene.js";
import { fittedState } from "./fittedSteps.js";
import type { GaugeGiven } from "./GaugeGiven.js";
import { placeFigures } from "./placeFigures.js";
import { tableStep } from "./tableSteps.js";
import { termPressure } from "./termSteps.js";

/** Figures of what readings show. */
export function findingFigures(given: GaugeGiven, fits: GaugeFits, shown: Shown): FigureMaker[] {
  const figure = figuresIn("What the readings show", true);
  const { finding } = shown;
  const from = "from" in finding && finding.from ? placeFigures(finding.from) : [];
  if (shown.by === "soil") return [];
  if (shown.by === "air") {
    return [
      figure("size", () => lessStep(given, fits, shown)),
      figure("feed pressure short by", () => weakStep(given, fits, shown.weak)),
      ...from,
    ];
  }
  const { side, sized } = shown;
  const fit = fits[side];
  if (!fit) return from;
  const by = () => termPressure(explainedScene(given, fits, side, fit), fit, sized);
  const since = fits.settled[side]?.weighed.run.instants.length ?? 0;
  return [
    figure("size", () => upright(by(), "by" in finding ? finding.by : 0)),
    ...("coldest" in finding ? [figure("coldest reading", () => coldest(finding.coldest))] : []),
    ...(finding.code === "jump" ? [figure("readings since", () => countedStep("readings since", since))] : []),
    ...from,
  ];
}

/** A size with the sign it is told with: what falls is told as a fall. */
function upright(step: Step, told: number): Step {
  return Math.sign(step.value) === Math.sign(told) ? step : worked(formulas.turnedPressure, { p: step });
}

function coldest(value: number): Step {
  const shown = { name: "coldest reading", value, unit: "K", kind: "temperature" } as const;
  return inWords("the coldest of the temperatures noted, or taken, at the readings", shown);
}

/** How much less vacuum there is where delivery is weak. */
function lessStep(given: GaugeGiven, fits: GaugeFits, { less, weak }: Extract<Shown, { by: "air" }>): Step | null {
  const { suction } = fits;
  if (!suction) return null;
  if (less === "from new") return fromNew(given, fits, suction);
  const scene = explainedScene(given, fits, "suction", suction);
  const step = less === "asked" ? askedStep(scene, weak?.at ?? 0) : termPressure(scene, suction, less);
  return step && worked(formulas.turnedPressure, { p: step });
}

/** From the first reading on: what the demand fitted makes of the vacuum with clean elements. */
function fromNew(given: GaugeGiven, fits: GaugeFits, suction: SideFit): Step | null {
  const scene = explainedScene(given, fits, "suction", suction);
  const [first] = scene.instants;
  if (!first) return null;
  const number = (name: string, value: number) => inWords("put in here", { name, value, unit: "1", kind: "plain" });
  const r = number("resistance over clean", 1);
  return worked(formulas.madeOfPressure, {
    a: tableStep(scene, first, number("demand over the noted one", 1), r, "whole"),
    b: tableStep(scene, first, fittedState(scene).demand, r, "whole"),
  });
}

function weakStep(given: GaugeGiven, fits: GaugeFits, weak: Sized | null): Step | null {
  const { delivery } = fits;
  if (!delivery) return null;
  const scene = explainedScene(given, fits, "delivery", delivery);
  return weak ? termPressure(scene, delivery, weak) : fittedState(scene).zero;
}
