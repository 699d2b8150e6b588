import { namesWords } from "../../say/namesWords.js";
import type { Asked } from "../Asked.js";
import { sharesTogether } from "../formulas/caught.js";
import * as formulas from "../formulas/duty.js";
import { cleanFigures } from "../life/cleanFigures.js";
import { elementDrop, elementShare, goingTogether } from "../life/dropSteps.js";
import { endOfLife } from "../life/endStep.js";
import { filledScene, type LifeScene, lifeScene, momentsOf } from "../life/lifeFacts.js";
import { change, interval, measures } from "../life/measureSteps.js";
import { momentAfter } from "../life/momentAfter.js";
import { partialFigures } from "../life/partialSteps.js";
import { rangeFigures } from "../life/rangeFigures.js";
import { remarkFigures } from "../life/remarkFigures.js";
import { caught, restriction, soilAtStart } from "../life/soilSteps.js";
import { waterFigures } from "../life/waterFigures.js";
import { horizon, seasonOf, year } from "../life/yearSteps.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { feedPressure, vacuum } from "../supply/pressures.js";
import { fromFile, inWords, worked } from "../worked.js";
import type { FigureMaker } from "./FigureMaker.js";
import { figuresIn } from "./figuresIn.js";
import { lifeSpread } from "./lifeSpread.js";

const LIFE = "How long the elements last";

/** How long the elements last, what they catch, and what comes of it; empty where it cannot be told. */
export function lifeFigures(scene: Scene, asked: Asked): FigureMaker[] {
  const life = lifeScene(scene.at({ temperature: null, demand: null, at: null }));
  if (life === null) return [notWorked("year of duty"), notWorked("horizon")];
  const figure = figuresIn(LIFE, true);
  const end = () => endOfLife(life);
  const due = () => change(life);
  return [
    figure("end of life", end),
    ...measuresOf(life, "end of life", end).map(([name, make]) => figure(name, make)),
    figure("temperature it is judged at", () => judgedAt(life)),
    figure("year of duty", () => year(life)),
    figure("horizon", () => horizon(life)),
    figure("service interval", () => interval(life, "usual")),
    figure("longest interval", () => interval(life, "longest")),
    figure("change", due),
    ...measuresOf(life, "change", due).map(([name, make]) => figure(name, make)),
    ...rangeFigures(life).map((one) => ({ ...one, slow: true })),
    ...elementFigures(life).map((one) => ({ ...one, slow: true })),
    ...partialFigures(life).map((one) => ({ ...one, slow: true })),
    ...cleanFigures(life).map((one) => ({ ...one, slow: true })),
    ...waterFigures(life).map((one) => ({ ...one, slow: true })),
    ...remarkFigures(life).map((one) => ({ ...one, slow: true })),
    ...traceFigures(life, asked).map((one) => ({ ...one, slow: true })),
    ...lifeSpread(life, asked),
  ];
}

/** What is shown of a life that cannot be told. */
function notWorked(name: string): FigureMaker {
  const words = "none: the file leaves out something a life rests on";
  return { group: LIFE, name, make: () => inWords(words, { name, value: 0, unit: "s", kind: "running time" }) };
}

/** A running time in other measures, by the names they are asked for with. */
function measuresOf(life: LifeScene, of: string, time: () => Step | null): [string, () => Step | null][] {
  const names = ["fuel burnt", "years of duty", "distance", "hour meter", "distance meter"];
  return names.map((name) => [
    `${name} at the ${of}`,
    () => {
      const step = time();
      return step && (measures(life, step)[name]?.() ?? null);
    },
  ]);
}

/** Temperature of the duty point at which the first limit is met. */
function judgedAt({ facts, place, found }: LifeScene): Step | null {
  const point = facts.duty.points[place];
  if (!found.end || !point) return null;
  const at = facts.system.duty?.seasons?.findIndex(({ temperature }) => temperature === point.temperature) ?? -1;
  const path = at < 0 ? "fuel.temperature" : `duty.seasons[${at}].temperature`;
  return fromFile(path, { name: "temperature", value: point.temperature, unit: "K", kind: "temperature" });
}

function elementFigures(life: LifeScene): FigureMaker[] {
  const group = "Each element";
  const each = life.facts.given.elements.flatMap(({ name }, at): FigureMaker[] => [
    { group, name: `soil at start on ${name}`, make: () => soilAtStart(life, at) },
    { group, name: `soil on ${name}`, make: () => caught(life, at, "soil") },
    { group, name: `water in ${name}`, make: () => caught(life, at, "water") },
    { group, name: `resistance over clean of ${name}`, make: () => restriction(life, at) },
    { group, name: `drop of ${name}, clean`, make: () => elementDrop(life, name, "clean") },
    { group, name: `drop of ${name} at the end`, make: () => elementDrop(life, name, "then") },
    { group, name: `share of the rise of ${name}`, make: () => elementShare(life, name) },
  ]);
  const together = goingTogether(life);
  if (together.length === 0) return each;
  const name = `share of the rise of ${namesWords(together)}`;
  const make = () => worked(sharesTogether, { s: together.map((one) => elementShare(life, one)) }, { name });
  return [...each, { group, name, make }];
}

/** What gauges would read at a moment on the way. */
function traceFigures(life: LifeScene, { moment, after }: Asked): FigureMaker[] {
  const between = after === undefined ? undefined : momentAfter(life, after);
  const at = moment === undefined ? between : momentsOf(life)[moment];
  if (at === undefined) return [];
  const scene = () => filledScene(life, at);
  const group = "On the way";
  return [
    { group, name: "running time at a moment", make: () => timeAt(life, at.time) },
    { group, name: "vacuum at a moment", make: () => vacuum(scene()) },
    { group, name: "feed pressure at a moment", make: () => feedPressure(scene()) },
  ];
}

function timeAt(life: LifeScene, time: number): Step | null {
  if (time === life.found.end?.time) return endOfLife(life);
  const { phases } = life.facts.given;
  const t: Step[] = [];
  for (let at = 0, gone = 0; gone < time * (1 - 1e-12) && phases.length > 0; at++) {
    const place = at % phases.length;
    const value = Math.min(phases[place]?.duration ?? Infinity, time - gone);
    const name = `running time in ${seasonOf(life, place)}`;
    t.push(inWords("share of the year, by the file", { name, value, unit: "s", kind: "running time" }));
    gone += value;
  }
  if (t.length === 0) return inWords("the start", { name: "running time", value: 0, unit: "s", kind: "running time" });
  return worked(formulas.timeGone, { t }, { value: time });
}
