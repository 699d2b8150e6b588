import type { GaugeReading, System } from "@thirstline/spec/system";
import type { GaugeAnswer, GaugeOptions } from "../../gauge/GaugeAnswer.js";
import { type GaugeFits, gaugeFits } from "../../gauge/gaugeFits.js";
import { soonest } from "../../gauge/leftsOf.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { type Member, type Members, membersOf } from "../members.js";
import { findingFigures } from "./findingFigures.js";
import type { GaugeGiven } from "./GaugeGiven.js";
import { soilScene } from "./gaugeScenes.js";
import { leftFigures } from "./leftFigures.js";
import { outlierFigures } from "./outlierFigures.js";
import { readingsFigures } from "./readingsFigures.js";
import { sideFigures } from "./sideFigures.js";

/**
 * Readings whose figures are worked out: "readings", all of them; "finding 0" and "outlier 0" and on; "suction" and
 * "delivery", the gauges there are; "left" and "left without", what is left with all readings and without those that stand off.
 */
export interface GaugeChoice {
  readonly question: "gauge";
  readonly members: Members;
}

/**
 * What the figures of `gauge` belong to. All is fitted anew, since an answer keeps nothing of its fits but what they come to.
 *
 * @param readings as `gauge` was asked with, and so options
 * @example
 * gaugeChoice(system, readings, gauge(system, readings)).members.names // ["readings", "finding 0", "suction", "left"]
 */
export function gaugeChoice(
  system: System,
  readings: readonly GaugeReading[],
  answer: GaugeAnswer,
  options: GaugeOptions = {},
): GaugeChoice {
  const found = gaugeFits(system, readings, options);
  const fits = "code" in found ? null : found;
  const given: GaugeGiven = { system, readings, answer, options, fits };
  const makers = new Map<string, () => Member | null>();
  const add = (of: string, name: string, own: () => FigureMaker[]) =>
    makers.set(of, () => ({ name: `${system.name}, ${name}`, system, own: own() }));
  add("readings", "readings", () => readingsFigures(given));
  if (fits) addMembers(given, fits, add);
  return { question: "gauge", members: membersOf(makers) };
}

type Add = (of: string, name: string, own: () => FigureMaker[]) => void;

function addMembers(given: GaugeGiven, fits: GaugeFits, add: Add): void {
  const { answer } = given;
  for (const [at, shown] of fits.shown.entries())
    add(`finding ${at}`, "what the readings show", () => findingFigures(given, fits, shown));
  for (const [at, outlier] of answer.outliers.entries()) {
    add(`outlier ${at}`, `reading ${outlier.row}`, () => outlierFigures(given, fits, outlier));
  }
  for (const { side } of answer.sides) {
    const fit = fits.settled[side];
    const name = side === "suction" ? "vacuum gauge" : "feed pressure gauge";
    if (fit) add(side, name, () => sideFigures(soilScene(given, fits, side, fit.soil)));
  }
  addLeft(given, fits, "all", (own) => add("left", "running time left", own));
  if (answer.leftWithout) {
    const name = "running time left without the readings that stand off";
    addLeft(given, fits, "without", (own) => add("left without", name, own));
  }
}

/** What is left by the gauge that comes first. */
function addLeft(
  given: GaugeGiven,
  fits: GaugeFits,
  which: "all" | "without",
  add: (own: () => FigureMaker[]) => void,
): void {
  const first = soonest(fits.lefts.map((one) => one[which]));
  const side = fits.lefts.find((one) => one[which] === first)?.side;
  const fit = side ? fits.settled[side] : null;
  const soil = which === "all" ? fit?.soil : fit?.soilWithout;
  if (!side || !fit || !soil?.trend) return;
  add(() => leftFigures(soilScene(given, fits, side, soil), fit));
}
