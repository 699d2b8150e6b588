import { formula } from "../Formula.js";

const practice = { source: "common practice, no source", accuracy: "one standard deviation, as is usual" } as const;

/** How far viscosity may be off. */
export const viscosityOff = formula({
  id: "gauge-viscosity-off",
  name: "How far the viscosity may be off, by the fuel's temperature",
  text: "abs(log(a / b))",
  symbols: {
    a: ["viscosity with the temperature off by one standard deviation", "Pa s"],
    b: ["viscosity at the temperature noted or taken", "Pa s"],
  },
  result: ["u", "standard deviation of the viscosity's logarithm", "1"],
  holds: "temperatures known to 2 K, or 6 K where nobody noted it",
  ...practice,
});

/** Two gauges are read. */
export const twoGauges = formula({
  id: "gauge-two-gauges",
  name: "Error of two gauges together",
  text: "sqrt(2) * g",
  symbols: { g: ["error of one gauge", "Pa"] },
  result: ["g", "error of both gauges together", "Pa"],
  holds: "gauges that are off independently",
  accuracy: "exact",
  source: "sum of variances",
});

/** How far a reading may be off. */
export const readingSigma = formula({
  id: "gauge-sigma",
  name: "How far one reading may be off: gauge, demand and temperature together",
  text: "c * sqrt(g^2 + (P * n)^2 + (P * u)^2)",
  symbols: {
    c: ["by how much readings scatter more than is usual", "1"],
    g: ["error of the gauge", "Pa"],
    P: ["growth of what is read with demand, and with viscosity alike", "Pa"],
    n: ["error of the demand", "1", "ratio"],
    u: ["error of the viscosity's logarithm", "1"],
  },
  result: ["s", "standard deviation of one reading", "Pa"],
  holds: "errors that have nothing to do with each other",
  accuracy: "what readings themselves tell of it, and what is usual",
  source: "sum of variances",
});

/** A miss held, so that one bad reading is not scatter. */
export const heldMiss = formula({
  id: "gauge-held-miss",
  name: "A miss as the scatter counts it",
  text: "min(k, abs(m))",
  symbols: { k: ["most that one reading counts", "1"], m: ["miss in standard deviations", "1"] },
  result: ["h", "miss held", "1"],
  holds: "always: one bad reading is not scatter",
  accuracy: "a choice, not a law",
  source: "P. J. Huber, Ann. Math. Statist. 35 (1964) 73, in kind; from memory",
});

/** Readings that speak of the scatter. */
export const freeReadings = formula({
  id: "gauge-free-readings",
  name: "Readings that are left to tell the scatter",
  text: "max(1, n - k)",
  symbols: { n: ["readings", "1"], k: ["constants of the growth", "1"] },
  result: ["f", "readings left", "1"],
  holds: "always",
  accuracy: "exact",
  source: "definition",
});

/** By how much readings scatter more than is usual. */
export const scatterScale = formula({
  id: "gauge-scatter-scale",
  name: "By how much readings scatter more, or less, than is usual",
  text: "b * sqrt((w / b^2 + sum(h^2)) / (w + f))",
  symbols: {
    b: ["the same in the round before; 1 in the first", "1"],
    w: ["readings that what is usual counts as", "1"],
    h: ["misses held, in standard deviations of the round before", "1"],
    f: ["readings left to tell the scatter", "1"],
  },
  result: ["c", "scatter over the usual one", "1"],
  holds: "two rounds, the second with the better law",
  accuracy: "an estimate from few readings, held by what is usual",
  source: "weighted mean of variances; the weights are common practice, no source",
});
