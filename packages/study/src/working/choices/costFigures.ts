import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import * as formulas from "../formulas/yearCost.js";
import type { Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import { figureStep } from "./leastInHand.js";
import { hour, hourlyRate, priceOf, stoppageCost, workOf } from "./prices.js";
import type { SideGiven } from "./SideGiven.js";

/** What a year of the elements at some places costs. */
export function costFigures(given: SideGiven): FigureMaker[] {
  const { system, at, element, options, asked } = given;
  const figure = figuresIn("What a year costs", true);
  const changes = (): Step | null => {
    const [Y, t] = [figureStep(system, "year of duty"), figureStep(system, "change")];
    return Y && t && t.value > 0 ? worked(formulas.changesAYear, { Y, t }) : null;
  };
  const counted = () =>
    inWords("the places asked about, counted", { name: "elements changed each time", value: at.length, unit: "1" });
  const elements = (): Step | null => {
    const [c, p] = [changes(), element && priceOf(element)];
    return c && p && worked(formulas.elementsAYear, { c, n: counted(), p });
  };
  const labour = (): Step | null => {
    const [c, w, r] = [changes(), element && workOf(element), hourlyRate(options)];
    return c && w && r && worked(formulas.labourAYear, { c, n: counted(), w, h: hour, r });
  };
  const stoppages = (): Step | null => {
    const s = stoppageCost(options);
    const c = s && changes();
    const P = c && figureStep(system, "chance of an end before the service interval", asked);
    return s && c && P && worked(formulas.stoppagesAYear, { c, P, s });
  };
  return [
    figure("changes a year", changes),
    figure("cost of elements in a year", elements),
    figure("cost of work in a year", labour),
    figure("cost of stoppages in a year", stoppages),
    figure("cost of a year", () => {
      const first = elements();
      return first && worked(formulas.yearTotal, { m: [first, labour() ?? [], stoppages() ?? []].flat() });
    }),
  ];
}
