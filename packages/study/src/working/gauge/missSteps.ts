import type { Instant } from "../../gauge/Instant.js";
import { perDemand, termAt } from "../../gauge/Term.js";
import * as formulas from "../formulas/gauge.js";
import type { Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import type { FitScene } from "./FitScene.js";
import { readingStep, timeStep } from "./readingSteps.js";
import type { StateSteps } from "./StateSteps.js";
import { type Depth, tableStep } from "./tableSteps.js";

/** What a gauge is reckoned to read at a reading, so turned that soil makes it grow. */
export function reckonedStep(state: StateSteps, at: number, depth: Depth): Step {
  const { fit } = state;
  const instant = fit.instants[at] as Instant;
  const ratio = state.ratioAt(timeStep(fit, instant));
  const { off, more } = besides(state, at, ratio.value);
  const e = { name: "what is fitted besides soil adds", value: more, unit: "1", kind: "plain" } as const;
  const r = more === 0 ? ratio : worked(formulas.ratioWithMore, { r: ratio, e: inWords("by its size and place", e) });
  const p = [tableStep(fit, instant, state.demand, r, depth), state.zero];
  const o = { name: "what is fitted besides soil adds", value: off, unit: "Pa", kind: "pressure" } as const;
  if (off !== 0) p.push(inWords("by its size and place", o));
  return worked(formulas.reckonedPressure, { p });
}

/** What terms besides soil add at a reading, as the model has them. */
function besides({ fit, parameter, demand }: StateSteps, at: number, soil: number) {
  const { terms, growing, span } = fit.fitted.model;
  const instant = fit.instants[at] as Instant;
  let [off, more] = [0, 0];
  for (const [place, term] of terms.entries()) {
    const size = parameter(2 + growing + place).value;
    if (term.kind === "thin") off -= at >= term.at ? size * perDemand(instant, demand.value, soil + more) : 0;
    else if (term.kind === "outlier") off += term.at === at ? size * (fit.weighed.sigmas[at] ?? 0) : 0;
    else more += size * termAt(term, at, instant, soil + more, span);
  }
  return { off, more };
}

/** How far a reading is missed, in standard deviations. */
export function missStep(state: StateSteps, at: number): Step {
  const { fit } = state;
  const instant = fit.instants[at] as Instant;
  return worked(
    formulas.missOfReading,
    { p: reckonedStep(state, at, "model"), v: readingStep(fit, instant), s: sigmaFound(fit, at) },
    { name: `miss of reading ${instant.reading.row}` },
  );
}

/** How far a reading may be off, as it was found. */
function sigmaFound(fit: FitScene, at: number): Step {
  return fit.step(`sigma ${at}`, () =>
    inWords("gauge, demand and temperature together; the scatter of the last reading shows how", {
      name: "standard deviation of the reading",
      value: fit.weighed.sigmas[at] ?? Number.NaN,
      unit: "Pa",
      kind: "pressure",
    }));
}
