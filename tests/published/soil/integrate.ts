import { createRequire } from "node:module";

// A general-purpose integrator with its own step control (Hairer and Wanner's ODEX). Loaded by require, because the
// types it ships are source text that does not pass this workspace's strict checks.
interface Solver {
  relativeTolerance: number;
  absoluteTolerance: number;
  initialStepSize: number;
  solve(rates: Rates, from: number, start: number[], to: number): { readonly y: number[]; readonly outcome: number };
}
const require = createRequire(import.meta.url);
const { Solver } = require("odex") as { Solver: new (size: number) => Solver };

/** Derivatives of all values at a moment. */
export type Rates = (at: number, values: number[]) => number[];

/** Values at the end of an interval that starts at 0. A run that does not end is an error, never a poor answer. */
export function integrate(rates: Rates, start: readonly number[], to: number): number[] {
  const solver = new Solver(start.length);
  solver.relativeTolerance = 1e-13;
  solver.absoluteTolerance = 1e-15;
  solver.initialStepSize = to / 1000;
  const { y, outcome } = solver.solve(rates, 0, [...start], to);
  if (outcome !== 0) throw new Error("the integration did not converge");
  return y;
}
