import type { Instant } from "../../gauge/Instant.js";
import { tableDemands } from "../../gauge/RatioTable.js";
import * as formulas from "../formulas/gauge.js";
import type { Step } from "../Step.js";
import { demand } from "../supply/demand.js";
import { feedPressure, vacuum } from "../supply/pressures.js";
import { fromFile, inWords, worked } from "../worked.js";
import type { FitScene } from "./FitScene.js";
import { atLevel } from "./modelSteps.js";
import { number } from "./number.js";
import { notedIn } from "./readingSteps.js";
import { sideRatios } from "./sideRatios.js";
import { toldWith } from "./toldWith.js";

/** How far down a table's figures are followed: each to the file's own values, or to what the model says and no further. */
export type Depth = "whole" | "model";

/** What the model lets a gauge read at a reading, at a demand over the noted one and a resistance over clean. */
export function tableStep(fit: FitScene, instant: Instant, f: Step, r: Step, depth: Depth): Step {
  const [lesser, larger] = instant.table.around(r.value);
  const figures = (end: typeof lesser) =>
    tableDemands.map((factor, at) =>
      depth === "whole"
        ? modelStep(fit, instant, factor, end.ratio)
        : inWords(
            `what the model says at reading ${instant.reading.row} with ${factor} times the demand and the element that ` +
              `goes first ${end.ratio} times clean; its working is that of the pressure reckoned there`,
            { name: "what the model lets read", value: end.figures[at] ?? Number.NaN, unit: "Pa", kind: "pressure" },
          ),
    );
  return worked(formulas.tablePressure, {
    w: weights(fit, f),
    a: figures(lesser),
    b: figures(larger),
    r,
    i: inWords("of the model's table", number("the lesser resistance", lesser.ratio)),
    j: inWords("of the model's table", number("the larger resistance", larger.ratio)),
  });
}

function weights(fit: FitScene, f: Step): Step[] {
  return fit.kept(`weights ${f.value}`, () => {
    const [a, b, c] = tableDemands.map((one) =>
      inWords("of the model's table", number("demand over the noted one", one)),
    ) as [Step, Step, Step];
    return [
      worked(formulas.demandWeight, { f, a, b, c }),
      worked(formulas.demandWeight, { f, a: b, b: a, c }),
      worked(formulas.demandWeight, { f, a: c, b: a, c: b }),
    ];
  });
}

/** A figure of the model's table, worked out from the file. */
function modelStep(fit: FitScene, instant: Instant, factor: number, ratio: number): Step {
  const { given, side } = fit;
  const { reading, temperature } = instant;
  const ratios = sideRatios(fit, instant, ratio);
  const noted = notedDemand(fit, instant);
  const Q = worked(formulas.timesDemand, {
    f: inWords("of the model's table", number("demand over the noted one", factor)),
    Q: noted,
  });
  const restrictions = new Map(ratios.map(({ element, step }) => [element, step.value]));
  const { scene, told } = atLevel(given.system, reading.depth, { temperature, demand: Q.value, restrictions });
  const putIn = { demand: Q, temperature: temperatureStep(instant), ratios: ratios.map(({ step }) => step) };
  const whole = (step: Step | null) => step && toldWith(told(step), putIn);
  const V = whole(vacuum(scene));
  const held = inWords("more than any gauge shows", {
    name: "what the model lets read",
    value: 1e7,
    unit: "Pa",
    kind: "pressure",
  });
  if (side === "suction") return V ?? held;
  const p =
    whole(feedPressure(scene)) ??
    inWords("no feed pressure is known", { name: "feed pressure", value: 0, unit: "Pa", kind: "pressure" });
  const { pump } = scene.built;
  if (reading.vacuum === undefined || V === null || (pump.kind === "fixed" && pump.reliefTo === "tank")) {
    return worked(formulas.turnedPressure, { p });
  }
  const V_n = inWords(notedIn(instant), { name: "vacuum read", value: reading.vacuum, unit: "Pa", kind: "vacuum" });
  return worked(formulas.turnedWithVacuum, { p, V, V_n });
}

/** Demand at a reading, as noted; full where nobody noted it. */
function notedDemand(fit: FitScene, instant: Instant): Step {
  const { load, flow } = instant.reading;
  if (flow !== undefined)
    return inWords(notedIn(instant), { name: "demand as noted", value: flow, unit: "m3/s", kind: "flow" });
  const shown = { name: "load over full load", value: load ?? 1, unit: "1", kind: "ratio" } as const;
  const l = inWords(load === undefined ? "nobody noted it: full load is taken" : notedIn(instant), shown);
  const { scene, told } = atLevel(fit.given.system, instant.reading.depth, { temperature: instant.temperature });
  return worked(formulas.notedDemand, { l, Q: toldTemperature(instant, told(demand(scene))) });
}

function toldTemperature(instant: Instant, step: Step): Step {
  return toldWith(step, { demand: step, temperature: temperatureStep(instant), ratios: [] });
}

/** Temperature of the fuel at a reading, as noted or taken. */
function temperatureStep(instant: Instant): Step {
  const shown = {
    name: "temperature of the fuel",
    value: instant.temperature,
    unit: "K",
    kind: "temperature",
  } as const;
  return instant.reading.temperature === undefined
    ? fromFile("fuel.temperature", shown)
    : inWords(notedIn(instant), shown);
}
