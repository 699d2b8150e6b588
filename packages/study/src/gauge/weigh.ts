import { type Fitted, fitAll, lineOf, type Weighed } from "./fitAll.js";
import type { Instant, Run } from "./Instant.js";
import { flat, isPlain, shapes } from "./shapes.js";

const plainShapes = [flat, ...shapes.filter(isPlain)];

/** A miss beyond so many deviations counts as so many when the scatter is estimated: one bad reading is not scatter. */
export const FAR = 2.5;

/**
 * How far each reading of a run may be off: gauge, demand and temperature together, at the resistance it was taken at, and
 * all of it scaled to the scatter that the best law leaves, as far as readings are many enough to speak.
 *
 * @param zeroSpread Pa, one standard deviation, of what all readings are off by alike
 * @param weight of what is usual, or stated, against the scatter: as of so many readings
 */
export function weigh(run: Run, zeroSpread: number, weight: number): Weighed {
  return weighings(run, zeroSpread, weight).weighed;
}

/** One round of it. */
export interface Weighing {
  /** as the readings were weighed before */
  readonly before: Weighed;
  readonly best: Fitted;
  /** of the misses, those far off held */
  readonly sum: number;
  /** readings less what grows, 1 at least */
  readonly free: number;
  /** what all sigmas were multiplied by, before and after */
  readonly scales: readonly [number, number];
}

/** The same with its rounds; none where there are too few readings. */
export function weighings(
  run: Run,
  zeroSpread: number,
  weight: number,
): { readonly weighed: Weighed; readonly rounds: readonly Weighing[] } {
  const rounds: Weighing[] = [];
  const line = lineOf(run.instants);
  const usual = { weight, sum: weight };
  const least = run.start.known ? run.start.ratio : 1;
  let weighed: Weighed = {
    run,
    zeroSpread,
    sigmas: sigmasOf(run.instants, (time) => Math.max(least, line(time))),
    prior: usual,
  };
  for (let round = 0; round < 2; round++) {
    const [best] = fitAll(weighed, [], [], plainShapes).sort((one, other) => one.score - other.score);
    if (!best) break;
    const state = best.model.stateAt(best.fit.parameters);
    const sigmas = sigmasOf(run.instants, (time) => Math.max(1, state.ratioAt(time)));
    const misses = best.fit.misses.subarray(0, sigmas.length);
    const sum = misses.reduce((total, one) => total + Math.min(FAR, Math.abs(one)) ** 2, 0);
    const scaleBefore = Math.sqrt(usual.sum / weighed.prior.sum);
    const free = Math.max(1, sigmas.length - best.model.growing);
    const scale = Math.sqrt((weighed.prior.sum + sum) / (weighed.prior.weight + free));
    const all = round === 0 ? scale : scale * scaleBefore;
    rounds.push({ before: weighed, best, sum, free, scales: [scaleBefore, all] });
    weighed = { run, zeroSpread, sigmas: sigmas.map((one) => one * all), prior: { weight, sum: weight / (all * all) } };
  }
  return { weighed, rounds };
}

function sigmasOf(instants: readonly Instant[], ratioAt: (time: number) => number): Float64Array {
  return Float64Array.from(instants, ({ table, noise, time }) => {
    const ratio = ratioAt(time);
    // Friction grows with demand and with viscosity alike.
    const perShare = (table.at(1.05, ratio) - table.at(0.95, ratio)) / 0.1;
    return Math.hypot(noise.gauge, perShare * noise.demand, perShare * noise.viscosity);
  });
}
