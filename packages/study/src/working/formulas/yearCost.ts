import { formula } from "../Formula.js";

const MONEY = "catalogue currency";
const own = { accuracy: "that of prices and of how often elements are changed", source: "definition" } as const;
const common = { c: ["changes in a year", "1"], n: ["elements changed each time", "1"] } as const;

/** How often elements are changed in a year of duty. */
export const changesAYear = formula({
  id: "changes-a-year",
  name: "Changes in a year of duty",
  text: "Y / t",
  symbols: { Y: ["running time of a year", "s"], t: ["running time to the change", "s"] },
  result: ["c", "changes in a year", "1"],
  holds: "a duty that repeats from year to year",
  accuracy: "that of the time to the change",
  source: "definition",
});

/** What the elements of a year cost. */
export const elementsAYear = formula({
  id: "elements-a-year",
  name: "Cost of elements in a year",
  text: "c * n * p",
  symbols: { ...common, p: ["price of one", MONEY] },
  result: ["E", "cost of elements in a year", MONEY],
  holds: "all changed together",
  ...own,
});

/** What the work of a year costs. */
export const labourAYear = formula({
  id: "labour-a-year",
  name: "Cost of work in a year",
  text: "c * n * w / h * r",
  symbols: { ...common, w: ["work of changing one", "s"], h: ["one hour", "s"], r: ["cost of an hour of work", MONEY] },
  result: ["L", "cost of work in a year", MONEY],
  holds: "elements changed one after another by one pair of hands",
  ...own,
});

/** What stoppages cost, at their chance. */
export const stoppagesAYear = formula({
  id: "stoppages-a-year",
  name: "Cost of stoppages in a year, at their chance",
  text: "c * P * s",
  symbols: {
    c: common.c,
    P: ["chance of a limit before the change", "1", "ratio"],
    s: ["cost of one stoppage", MONEY],
  },
  result: ["S", "cost of stoppages in a year", MONEY],
  holds: "at most one stoppage between two changes",
  accuracy: "that of the chance",
  source: "an expected value, by definition",
});

/** All of it. */
export const yearTotal = formula({
  id: "year-cost",
  name: "Cost of a year",
  text: "sum(m)",
  symbols: { m: ["each cost that is known", MONEY] },
  result: ["T", "cost of a year", MONEY],
  holds: "costs that are not known are not in it",
  ...own,
});

/** How often a set is changed: whichever rule asks for the most changes. */
export const setsAYear = formula({
  id: "sets-a-year",
  name: "How often all elements are changed in a year: by whichever rule comes first",
  text: "max(c)",
  symbols: { c: ["changes in a year by each rule", "1"] },
  result: ["c", "changes in a year", "1"],
  holds: "always",
  accuracy: "exact",
  source: "definition",
});

/** Changes a year by a distance. */
export const changesByDistance = formula({
  id: "changes-by-distance",
  name: "Changes in a year by distance",
  text: "D / s",
  symbols: { D: ["distance in a year", "m", "distance"], s: ["distance between changes", "m", "distance"] },
  result: ["c", "changes in a year", "1"],
  holds: "always",
  accuracy: "that of the year's distance",
  source: "definition",
});

/** Changes a year by the calendar. */
export const changesByCalendar = formula({
  id: "changes-by-calendar",
  name: "Changes in a year by the calendar",
  text: "a / t",
  symbols: { a: ["calendar year of 365.25 days", "s"], t: ["calendar time between changes", "s"] },
  result: ["c", "changes in a year", "1"],
  holds: "always",
  accuracy: "exact",
  source: "definition",
});

/** One element with the work of changing it. */
export const elementWithWork = formula({
  id: "element-with-work",
  name: "One element with the work of changing it",
  text: "p + w / h * r",
  symbols: {
    p: ["price of one", MONEY],
    w: ["work of changing one", "s"],
    h: ["one hour", "s"],
    r: ["cost of an hour of work", MONEY],
  },
  result: ["k", "one element with its work", MONEY],
  holds: "always",
  ...own,
});

/** A year of an arrangement. */
export const arrangementYear = formula({
  id: "arrangement-year",
  name: "Elements and work of an arrangement in a year",
  text: "c * sum(n * k)",
  symbols: {
    c: ["changes in a year", "1"],
    n: ["elements of a stage", "1"],
    k: ["one element with its work", MONEY],
  },
  result: ["T", "cost of a year", MONEY],
  holds: "all changed together",
  ...own,
});
