import type { CatalogueElement } from "@thirstline/spec/system";
import type { LifeAnswer } from "../life/LifeAnswer.js";
import type { YearlyCost } from "./SwapAnswer.js";

/** What work and stoppages cost, in the catalogue's own currency; what is left out is not counted. */
export interface CostGiven {
  /** of one hour of work */
  readonly labourRate?: number;
  /** of one stoppage */
  readonly stoppage?: number;
}

const HOUR = 3600;

/**
 * What the elements at some places cost in a year: elements and work at every change, and a stoppage at the chance that a
 * limit comes before the change. Changed when the life's own rule says so.
 *
 * @param given places, element and rates
 * @param found the life they have
 * @param chance of a limit before the interval, 0 to 1; null when not known
 */
export function yearlyCost(
  given: { readonly element: CatalogueElement | null; readonly at: readonly string[]; readonly cost: CostGiven },
  found: LifeAnswer,
  chance: number | null,
): YearlyCost {
  const { element, at, cost } = given;
  // An element that is spent at once is changed without end: no figure is any use.
  const changes = found.change && found.change.time > 0 ? found.year / found.change.time : null;
  const times = (one: number | undefined) => (changes === null || one === undefined ? null : changes * at.length * one);
  const elements = times(element?.price);
  const labour =
    cost.labourRate === undefined || element?.labour === undefined
      ? null
      : times((element.labour / HOUR) * cost.labourRate);
  const stoppages =
    cost.stoppage === undefined || chance === null || changes === null ? null : changes * chance * cost.stoppage;
  return {
    changes,
    elements,
    labour,
    stoppages,
    total: elements === null ? null : elements + (labour ?? 0) + (stoppages ?? 0),
  };
}
