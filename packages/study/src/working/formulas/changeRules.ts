import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;

/** Change by distance. */
export const changeByDistance = formula({
  id: "change-by-distance",
  name: "Running time to a service distance",
  text: "s / D * Y",
  symbols: {
    s: ["distance between changes", "m", "distance"],
    D: ["distance in a year", "m", "distance"],
    Y: ["running time of a year", "s"],
  },
  result: ["t", "running time to the change", "s"],
  holds: "distance spread evenly over the running time",
  ...exact,
});

/** Change by the calendar. */
export const changeByCalendar = formula({
  id: "change-by-calendar",
  name: "Running time to a service date",
  text: "c / a * Y",
  symbols: {
    c: ["calendar time between changes", "s"],
    a: ["calendar year of 365.25 days", "s"],
    Y: ["running time of a year", "s"],
  },
  result: ["t", "running time to the change", "s"],
  holds: "running time spread evenly over the year",
  ...exact,
});

/** Whichever rule comes first. */
export const firstRule = formula({
  id: "first-rule",
  name: "When to change: whichever comes first",
  text: "min(t)",
  symbols: { t: ["running time each rule allows", "s"] },
  result: ["t", "running time to the change", "s"],
  holds: "always",
  ...exact,
});

/** Latest of several. */
export const lastOf = formula({
  id: "last-of",
  name: "The latest of several ends",
  text: "max(t)",
  symbols: { t: ["end with the estimates at one of their ends", "s"] },
  result: ["t", "latest end", "s"],
  holds: "always",
  ...exact,
});

/** Earliest of several. */
export const earliestOf = formula({
  id: "earliest-of",
  name: "The earliest of several ends",
  text: "min(t)",
  symbols: { t: ["end with the estimates at one of their ends", "s"] },
  result: ["t", "earliest end", "s"],
  holds: "always",
  ...exact,
});
