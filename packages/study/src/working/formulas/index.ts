import type { Formula } from "../Formula.js";
import * as air from "./air.js";
import * as bench from "./bench.js";
import * as caught from "./caught.js";
import * as choosing from "./choosing.js";
import * as curves from "./curves.js";
import * as density from "./density.js";
import * as duty from "./duty.js";
import * as estimates from "./estimates.js";
import * as fibres from "./fibres.js";
import * as filters from "./filters.js";
import * as fittings from "./fittings.js";
import * as flow from "./flow.js";
import * as gauge from "./gauge.js";
import * as gaugeLaws from "./gaugeLaws.js";
import { inOrder } from "./inOrder.js";
import * as limits from "./limits.js";
import * as lines from "./lines.js";
import * as loading from "./loading.js";
import * as most from "./most.js";
import * as passage from "./passage.js";
import * as path from "./path.js";
import * as pumps from "./pumps.js";
import * as screens from "./screens.js";
import * as soil from "./soil.js";
import * as spreads from "./spreads.js";
import * as vapour from "./vapour.js";
import * as viscosity from "./viscosity.js";
import * as waterInFuel from "./waterInFuel.js";
import * as yard from "./yard.js";
import * as yardDays from "./yardDays.js";
import * as yearCost from "./yearCost.js";

/** A topic of the reference pages, with its formulas by name. */
export interface FormulaTopic {
  readonly topic: string;
  readonly formulas: readonly Formula[];
}

/** Every formula by topic, in the order of reference pages. */
export const formulaTopics: readonly FormulaTopic[] = [
  { topic: "Flow in a bore", formulas: inOrder(flow) },
  { topic: "Lines", formulas: inOrder(lines) },
  { topic: "Lines between laminar and turbulent flow", formulas: inOrder(passage) },
  { topic: "Fittings, valves, orifices and climbs", formulas: inOrder(fittings) },
  { topic: "Filters", formulas: inOrder(filters) },
  { topic: "Filters known by an estimate", formulas: inOrder(estimates) },
  { topic: "Fibre mats", formulas: inOrder(fibres) },
  { topic: "Strainers", formulas: inOrder(screens) },
  { topic: "Density of fuel", formulas: inOrder(density) },
  { topic: "Viscosity of fuel", formulas: inOrder(viscosity) },
  { topic: "Vapour and air in fuel", formulas: inOrder(vapour) },
  { topic: "Air pressure", formulas: inOrder(air) },
  { topic: "Along the path", formulas: inOrder(path) },
  { topic: "Demand and pumps", formulas: inOrder(pumps) },
  { topic: "Limits and ceilings", formulas: inOrder(limits) },
  { topic: "Curves", formulas: inOrder(curves) },
  { topic: "Duty and changes", formulas: inOrder(duty) },
  { topic: "What filters catch", formulas: inOrder(soil, caught) },
  { topic: "Water in fuel", formulas: inOrder(waterInFuel) },
  {
    topic: "How filters plug",
    formulas: inOrder(loading),
  },
  {
    topic: "Reading a gauge",
    formulas: inOrder(gauge, gaugeLaws),
  },
  { topic: "At the bench", formulas: inOrder(bench) },
  { topic: "Comparing systems", formulas: inOrder(choosing, most) },
  { topic: "What a year costs", formulas: inOrder(yearCost) },
  {
    topic: "A yard of machines",
    formulas: inOrder(yard, yardDays),
  },
  { topic: "Draws of what is uncertain", formulas: inOrder(spreads) },
];

/** Every formula, in the order of reference pages. */
export const formulas: readonly Formula[] = formulaTopics.flatMap((one) => one.formulas);
