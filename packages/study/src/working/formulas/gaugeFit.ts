import { formula } from "../Formula.js";

const squares = {
  holds: "misses that are normally spread and have nothing to do with each other",
  accuracy: "exact",
  source:
    "least squares; searched as in K. Levenberg, Q. Appl. Math. 2 (1944) 164 and D. W. Marquardt, J. SIAM 11 (1963) 431",
} as const;
const d = ["demand of the file off by, in standard deviations", "1"] as const;
const z = ["zero off by, in standard deviations", "1"] as const;

/** How far a reading is missed. */
export const missOfReading = formula({
  id: "gauge-miss",
  name: "How far a reading is missed, in standard deviations",
  text: "(p - v) / s",
  symbols: {
    p: ["what the gauge is reckoned to read", "Pa"],
    v: ["what was read", "Pa"],
    s: ["standard deviation of the reading", "Pa"],
  },
  result: ["m", "miss in standard deviations", "1"],
  ...squares,
});

/** What a fit makes least. */
export const sumOfSquares = formula({
  id: "gauge-sum-of-squares",
  name: "What the fit makes least: squared misses, with those of the file and the zero",
  text: "sum(m^2) + d^2 + z^2",
  symbols: { m: ["misses of the readings, in standard deviations", "1"], d, z },
  result: ["F", "sum of squared misses", "1"],
  ...squares,
});

/** The misses of the readings alone. */
export const readingSquares = formula({
  id: "gauge-reading-squares",
  name: "Squared misses of the readings alone",
  text: "sum(m^2)",
  symbols: { m: ["misses of the readings, in standard deviations", "1"] },
  result: ["S", "sum of squared misses of the readings", "1"],
  ...squares,
});

/** The condition of a least sum. */
export const normalEquation = formula({
  id: "gauge-normal-equation",
  name: "Normal equation: what moving it alone could still win of the sum; nothing where the sum is least",
  text: "sum(m * q)^2 / sum(q^2)",
  symbols: {
    m: ["every miss, those of the file and the zero too", "1"],
    q: ["how fast that miss grows with what is fitted", "1"],
  },
  result: ["W", "what moving it could still win", "1"],
  holds: "what is fitted lies inside its bounds",
  accuracy:
    "the search ends after a move that wins less than a ten-thousandth of the sum, or after eight; up to a quarter, half a standard error of it, may be left",
  source: "least squares",
});

/** Demand over the file's. */
export const fittedDemand = formula({
  id: "gauge-demand",
  name: "Demand, and all friction with it, over what the file says",
  text: "exp(a * d)",
  symbols: { a: ["how far the file may be off", "1", "ratio"], d },
  result: ["f", "demand over the file's", "1"],
  holds: "one error for all readings alike",
  accuracy: "that of the fit",
  source: "definition; 10 % is common practice, no source",
});

/** What all readings are off by. */
export const fittedZero = formula({
  id: "gauge-zero",
  name: "What all readings are off by alike",
  text: "s * z",
  symbols: { s: ["how far the zero may be off", "Pa"], z },
  result: ["p_0", "what all readings are off by", "Pa"],
  holds: "one error for all readings alike",
  accuracy: "that of the fit",
  source: "definition",
});
