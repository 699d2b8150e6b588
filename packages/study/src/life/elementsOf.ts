import {
  absorberLaw,
  type Circuit,
  capacityPoint,
  type Filter,
  loadAtRatio,
  PLUGGED,
  type SoilElement,
} from "@thirstline/core";
import type { Built, System, SystemFilter } from "@thirstline/spec/system";
import { captureFor } from "./captureFor.js";
import { efficiencyOf } from "./efficiencyOf.js";
import { filtersOf } from "./filtersOf.js";
import { type Guess, oneBetaOf } from "./Guess.js";
import { keptBy } from "./keptBy.js";
import type { LifeCaution } from "./LifeAnswer.js";
import { lawOf } from "./lawOf.js";

/** The elements to follow, and what is assumed of them. */
export interface Elements {
  readonly elements: readonly SoilElement[];
  readonly cautions: readonly LifeCaution[];
}

/**
 * Every filter that fuel passes, as an element that fills: what it catches from its betas, how it plugs from its capacity
 * test, or from handbook capacities by its area where nobody tested it.
 *
 * @param flowsAtFull through each filter, m3/s, at which water is separated; asked only where an element absorbs it
 */
export function elementsOf(
  system: System,
  built: Built,
  guess: Guess,
  flowsAtFull: () => ReadonlyMap<string, number>,
): Elements {
  const cautions: LifeCaution[] = [];
  const parts = new Map(coreFilters(built).map((filter) => [filter.name ?? "", filter]));
  const filters = filtersOf(system);
  const flows = filters.some(({ absorbs }) => absorbs) ? flowsAtFull() : new Map<string, number>();
  const elements = filters.flatMap((filter): SoilElement[] => {
    const part = parts.get(filter.name);
    if (!part || filter.blocked) return [];
    const law = lawOf(filter, part, guess, cautions);
    const soil = law && part.restriction > 1 ? loadAtRatio(law, part.restriction) : 0;
    if (soil > 0) cautions.push({ code: "starts full of soil", element: filter.name });
    const efficiency = captured(filter, guess, cautions);
    const water = waterOn(filter, part, flows.get(filter.name) ?? 0, cautions);
    return [{ name: filter.name, law, efficiency, soil, ...water }];
  });
  return { elements, cautions };
}

function captured(filter: SystemFilter, guess: Guess, cautions: LifeCaution[]): SoilElement["efficiency"] {
  const capture = captureFor(filter);
  if (!capture.known) {
    cautions.push({ code: "capture unknown", element: filter.name, why: capture.reason });
    return null;
  }
  for (const caution of capture.cautions) cautions.push({ code: "capture", element: filter.name, caution });
  const oneBeta = oneBetaOf(filter);
  return oneBeta === null ? capture.efficiency.middle : efficiencyOf(capture, guess.capture(oneBeta));
}

/** What water does to a filter that absorbs it. Bowls keep water too, but before one that absorbs it only that matters. */
function waterOn(
  filter: SystemFilter,
  part: Filter,
  flow: number,
  cautions: LifeCaution[],
): Pick<SoilElement, "separates" | "swells"> {
  const { absorbs } = filter;
  if (!absorbs && !filter.separation) return {};
  const separates = keptBy(filter, flow);
  if (!absorbs) return { separates };
  if (!filter.separation) cautions.push({ code: "absorbs all", element: filter.name });
  const { water } = absorbs;
  const clean = part.medium.linear.middle;
  if ("restriction" in absorbs) return { separates, swells: absorberLaw({ water, ratio: absorbs.restriction }) };
  const ratio = clean > 0 ? capacityPoint({ ...absorbs, soil: water }, clean).ratio : Infinity;
  if (ratio > PLUGGED) {
    cautions.push({ code: "nothing to multiply", element: filter.name });
    return { separates };
  }
  return { separates, swells: absorberLaw({ water, ratio }) };
}

function coreFilters(built: Built): Filter[] {
  const inside = (circuit: Circuit): Filter[] => {
    switch (circuit.kind) {
      case "series":
        return circuit.items.flatMap(inside);
      case "parallel":
        return circuit.branches.flatMap(inside);
      case "filter":
        return [circuit];
      default:
        return [];
    }
  };
  const circuits = [...built.tanks.map((tank) => tank.path), built.suction, built.delivery];
  return circuits.flatMap((circuit) => (circuit ? inside(circuit) : []));
}
