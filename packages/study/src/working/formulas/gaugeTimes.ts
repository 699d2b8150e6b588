import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;
const fit = { accuracy: "that of the fit", source: "definition" } as const;

/** Running time by an hour meter. */
export const timeByMeter = formula({
  id: "gauge-time-by-meter",
  name: "Running time since a run began, by the hour meter",
  text: "h - b",
  symbols: { h: ["hour meter at the reading", "s"], b: ["hour meter when the run began", "s"] },
  result: ["t", "running time since the run began", "s"],
  holds: "one meter, counted on",
  ...exact,
});

/** The same by dates. */
export const timeByDays = formula({
  id: "gauge-time-by-days",
  name: "Running time since a run began, by dates and the duty",
  text: "n * D * Y / a",
  symbols: {
    n: ["days since the run began", "d"],
    D: ["seconds in a day", "s/d"],
    Y: ["running time of a year of duty", "s"],
    a: ["calendar year of 365.25 days", "s"],
  },
  result: ["t", "running time since the run began", "s"],
  holds: "duty spread evenly over the calendar",
  accuracy: "that of use being even",
  source: "common practice, no source",
});

/** Resistance at which a limit is met. */
export const ratioAtLimit = formula({
  id: "gauge-ratio-at-limit",
  name: "Resistance at which the first limit is met, between two demands",
  text: "max(1, r + (f - a) / (b - a) * (s - r))",
  symbols: {
    r: ["resistance where it is met at the lesser demand", "1"],
    s: ["resistance where it is met at the larger demand", "1"],
    f: ["demand over the file's", "1"],
    a: ["the lesser demand", "1"],
    b: ["the larger demand", "1"],
  },
  result: ["r_l", "resistance over clean where the first limit is met", "1"],
  holds: "the worst duty point, tanks low, full demand",
  accuracy: "straight between demands that are 10 to 20 % apart",
  source: "interpolation",
});

/** Running time left. */
export const timeLeft = formula({
  id: "gauge-time-left",
  name: "Running time left: what soil still fits under the limit, over how fast it comes",
  text: "max(0 * t, (l - a) / k + s - t)",
  symbols: {
    l: ["load at which the limit is met", "1"],
    a: ["load at the beginning", "1"],
    k: ["load that comes in a second", "1/s"],
    s: ["running time at the beginning", "s"],
    t: ["running time at the last reading", "s"],
  },
  result: ["t_l", "running time left", "s"],
  holds: "soil that goes on coming as it did",
  ...fit,
});

/** What the hour meter will show. */
export const meterAtLimit = formula({
  id: "gauge-meter-at-limit",
  name: "What the hour meter shows at the limit",
  text: "b + t + l",
  symbols: {
    b: ["hour meter when the run began", "s"],
    t: ["running time at the last reading", "s"],
    l: ["running time left", "s"],
  },
  result: ["h", "hour meter at the limit", "s"],
  holds: "one meter, counted on",
  ...exact,
});

/** Room used up under the limit. */
export const roomUsed = formula({
  id: "gauge-room-used",
  name: "How much of an element's room for soil is used up",
  text: "(d - c) / (e - c)",
  symbols: {
    d: ["drop now", "Pa"],
    c: ["drop clean", "Pa"],
    e: ["drop when the first limit is met", "Pa"],
  },
  result: ["x", "room used up", "1", "ratio"],
  holds: "the demand fitted, where the limit is judged",
  ...fit,
});
