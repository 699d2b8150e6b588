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

/** A topic of the reference pages, with its formulas in the order they are stated. */
export interface FormulaTopic {
  readonly topic: string;
  readonly formulas: readonly Formula[];
}

/** Every formula by topic, in the order of reference pages. */
export const formulaTopics: readonly FormulaTopic[] = [
  { topic: "Flow in a bore", formulas: Object.values(flow) },
  { topic: "Lines", formulas: Object.values(lines) },
  { topic: "Lines between laminar and turbulent flow", formulas: Object.values(passage) },
  { topic: "Fittings, valves, orifices and climbs", formulas: Object.values(fittings) },
  { topic: "Filters", formulas: Object.values(filters) },
  { topic: "Filters known by an estimate", formulas: Object.values(estimates) },
  { topic: "Fibre mats", formulas: Object.values(fibres) },
  { topic: "Strainers", formulas: Object.values(screens) },
  { topic: "Density of fuel", formulas: Object.values(density) },
  { topic: "Viscosity of fuel", formulas: Object.values(viscosity) },
  { topic: "Vapour and air in fuel", formulas: Object.values(vapour) },
  { topic: "Air pressure", formulas: Object.values(air) },
  { topic: "Along the path", formulas: Object.values(path) },
  { topic: "Demand and pumps", formulas: Object.values(pumps) },
  { topic: "Limits and ceilings", formulas: Object.values(limits) },
  { topic: "Curves", formulas: Object.values(curves) },
  { topic: "Duty and changes", formulas: Object.values(duty) },
  { topic: "What filters catch", formulas: [...Object.values(soil), ...Object.values(caught)] },
  { topic: "Water in fuel", formulas: Object.values(waterInFuel) },
  {
    topic: "How filters plug",
    formulas: Object.values(loading).flatMap((one) =>
      "id" in one ? [one as Formula] : (Object.values(one) as Formula[]),
    ),
  },
  { topic: "At the bench", formulas: Object.values(bench) },
  { topic: "Comparing systems", formulas: [...Object.values(choosing), ...Object.values(most)] },
  { topic: "What a year costs", formulas: Object.values(yearCost) },
  {
    topic: "A yard of machines",
    formulas: [...Object.values(yard).flatMap((one): Formula[] => Object.values(one)), ...Object.values(yardDays)],
  },
  { topic: "Draws of what is uncertain", formulas: Object.values(spreads) },
];

/** Every formula, in the order of reference pages. */
export const formulas: readonly Formula[] = formulaTopics.flatMap((one) => one.formulas);
