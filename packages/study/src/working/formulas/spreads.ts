import { formula } from "../Formula.js";

const sets = { c: ["chance in one set of draws", "1", "ratio"], n: ["how many sets", "1"] } as const;

/** The chance of something over sets of draws. */
export const chance = formula({
  id: "chance",
  name: "Chance of something: its mean over sets of draws",
  text: "sum(c) / n",
  symbols: sets,
  result: ["m", "chance", "1", "ratio"],
  holds: "sets of equal size, each turned independently",
  accuracy: "its standard error",
  source: "A. B. Owen, Proc. Winter Simulation Conf. (1998) 571: randomized quasi-Monte Carlo; from memory",
});

/** The standard error of that chance. */
export const chanceError = formula({
  id: "chance-error",
  name: "Standard error of a chance over sets of draws",
  text: "sqrt(sum((c - m)^2) / (n - 1) / n)",
  symbols: { ...sets, m: ["chance over all sets", "1", "ratio"] },
  result: ["e", "standard error of the chance", "1", "ratio"],
  holds: "sets of equal size, each turned independently",
  accuracy: "an estimate from ten sets, itself within some 25 %",
  source: "A. B. Owen, Proc. Winter Simulation Conf. (1998) 571: randomized quasi-Monte Carlo; from memory",
});
