import { forms, singles } from "./forms.js";
import type { LoadingFit, LoadingPoint } from "./LoadingFit.js";
import { type CombinedLawName, type LoadingLaw, lawConstants, type SingleLawName } from "./LoadingLawKinds.js";
import { lawOfConstants } from "./lawOfConstants.js";

/** Of each pair, the constant that is searched for: the closing law's, since the other then follows in closed form. */
const SEARCHED: Readonly<Record<CombinedLawName, SingleLawName>> = {
  "cake-complete": "complete",
  "cake-intermediate": "intermediate",
  "complete-standard": "complete",
  "intermediate-standard": "intermediate",
  "cake-standard": "standard",
};

/** Rounding in the far ratio that must not put a point outside a law it lies on. */
const ROUNDING = 1e-12;

/**
 * A law of two constants through two points. One constant is sought between none and all it takes to reach the near
 * point alone, the other follows from the near point; on that way the ratio at the far point only rises, or only falls.
 *
 * But for cake-intermediate, where it rises a little above that of intermediate blocking alone and comes back (with
 * both constants equal the pair is one exponential again). The search ends at the top, so of two laws that pass both
 * points the one with more cake is taken.
 */
export function fitPair(name: CombinedLawName, near: LoadingPoint, far: LoadingPoint): LoadingFit {
  const searched = SEARCHED[name];
  const most = singles[searched].constant(near.load, near.ratio);
  const farRatio = (constant: number): number => {
    const law = through(name, near, constant);
    return far.load >= forms[name].plugsAt(law) ? Infinity : forms[name].ratio(law, far.load);
  };
  const end = name === "cake-intermediate" ? topOf(farRatio, most) : most;
  const [without, alone] = [farRatio(0), farRatio(end)];
  if (far.ratio > Math.max(without, alone) * (1 + ROUNDING)) {
    return { known: false, reason: "grows too fast for this law" };
  }
  if (far.ratio < Math.min(without, alone) * (1 - ROUNDING)) {
    return { known: false, reason: "grows too slowly for this law" };
  }
  const rises = alone > without;
  let [low, high] = [0, end];
  for (let round = 0; round < 200; round++) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) break;
    if (farRatio(middle) < far.ratio === rises) low = middle;
    else high = middle;
  }
  return { known: true, law: through(name, near, low) };
}

/** The law whose searched constant is given and whose other is such that it passes the point. */
function through(name: CombinedLawName, { load, ratio }: LoadingPoint, constant: number): LoadingLaw {
  const searched = SEARCHED[name];
  const other = lawConstants[name].find((one) => one !== searched) ?? searched;
  const law = { ...lawOfConstants(name, () => 0), [searched]: constant };
  if (name === "cake-standard") {
    return { ...law, cake: Math.max(0, ratio - singles.standard.ratio(constant, load)) / load };
  }
  const left = Math.max(1, ratio / singles[searched].ratio(constant, load));
  return { ...law, [other]: singles[other].constant(singles[searched].effort(constant, load), left) };
}

/**
 * Where a function that rises and then falls is largest between 0 and an end: golden section, to about 1e-8 of the end.
 */
function topOf(value: (at: number) => number, end: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [0, end];
  for (let round = 0; round < 40; round++) {
    const step = golden * (high - low);
    if (value(high - step) < value(low + step)) low = high - step;
    else high = low + step;
  }
  return (low + high) / 2;
}
