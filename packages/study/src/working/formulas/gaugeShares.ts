import { formula } from "../Formula.js";

/** When the leading element comes to a resistance. */
export const leadTime = formula({
  id: "gauge-lead-time",
  name: "How long the element that goes first takes to a resistance, as life predicts it",
  text: "(m - a) / q",
  symbols: {
    m: ["soil on it at that resistance", "kg"],
    a: ["soil on it at the start", "kg"],
    q: ["soil it catches a year of duty", "kg"],
  },
  result: ["t", "years of duty", "1"],
  holds: "soil in the proportions that life predicts for clean elements",
  accuracy: "only proportions are used; how flows split anew is left out",
  source: "definition",
});

/** Soil on another element then. */
export const soilThen = formula({
  id: "gauge-soil-then",
  name: "Soil on another element after that time",
  text: "max(0 * a, a + q * t)",
  symbols: {
    a: ["soil on it at the start", "kg"],
    q: ["soil it catches a year of duty", "kg"],
    t: ["years of duty", "1"],
  },
  result: ["m", "soil on it", "kg"],
  holds: "soil in the proportions that life predicts for clean elements",
  accuracy: "only proportions are used; how flows split anew is left out",
  source: "definition",
});
