import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;
const fit = { accuracy: "that of the fit", source: "definition" } as const;

/** What other readings let expect. */
export const expectedPressure = formula({
  id: "gauge-expected",
  name: "What the other readings let expect",
  text: "v - k * s",
  symbols: {
    v: ["pressure read", "Pa"],
    k: ["standard deviations off", "1"],
    s: ["standard deviation of the reading", "Pa"],
  },
  result: ["e", "pressure expected", "Pa"],
  holds: "a reading that stands off by more than scatter",
  ...fit,
});

/** How far file and machine lie apart. */
export const demandApart = formula({
  id: "gauge-demand-apart",
  name: "How far the machine's demand and friction lie from the file's",
  text: "f - 1",
  symbols: { f: ["demand over the file's", "1"] },
  result: ["x", "demand over the file's, less one", "1", "ratio"],
  holds: "nothing but soil in the readings",
  ...fit,
});

/** A demand a little beside the fitted one. */
export const timesFitted = formula({
  id: "gauge-times-fitted",
  name: "A demand a little beside the one fitted",
  text: "c * f",
  symbols: { c: ["how much of it", "1"], f: ["demand over the file's, as fitted", "1"] },
  result: ["f", "demand over the noted one", "1"],
  holds: "always",
  ...exact,
});

/** How far a slope is taken over. */
export const slopeStep = formula({
  id: "gauge-slope-step",
  name: "Resistance over which a slope is taken",
  text: "max(1, r - 1) / 10",
  symbols: { r: ["resistance over clean", "1"] },
  result: ["e", "resistance added", "1"],
  holds: "differences small enough to be straight",
  accuracy: "within a few per cent",
  source: "difference quotient",
});

/** Deviations of a feed pressure. */
export const turnedDeviations = formula({
  id: "gauge-turned-deviations",
  name: "Deviations turned round: more feed pressure is less resistance",
  text: "-k",
  symbols: { k: ["standard deviations off, soil making more of it", "1"] },
  result: ["k", "standard deviations off", "1"],
  holds: "feed pressures, which fall as elements fill",
  ...exact,
});
