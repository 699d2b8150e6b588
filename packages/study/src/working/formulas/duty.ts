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

/** Distance run in a time. */
export const distanceRun = formula({
  id: "distance",
  name: "Distance run",
  text: "D * t / Y",
  symbols: { D: ["distance in a year", "m", "distance"], t: ["running time", "s"], Y: ["running time of a year", "s"] },
  result: ["d", "distance", "m", "distance"],
  holds: "distance spread evenly over the running time",
  accuracy: "that of the year's distance",
  source: "definition",
});

/** What a meter will show. */
export const hourMeter = formula({
  id: "hour-meter",
  name: "What the hour meter will show",
  text: "h + t",
  symbols: { h: ["hour meter at the last change", "s"], t: ["running time since", "s"] },
  result: ["h", "hour meter", "s"],
  holds: "always",
  ...exact,
});

/** What the distance meter will show. */
export const distanceMeter = formula({
  id: "distance-meter",
  name: "What the distance meter will show",
  text: "s + d",
  symbols: { s: ["distance meter at the last change", "m", "distance"], d: ["distance since", "m", "distance"] },
  result: ["s", "distance meter", "m", "distance"],
  holds: "always",
  ...exact,
});

/** Mean burn over the loads of a season. */
export const meanBurn = formula({
  id: "mean-burn",
  name: "Mean burn over the loads of a season",
  text: "sum(x * l) * Q_b",
  symbols: {
    x: ["share of the running time", "1", "ratio"],
    l: ["load over full load", "1", "ratio"],
    Q_b: ["burn at full load", "m3/s"],
  },
  result: ["q", "mean burn", "m3/s"],
  holds: "burn in step with the load",
  accuracy: "specific consumption rises at part load, which is not counted",
  source: "common practice, no source",
});

/** Fuel burnt over the seasons up to a time. */
export const fuelBurnt = formula({
  id: "fuel-burnt",
  name: "Fuel burnt up to a time",
  text: "sum(q * t)",
  symbols: { q: ["mean burn in a season", "m3/s"], t: ["running time in that season", "s"] },
  result: ["B", "fuel burnt", "m3"],
  holds: "seasons one after another",
  accuracy: "that of the burn",
  source: "definition",
});

/** Fuel burnt beyond what was followed. */
export const burntBeyond = formula({
  id: "fuel-burnt-beyond",
  name: "Fuel burnt beyond the time that was followed, at its mean",
  text: "B * t / t_1",
  symbols: { B: ["fuel burnt up to then", "m3"], t: ["running time asked", "s"], t_1: ["running time followed", "s"] },
  result: ["B", "fuel burnt", "m3"],
  holds: "a duty that repeats from year to year",
  accuracy: "the seasons of the last year are evened out",
  source: "common practice, no source",
});

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
