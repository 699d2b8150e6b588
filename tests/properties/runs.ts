import type { Parameters } from "fast-check";

const factor = Number(process.env.PROPERTY_RUNS ?? 1);
const seed = Number(process.env.PROPERTY_SEED ?? 20261125);

/**
 * How often a law is tried: on the same random cases in every run, so that a gate never fails by luck.
 *
 * PROPERTY_SEED=7 draws other cases, PROPERTY_RUNS=20 twenty times as many: to hunt with, not to gate with.
 */
export function runs(count: number): Parameters<unknown> {
  // A failing case is shrunk no longer than this, and a law too slow to try is a failure too.
  const limit = { interruptAfterTimeLimit: 60_000 * Math.max(1, factor), markInterruptAsFailure: true };
  return { numRuns: Math.ceil(count * factor), seed, ...limit };
}
