import type { Run } from "../circuit/Run.js";

/** Flow beyond which nothing on a machine's fuel line is looked for, m3/s. */
const FAR = 1e3;

/** Relative step that ends the search: what is left is about its square, below rounding. */
const CLOSE = 1e-8;

/**
 * The largest flow, m3/s, whose drop does not go over a given one, Pa: 0 where even no flow costs more, Infinity where no
 * flow up to 1000 m3/s costs as much.
 */
export function lastFlow(run: Run, drop: number): number {
  if (run.shut || !(run.at(0) <= drop)) return 0;
  if (run.free) return Infinity;
  const flow = run.flowAt(drop, CLOSE);
  return flow > FAR ? Infinity : Math.max(0, flow);
}
