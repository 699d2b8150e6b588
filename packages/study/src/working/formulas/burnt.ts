import { formula } from "../Formula.js";

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
