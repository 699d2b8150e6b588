import {
  ASSUMED_RISE,
  assumedCapacities,
  capacityPoint,
  type Filter,
  fitLoadingLaw,
  type LoadingLaw,
  type LoadingPoint,
  lawConstants,
  PLUGGED,
} from "@thirstline/core";
import type { SystemFilter } from "@thirstline/spec/system";
import { areaOf, assumedMakeOf, type Guess } from "./Guess.js";
import type { LifeCaution } from "./LifeAnswer.js";

/** Fuel and face velocity at which handbook capacities are taken, Pa s and m/s; common practice, no source. */
const COMMON = { dynamicViscosity: 2.5e-3, velocity: 2e-4 };

/**
 * How a filter plugs: by its capacity tests, or by handbook capacities and its area. Which law a single test belongs to
 * it cannot tell; intermediate blocking lies between the others and is taken unless the file names one.
 */
export function lawOf(filter: SystemFilter, part: Filter, guess: Guess, cautions: LifeCaution[]): LoadingLaw | null {
  const name = filter.loadingLaw ?? "intermediate";
  const points = pointsOf(filter, part, guess);
  if (points === null) {
    cautions.push({ code: "no capacity", element: filter.name });
    return null;
  }
  if (points.some(({ ratio }) => ratio > PLUGGED)) {
    cautions.push({ code: "nothing to multiply", element: filter.name });
    return null;
  }
  if (assumedMakeOf(filter)) cautions.push({ code: "capacity assumed", element: filter.name });
  // A law of one constant goes by the test that went furthest.
  const used = points.slice(-lawConstants[name].length);
  if (used.length < lawConstants[name].length) {
    cautions.push({ code: "tests fit no law", element: filter.name, law: name, why: "needs two tests" });
    return null;
  }
  if (filter.loadingLaw === undefined) cautions.push({ code: "law assumed", element: filter.name, law: name });
  const fit = fitLoadingLaw(name, used);
  if (!fit.known) cautions.push({ code: "tests fit no law", element: filter.name, law: name, why: fit.reason });
  return fit.known ? fit.law : null;
}

function pointsOf(filter: SystemFilter, part: Filter, guess: Guess): LoadingPoint[] | null {
  const resistance = part.medium.linear.middle;
  const tests = [filter.lighterCapacityTest, filter.capacityTest].filter((test) => test !== undefined);
  if (tests.length > 0) {
    return tests.map((test) =>
      resistance > 0 ? capacityPoint(test, resistance) : { load: test.soil, ratio: Infinity },
    );
  }
  const make = assumedMakeOf(filter);
  const area = areaOf(filter);
  if (make === null || area === undefined) return null;
  const { least, most } = assumedCapacities[make];
  const at = guess.capacity(make);
  const cleanDrop = resistance * COMMON.dynamicViscosity * COMMON.velocity * area;
  // Known by its factor, so drawn evenly over its logarithm; half-way is the geometric mean that core takes as likely.
  return [{ load: area * least ** (1 - at) * most ** at, ratio: 1 + ASSUMED_RISE / cleanDrop }];
}
