import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;

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
