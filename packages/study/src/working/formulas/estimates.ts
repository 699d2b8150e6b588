import { formula } from "../Formula.js";

const medium = { A: ["area of the medium", "m2"], t: ["thickness of the medium", "m", "bore"] } as const;
const result = ["R", "resistance of the clean medium", "1/m3"] as const;

/** Resistance of a medium estimated from its rating. */
export const ratingResistance = formula({
  id: "resistance-rating",
  name: "Parallel tubes: resistance of a medium estimated from its rating",
  text: "32 * T^2 * t / (e * (m * x)^2 * A)",
  symbols: {
    T: ["tortuosity, path over thickness", "1"],
    ...medium,
    e: ["porosity, the open share of the volume", "1"],
    m: ["mean flow pore over the rated size", "1"],
    x: ["rated size", "m", "particle size"],
  },
  result,
  holds: "creeping flow; a rating is not a pore size, so both ends of every range are taken",
  accuracy: "known to a factor of 2 either way at best",
  source: "F. A. L. Dullien, Porous Media (1992), for the parallel tubes; the ranges are common practice, no source",
  checkedBy: ["media/parallel-tubes"],
});

/** The likely figure between two ends known by their factor. */
export const geometricMean = formula({
  id: "geometric-mean",
  name: "Middle of a range known by its factor",
  text: "sqrt(a * b)",
  symbols: { a: ["low end", "1/m3"], b: ["high end", "1/m3"] },
  result,
  holds: "a figure known by a factor either way",
  accuracy: "a choice, not a law",
  source: "definition",
});

/** How far an estimate may be out. */
export const estimateFactor = formula({
  id: "estimate-factor",
  name: "Factor within which an estimate is known",
  text: "sqrt(b / a)",
  symbols: { a: ["low end", "1/m3"], b: ["high end", "1/m3"] },
  result: ["F", "factor either way from the middle", "1"],
  holds: "a figure known by a factor either way",
  accuracy: "exact",
  source: "definition",
});

/** Resistance of a fibre mat by a law for what a bed of fibres lets through. */
export const fibreResistance = formula({
  id: "resistance-fibres",
  name: "Resistance of a fibre mat",
  text: "4 * t / (k * d^2 * A)",
  symbols: {
    ...medium,
    k: ["permeability over fibre radius squared", "1"],
    d: ["fibre diameter", "m", "particle size"],
  },
  result,
  holds: "creeping flow across the fibres",
  accuracy: "the laws differ by 2.6 at a solidity of 0.1 and by 3.8 at 0.05, so lowest and highest are the ends",
  source: "C. N. Davies, Proc. Inst. Mech. Eng. 1B (1952) 185",
  checkedBy: ["fibre/laws", "fibre/davies"],
});
