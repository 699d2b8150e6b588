import { fileNoise } from "../../gauge/noise.js";
import * as formulas from "../formulas/gauge.js";
import { fuelDensity } from "../fuel/density.js";
import type { Step } from "../Step.js";
import { sceneOf } from "../scene/Scene.js";
import { freeFall } from "../supply/air.js";
import { vacuum } from "../supply/pressures.js";
import { pumpRise } from "../supply/pump.js";
import { fromFile, fromSource, inWords, worked } from "../worked.js";
import type { FitScene } from "./FitScene.js";
import type { GaugeGiven } from "./GaugeGiven.js";
import { atLevel } from "./modelSteps.js";

const PRACTICE = "common practice, no source";
const pressure = (name: string, value: number) => ({ name, value, unit: "Pa", kind: "pressure" }) as const;

/** How far the zero of all readings may be off. */
export function zeroSpreadStep(fit: FitScene): Step {
  return fit.step("zero spread", () => {
    const { side, given } = fit;
    const a = fromSource(PRACTICE, pressure("error of a gauge's zero", fileNoise.zero));
    return worked(formulas.zeroSpread, { a, b: side === "suction" ? unknownLevel(given) : rise(given) });
  });
}

function unknownLevel(given: GaugeGiven): Step {
  if (given.readings.every(({ depth }) => depth !== undefined)) {
    return inWords("every reading notes its level", pressure("what an unknown level makes", 0));
  }
  return worked(formulas.levelSpread, { R: levelRangeStep(given) });
}

function rise(given: GaugeGiven): Step {
  const x = fromSource(PRACTICE, {
    name: "how far a relief valve is off",
    value: fileNoise.rise,
    unit: "1",
    kind: "ratio",
  });
  return worked(formulas.riseSpread, { x, p: riseByFile(given) });
}

/** The pump's rise by the file, the tank half full between full and low. */
function riseByFile({ system }: GaugeGiven): Step {
  const { scene, told } = atLevel(system, undefined, {});
  const V = vacuum(scene);
  const p = V && pumpRise(scene, V);
  return p ? told(p) : inWords("a pump whose rise is not known", pressure("rise of the pump by the file", 0));
}

/** Vacuum from a full tank to a low one. */
export function levelRangeStep({ system }: GaugeGiven): Step {
  const [tank] = system.tanks;
  const depth = (key: "full depth" | "low depth", value: number) =>
    fromFile(`tank.${key}`, { name: `fuel over the pick-up, ${key}`, value, unit: "m", kind: "length" });
  return worked(formulas.levelRange, {
    rho: fuelDensity(sceneOf(system, {})),
    g: freeFall,
    h: depth("full depth", tank?.fullDepth ?? 0),
    l: depth("low depth", tank?.lowDepth ?? 0),
  });
}
