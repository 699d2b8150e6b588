import type { CatalogueElement, System } from "@thirstline/spec/system";
import { asFitted, fittedFrom, type SwapOptions } from "@thirstline/study";
import type { Choosing } from "./choosing.js";

/** What `swap` goes by besides a file, from what was asked; `lives` where they were drawn beforehand. */
export function swapOptions(
  system: System,
  { choice, catalogue, query, fitted }: Choosing,
  lives: SwapOptions["lives"] | null,
): SwapOptions {
  return {
    fitted: fitted ?? fittedIn(system, choice.at, catalogue),
    draws: 0,
    ...(lives ? { lives } : {}),
    ...(query.temperatures.length === 0 ? {} : { temperatures: query.temperatures }),
    ...(choice.rating === null ? {} : { rating: choice.rating }),
    ...(choice.labour === null ? {} : { labourRate: choice.labour }),
    ...(choice.stoppage === null ? {} : { stoppage: choice.stoppage }),
  };
}

/** What the catalogue calls the element that is fitted, going by its figures. */
function fittedIn(system: System, at: readonly string[], catalogue: readonly CatalogueElement[]) {
  const [first] = at;
  return first === undefined ? null : fittedFrom(asFitted(system, first).filter, catalogue);
}
