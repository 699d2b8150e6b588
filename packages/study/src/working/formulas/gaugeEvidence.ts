import { formula } from "../Formula.js";

const d = ["demand of the file off by, in standard deviations", "1"] as const;
const z = ["zero off by, in standard deviations", "1"] as const;

/** How likely readings are. */
export const deviance = formula({
  id: "gauge-deviance",
  name: "Deviance: twice the negative logarithm of the likelihood, the common scale of the scatter averaged out",
  text: "(n + w) * log(w / c^2 + S) + d^2 + z^2",
  symbols: {
    n: ["readings", "1"],
    w: ["readings that what is usual counts as", "1"],
    c: ["scatter over the usual one", "1"],
    S: ["sum of squared misses of the readings", "1"],
    d,
    z,
  },
  result: ["D", "deviance", "1"],
  holds: "normally spread misses of a common, unknown scale",
  accuracy: "up to a constant that all laws share",
  source: "G. E. P. Box and G. C. Tiao, Bayesian Inference in Statistical Analysis (1973), from memory",
});

/** What Akaike's criterion adds. */
export const akaikeCorrection = formula({
  id: "gauge-akaike-correction",
  name: "What constants cost, with the correction for few readings",
  text: "2 * k + 2 * k * (k + 1) / (n + w - k - 1)",
  symbols: {
    k: ["constants of the growth", "1"],
    n: ["readings", "1"],
    w: ["readings that what is usual counts as", "1"],
  },
  result: ["C", "cost of the constants", "1"],
  holds: "more readings than constants",
  accuracy: "exact for straight models, good for these",
  source: "C. M. Hurvich and C.-L. Tsai, Biometrika 76 (1989) 297",
});

/** How likely a law is against the best. */
export const lawLikelihood = formula({
  id: "gauge-law-likelihood",
  name: "How likely a law is against the best one",
  text: "exp((a + b - (D + C)) / 2)",
  symbols: {
    a: ["deviance of the best law", "1"],
    b: ["cost of the constants of the best law", "1"],
    D: ["deviance of the law", "1"],
    C: ["cost of its constants", "1"],
  },
  result: ["x", "likelihood over the best law's", "1"],
  holds: "laws fitted to the same readings",
  accuracy: "as good as the criterion",
  source: "K. P. Burnham and D. R. Anderson, Model Selection and Multimodel Inference (2nd ed. 2002), section 2.9",
});

/** Akaike's weight of a law. */
export const akaikeWeight = formula({
  id: "gauge-akaike-weight",
  name: "Akaike weight of a law",
  text: "x / sum(y)",
  symbols: {
    x: ["likelihood of the law over the best one's", "1"],
    y: ["likelihoods of all laws over the best one's", "1"],
  },
  result: ["w", "weight of the law", "1", "ratio"],
  holds: "one of these laws is the right one; of a law's mixes only the best counts",
  accuracy: "as good as the criterion",
  source: "K. P. Burnham and D. R. Anderson, Model Selection and Multimodel Inference (2nd ed. 2002), section 2.9",
});

/** What must be won before something is taken for more than scatter. */
export const evidenceNeeded = formula({
  id: "gauge-evidence-needed",
  name: "How much deviance must be won before something is more than scatter",
  text: "(n + w) * log(1 + t^2 / f)",
  symbols: {
    n: ["readings", "1"],
    w: ["readings that what is usual counts as", "1"],
    t: ["standard errors that so small a share of Student's distribution lies beyond", "1"],
    f: ["degrees of freedom", "1"],
  },
  result: ["N", "deviance to be won", "1"],
  holds: "readings that stand off, steps, and whatever else is looked for besides soil",
  accuracy: "exact for straight models, good for these",
  source: "Student, Biometrika 6 (1908) 1; the chances are common practice, no source",
});

/** A chance shared by all the places looked at. */
export const chanceShare = formula({
  id: "gauge-chance-share",
  name: "Chance of a false alarm at one place, of all that are looked at",
  text: "c / k",
  symbols: { c: ["chance of a false alarm anywhere", "1", "ratio"], k: ["places and kinds looked at", "1"] },
  result: ["q", "chance at one place", "1"],
  holds: "always",
  accuracy: "on the safe side",
  source: "C. E. Bonferroni (1936), from memory",
});

/** What was won. */
export const evidenceWon = formula({
  id: "gauge-evidence-won",
  name: "Deviance won",
  text: "a - b",
  symbols: { a: ["least deviance without it", "1"], b: ["deviance with it", "1"] },
  result: ["W", "deviance won", "1"],
  holds: "laws fitted to the same readings",
  accuracy: "exact",
  source: "definition",
});
