import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;
const fit = { accuracy: "that of the fit", source: "definition" } as const;

/** Resistance by cold. */
export const moreByCold = formula({
  id: "gauge-more-by-cold",
  name: "Resistance that cold adds beyond viscosity",
  text: "x * max(1, r) * max(0 * T, B - T) / t",
  symbols: {
    x: ["size fitted: share of the resistance for every 10 K", "1"],
    r: ["resistance over clean by soil", "1"],
    B: ["temperature below which it shows", "K"],
    T: ["temperature of the coldest reading", "K"],
    t: ["ten kelvins", "K"],
  },
  result: ["e", "resistance added", "1"],
  holds: "readings from a range of temperatures",
  ...fit,
});

/** Resistance that falls. */
export const moreByFall = formula({
  id: "gauge-more-by-fall",
  name: "Resistance lost by the last reading where it falls with time",
  text: "-x * t / max(s, T - b)",
  symbols: {
    x: ["size fitted: what is lost from the first reading to the last", "1"],
    t: ["running time at the last reading", "s"],
    s: ["a second, the least there may lie between", "s"],
    T: ["running time at the last reading of all", "s"],
    b: ["running time at the first reading", "s"],
  },
  result: ["e", "resistance added", "1"],
  holds: "no growth besides",
  ...fit,
});

/** A resistance with more added. */
export const ratioWithMore = formula({
  id: "gauge-ratio-with-more",
  name: "Resistance with what is found besides soil",
  text: "r + e",
  symbols: { r: ["resistance over clean by soil", "1"], e: ["resistance added", "1"] },
  result: ["r", "resistance over clean", "1"],
  holds: "always",
  ...exact,
});

/** What something makes of a pressure. */
export const madeOfPressure = formula({
  id: "gauge-made-of-pressure",
  name: "What it makes of what is read",
  text: "a - b",
  symbols: { a: ["what the model lets read with more resistance, or demand", "Pa"], b: ["with less", "Pa"] },
  result: ["p", "what it makes of what is read", "Pa"],
  holds: "the law fitted best, at that reading",
  ...fit,
});

/** What less flow, or a step asked of, makes of a pressure. */
export const sizeTimesSlope = formula({
  id: "gauge-size-times-slope",
  name: "What a size fitted makes of what is read",
  text: "x * P",
  symbols: {
    x: ["size: share of the flow, or resistance over clean", "1"],
    P: ["growth of what is read with it", "Pa"],
  },
  result: ["p", "what it makes of what is read", "Pa"],
  holds: "small sizes",
  accuracy: "a straight line where the model bends a little",
  source: "definition",
});

/** The size a step would have. */
export const scoreSize = formula({
  id: "gauge-score-size",
  name: "Size that a step would have, with nothing fitted anew",
  text: "-(p - q) / (s - u)",
  symbols: {
    p: ["what it adds times what is missed, summed", "1"],
    q: ["how much of that the fit's own parameters take", "1"],
    s: ["what it adds squared, summed", "1"],
    u: ["how much of that the fit's own parameters take", "1"],
  },
  result: ["x", "size", "1"],
  holds: "a straight model about the fit",
  accuracy: "within a few per cent",
  source: "C. R. Rao, Proc. Camb. Phil. Soc. 44 (1948) 50 (score), from memory",
});
