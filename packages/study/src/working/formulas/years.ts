import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;

/** Running time of a year of duty. */
export const dutyYear = formula({
  id: "duty-year",
  name: "Running time of a year of duty",
  text: "h * n",
  symbols: { h: ["running time in a working day", "s"], n: ["working days in a year", "1"] },
  result: ["Y", "running time of a year", "s"],
  holds: "a duty that repeats from year to year",
  ...exact,
});

/** How far ahead is looked. */
export const horizon = formula({
  id: "horizon",
  name: "Running time looked ahead",
  text: "n * Y",
  symbols: { n: ["years looked ahead", "1"], Y: ["running time of a year", "s"] },
  result: ["H", "running time looked ahead", "s"],
  holds: "always",
  accuracy: "a choice, not a law",
  source: "common practice, no source",
});

/** A time as a share of a year of duty. */
export const yearsOf = formula({
  id: "years",
  name: "Running time in years of duty",
  text: "t / Y",
  symbols: { t: ["running time", "s"], Y: ["running time of a year", "s"] },
  result: ["y", "years of duty", "1"],
  holds: "a duty that repeats from year to year",
  ...exact,
});

/** Running time along the year. */
export const timeGone = formula({
  id: "time-gone",
  name: "Running time up to a moment: the seasons before it",
  text: "sum(t)",
  symbols: { t: ["running time of a stretch", "s"] },
  result: ["t", "running time", "s"],
  holds: "seasons one after another",
  ...exact,
});
