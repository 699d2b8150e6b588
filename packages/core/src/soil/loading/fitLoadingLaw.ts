import { InputError } from "../../InputError.js";
import { requireMoreThan } from "../../require.js";
import { fitPair } from "./fitPair.js";
import { singles } from "./forms.js";
import type { LoadingFit, LoadingPoint } from "./LoadingFit.js";
import { type CombinedLawName, type LoadingLawName, lawConstants } from "./LoadingLawKinds.js";
import { loadingLaw } from "./loadingLaw.js";

/**
 * The loading law through tested points: one point fixes a law of one constant, two points a law of two.
 *
 * One point does not say which law it is. Before the point a cake's restriction stands highest and complete blocking's
 * lowest, beyond it the other way round; so a life to a smaller rise lies between those two.
 *
 * @param name which law
 * @param points one or two, each with a load above 0 and a ratio above 1; ratio and load rise together
 * @throws InputError for the wrong number of points, or points that are none
 * @see `capacityPoint` for a point from a capacity test
 * @example
 * fitLoadingLaw("complete", [{ load: 0.04, ratio: 18.5 }]) // plugs at 42.3 g
 */
export function fitLoadingLaw(name: LoadingLawName, points: readonly LoadingPoint[]): LoadingFit {
  if (!Object.hasOwn(lawConstants, name)) {
    throw new InputError("fitLoadingLaw", "name", Object.keys(lawConstants).join(", "), name);
  }
  const needed = lawConstants[name].length;
  if (points.length !== needed) {
    throw new InputError("fitLoadingLaw", "points", `${needed} for a ${name} law`, points.length);
  }
  points.forEach(({ load, ratio }, at) => {
    requireMoreThan("fitLoadingLaw", `points[${at}].load`, load, 0);
    requireMoreThan("fitLoadingLaw", `points[${at}].ratio`, ratio, 1);
  });
  const [near, far] = [...points].sort((one, other) => one.load - other.load);
  const [first, second] = lawConstants[name];
  if (!near || !first) throw new InputError("fitLoadingLaw", "points", "at least one", points);
  if (!far || !second) {
    return { known: true, law: loadingLaw(name, { [first]: singles[first].constant(near.load, near.ratio) }) };
  }
  requireMoreThan("fitLoadingLaw", "the larger load", far.load, near.load);
  requireMoreThan("fitLoadingLaw", "the ratio at the larger load", far.ratio, near.ratio);
  return fitPair(name as CombinedLawName, near, far);
}
