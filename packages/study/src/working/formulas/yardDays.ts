import { formula } from "../Formula.js";

const straight = { accuracy: "that of use being even", source: "common practice, no source" } as const;

/** A limit of the calendar. */
export const calendarDue = formula({
  id: "calendar-due",
  name: "Days from today until a calendar limit",
  text: "c + t / D",
  symbols: {
    c: ["days from today to the change, less than none when past", "d"],
    t: ["calendar time between changes", "s"],
    D: ["seconds in a day", "s/d"],
  },
  result: ["m", "days from today, not whole", "d"],
  holds: "always",
  accuracy: "exact",
  source: "calendar arithmetic",
});

/** Whichever limit comes first. */
export const firstDue = formula({
  id: "first-due",
  name: "Whichever limit comes first",
  text: "min(d)",
  symbols: { d: ["days to each limit of each element", "d"] },
  result: ["d", "days until it is due", "d"],
  holds: "limits that never come are not in it",
  accuracy: "exact",
  source: "definition",
});

/** Parts to order. */
export const toOrder = formula({
  id: "parts-to-order",
  name: "Parts to order",
  text: "max(0, n - h)",
  symbols: { n: ["parts that fall due in the days looked ahead", "1"], h: ["parts on hand", "1"] },
  result: ["k", "parts to order", "1"],
  holds: "on hand counts as none where the shelf does not say",
  accuracy: "exact",
  source: "definition",
});

/** A chance by counting draws. */
export const drawsBefore = formula({
  id: "draws-before-due",
  name: "Chance of a limit before the day it is due",
  text: "m / n",
  symbols: { m: ["draws whose limit comes before", "1"], n: ["draws", "1"] },
  result: ["P", "chance of a limit before it is due", "1", "ratio"],
  holds: "draws that came to no answer are left out",
  accuracy: "that of a count: sqrt(P (1 - P) / n), one standard error",
  source: "definition",
});

/** A prediction moved to where a gauge shows the machine to be. */
export const runAndLeft = formula({
  id: "run-and-left",
  name: "Running time to the limit, from a gauge reading",
  text: "u + l",
  symbols: { u: ["running time since the change when it was read", "s"], l: ["running time left then", "s"] },
  result: ["t", "running time from the change to the limit", "s"],
  holds: "a reading below the limit at change and over that of clean elements",
  ...straight,
});

/** What a prediction has left from a reading on. */
export const leftFromReading = formula({
  id: "left-from-reading",
  name: "Running time the prediction has left from a gauge reading on",
  text: "e - (f + (g - f) * (v - p) / (q - p))",
  symbols: {
    e: ["running time to the predicted limit", "s"],
    f: ["moment before the reading's vacuum is predicted", "s"],
    g: ["moment after it", "s"],
    v: ["vacuum read", "Pa"],
    p: ["vacuum predicted at the moment before", "Pa"],
    q: ["vacuum predicted at the moment after", "Pa"],
  },
  result: ["l", "running time left", "s"],
  holds: "the prediction has the right shape and another pace; straight between its moments",
  ...straight,
});

/** The same beyond all that is predicted. */
export const leftStraight = formula({
  id: "left-straight-on",
  name: "Running time left, straight on from clean to the limit",
  text: "u * (c - v) / (v - p)",
  symbols: {
    u: ["running time since the change when it was read", "s"],
    c: ["limit at change", "Pa"],
    v: ["vacuum read", "Pa"],
    p: ["vacuum predicted with clean elements", "Pa"],
  },
  result: ["l", "running time left", "s"],
  holds: "where the prediction does not reach the reading, or no limit",
  ...straight,
});

/** The sooner of a prediction and what a gauge says. */
export const sooner = formula({
  id: "restriction-sooner",
  name: "A reading brings the day nearer, never further",
  text: "min(t)",
  symbols: { t: ["running time to the limit, as predicted and from the reading", "s"] },
  result: ["t", "running time from the change to the limit", "s"],
  holds: "always",
  ...straight,
});
