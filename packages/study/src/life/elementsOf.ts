import {
  assumedLoading,
  type CaptureGiven,
  type Circuit,
  capacityPoint,
  captureOf,
  type Filter,
  fitLoadingLaw,
  type LoadingLaw,
  lawConstants,
  loadAtRatio,
  rescaleLaw,
  type SoilElement,
} from "@thirstline/core";
import type { Built, System, SystemFilter } from "@thirstline/spec/system";
import { filtersOf } from "./filtersOf.js";
import type { LifeCaution } from "./LifeAnswer.js";

/** The elements to follow, and what is assumed of them. */
export interface Elements {
  readonly elements: readonly SoilElement[];
  readonly cautions: readonly LifeCaution[];
}

/**
 * Every filter that fuel passes, as an element that fills: what it catches from its betas, how it plugs from its capacity
 * test, or from handbook capacities by its area where nobody tested it.
 */
export function elementsOf(system: System, built: Built): Elements {
  const cautions: LifeCaution[] = [];
  const parts = new Map(coreFilters(built).map((filter) => [filter.name ?? "", filter]));
  const elements = filtersOf(system).flatMap((filter): SoilElement[] => {
    const part = parts.get(filter.name);
    if (!part || filter.blocked) return [];
    const capture = captureOf({
      ...(filter.betas === undefined ? {} : { betas: filter.betas }),
      ...ratingOf(filter),
      ...(filter.leak === undefined ? {} : { leak: filter.leak }),
      reversed: filter.reversed,
    });
    if (!capture.known) cautions.push({ code: "capture unknown", element: filter.name, why: capture.reason });
    else {
      for (const caution of capture.cautions) cautions.push({ code: "capture", element: filter.name, caution });
    }
    const law = lawOf(filter, part, cautions);
    const soil = law && part.restriction > 1 ? loadAtRatio(law, part.restriction) : 0;
    if (soil > 0) cautions.push({ code: "starts full of soil", element: filter.name });
    return [{ name: filter.name, law, efficiency: capture.known ? capture.efficiency.middle : null, soil }];
  });
  return { elements, cautions };
}

/**
 * How a filter plugs: by its capacity tests, or by handbook capacities and its area. Which law a single test belongs to
 * it cannot tell; intermediate blocking lies between the others and is taken unless the file names one.
 */
function lawOf(filter: SystemFilter, part: Filter, cautions: LifeCaution[]): LoadingLaw | null {
  const resistance = part.medium.linear.middle;
  const tests = [filter.lighterCapacityTest, filter.capacityTest].filter((test) => test !== undefined);
  if (tests.length > 0) {
    const name = filter.loadingLaw ?? "intermediate";
    if (filter.loadingLaw === undefined) cautions.push({ code: "law assumed", element: filter.name, law: name });
    // A law of one constant goes by the test that went furthest.
    const points = tests.map((test) => capacityPoint(test, resistance)).slice(-lawConstants[name].length);
    const fit = fitLoadingLaw(name, points);
    if (!fit.known) cautions.push({ code: "tests fit no law", element: filter.name, law: name, why: fit.reason });
    return fit.known ? fit.law : null;
  }
  const area = filter.area ?? ("area" in filter.medium ? filter.medium.area : undefined);
  if (area === undefined) {
    cautions.push({ code: "no capacity", element: filter.name });
    return null;
  }
  const cleanDrop = resistance * COMMON.dynamicViscosity * COMMON.velocity * area;
  cautions.push({ code: "capacity assumed", element: filter.name });
  return rescaleLaw(assumedLoading({ make: filter.make ?? "cellulose", cleanDrop }).middle, 1 / area);
}

/** Fuel and face velocity at which handbook capacities are taken, Pa s and m/s; common practice, no source. */
const COMMON = { dynamicViscosity: 2.5e-3, velocity: 2e-4 };

function ratingOf(filter: SystemFilter): Partial<Pick<CaptureGiven, "rating">> {
  if (filter.statedRating) return { rating: filter.statedRating };
  return filter.medium.by === "rating" ? { rating: filter.medium } : {};
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
