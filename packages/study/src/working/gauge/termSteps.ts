import type { Instant } from "../../gauge/Instant.js";
import type { SideFit } from "../../gauge/SideFit.js";
import { readingOf, type Sized } from "../../gauge/sizedOf.js";
import * as formulas from "../formulas/gauge.js";
import type { Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import { evidenceCheck } from "./evidenceSteps.js";
import type { FitScene } from "./FitScene.js";
import { fittedState } from "./fittedSteps.js";
import { number } from "./number.js";
import { startStep, timeStep } from "./readingSteps.js";
import { tableStep } from "./tableSteps.js";

/** Size of something found besides soil, with why it is more than scatter. */
export function sizeStep(fit: FitScene, side: SideFit, place: number): Step {
  const { growing } = fit.fitted.model;
  const size = fittedState(fit).parameter(2 + growing + place);
  if (size.origin.by !== "search") return size;
  const checks = [...size.origin.checks, ...evidenceCheck(fit, side, place)];
  return { ...size, origin: { ...size.origin, checks } };
}

/** What something found besides soil makes of what is read, where it is largest or begins; more resistance is above zero. */
export function termPressure(fit: FitScene, side: SideFit, { term, place }: Sized): Step {
  const state = fittedState(fit);
  const instant = fit.instants[readingOf(term, fit.instants)] as Instant;
  const r = state.ratioAt(timeStep(fit, instant));
  const x = sizeStep(fit, side, place);
  if (term.kind === "thin") {
    const p = worked(formulas.sizeTimesSlope, { x, P: perDemandStep(fit, instant, state.demand, r) });
    return worked(formulas.turnedPressure, { p });
  }
  const e = addedStep(fit, instant, { term, x, r });
  const more = worked(formulas.ratioWithMore, { r, e });
  return worked(formulas.madeOfPressure, {
    a: tableStep(fit, instant, state.demand, more, "whole"),
    b: tableStep(fit, instant, state.demand, r, "whole"),
  });
}

/** Resistance that a term adds at a reading. */
function addedStep(
  fit: FitScene,
  instant: Instant,
  { term, x, r }: { readonly term: Sized["term"]; readonly x: Step; readonly r: Step },
): Step {
  if (term.kind === "cold") {
    const kelvins = (name: string, value: number, words: string) =>
      inWords(words, { name, value, unit: "K", kind: "temperature" });
    return worked(formulas.moreByCold, {
      x,
      r,
      B: kelvins("temperature below which it shows", term.below, "the warmest reading, or half-way to the coldest"),
      T: kelvins("coldest reading", instant.temperature, "noted, or taken from the file"),
      t: inWords("a choice of unit", { name: "ten kelvins", value: 10, unit: "K" }),
    });
  }
  if (term.kind !== "fall") return x;
  const T = timeStep(fit, instant);
  const s = inWords("so that one reading alone does no harm", {
    name: "a second",
    value: 1,
    unit: "s",
    kind: "running time",
  });
  return worked(formulas.moreByFall, { x, t: T, s, T, b: startStep(fit) });
}

/** How fast what is read grows with the demand, by a difference of a tenth of it. */
function perDemandStep(fit: FitScene, instant: Instant, f: Step, r: Step): Step {
  const at = (times: number) => {
    const by = inWords("a little more, and a little less", number("times the demand fitted", times));
    return tableStep(fit, instant, worked(formulas.timesFitted, { c: by, f }), r, "whole");
  };
  const s = inWords("the one less the other", number("difference of the demands", 0.1));
  return worked(formulas.pressureSlope, { a: at(1.05), b: at(0.95), s });
}
