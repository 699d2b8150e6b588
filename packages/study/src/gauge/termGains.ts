import type { Fitted, Weighed } from "./fitAll.js";
import type { Instant } from "./Instant.js";
import { flat } from "./shapes.js";
import { perDemand, type Term, termAt } from "./Term.js";

/** What a term would win. */
export interface Gain {
  /** size it would have */
  readonly size: number;
  /** deviance with it */
  readonly deviance: number;
  /** its size over its standard error, as the sigmas stand */
  readonly deviations: number;
  /** what it adds at the readings, squared, and times what they miss; and how much of either the fit's own parameters take */
  readonly parts: {
    readonly square: number;
    readonly pull: number;
    readonly squareTaken: number;
    readonly pullTaken: number;
  };
}

/** A column of what a term adds at each reading: its square, its pull on the misses, and its product with the fit's slopes. */
interface Column {
  readonly square: number;
  readonly pull: number;
  readonly along: readonly number[];
}

/**
 * What each term would win at a fit if all else were linear (Rao's score): null where it wins nothing in the sense it may
 * have. Nothing is fitted anew, so hundreds can be asked for.
 */
export function termGains(weighed: Weighed, fitted: Fitted): (term: Term) => Gain | null {
  const { run, sigmas, prior } = weighed;
  const { instants } = run;
  const { fit, model } = fitted;
  const state = model.stateAt(fit.parameters);
  const count = fit.parameters.length;
  const rowAt = (at: number) => fit.slopes[at] as Float64Array;
  const ratios = instants.map(({ time }) => state.ratioAt(time));
  const perRatio = instants.map(
    ({ table }, at) => table.slope(state.demand, ratios[at] as number) / (sigmas[at] as number),
  );
  const perFlow = instants.map(
    (instant, at) => -perDemand(instant, state.demand, ratios[at] as number) / (sigmas[at] as number),
  );
  const span = Math.max(1, (instants.at(-1)?.time ?? 0) - (instants[0]?.time ?? 0));
  const missed = columnOf(fit.misses, (at) => fit.misses[at] as number);
  const suffixes = { step: suffixesOf(perRatio), thin: suffixesOf(perFlow) };
  const through = (left: readonly number[], right: readonly number[]) => {
    let sum = 0;
    for (let at = 0; at < count; at++) {
      const row = fit.covariance[at] as readonly number[];
      for (let place = 0; place < count; place++) {
        sum += (left[at] as number) * (row[place] as number) * (right[place] as number);
      }
    }
    return sum;
  };

  function columnOf(rows: { readonly length: number }, of: (at: number) => number): Column {
    let [square, pull] = [0, 0];
    const along = Array.from({ length: count }, () => 0);
    for (let at = 0; at < rows.length; at++) {
      const value = of(at);
      square += value * value;
      pull += value * (fit.misses[at] as number);
      for (let place = 0; place < count; place++) {
        along[place] = (along[place] as number) + value * (rowAt(at)[place] as number);
      }
    }
    return { square, pull, along };
  }

  /** Columns of steps from each reading on, each made of the one behind it. */
  function suffixesOf(values: readonly number[]): Column[] {
    const found: Column[] = [];
    let last: Column = { square: 0, pull: 0, along: Array.from({ length: count }, () => 0) };
    for (let at = instants.length - 1; at >= 0; at--) {
      const value = values[at] as number;
      last = {
        square: last.square + value * value,
        pull: last.pull + value * (fit.misses[at] as number),
        along: last.along.map((one, place) => one + value * (rowAt(at)[place] as number)),
      };
      found[at] = last;
    }
    return found;
  }

  const columnFor = (term: Term): Column => {
    if (term.kind === "step" || term.kind === "thin") return suffixes[term.kind][term.at] as Column;
    if (term.kind === "outlier")
      return { square: 1, pull: fit.misses[term.at] as number, along: Array.from(rowAt(term.at)) };
    return columnOf(
      instants,
      (at) => termAt(term, at, instants[at] as Instant, ratios[at] as number, span) * (perRatio[at] as number),
    );
  };

  return (term) => {
    if (term.kind === "fall" && model.shape !== flat) return null;
    const own = columnFor(term);
    const [squareTaken, pullTaken] = [through(own.along, own.along), through(own.along, missed.along)];
    const free = own.square - squareTaken;
    const pull = own.pull - pullTaken;
    if (!(free > 1e-6)) return null;
    const size = -pull / free;
    // Steps and outliers go either way; the others mean something one way only.
    if (term.kind !== "step" && term.kind !== "outlier" && size <= 0) return null;
    const share = Math.min(0.999999, (pull * pull) / free / (prior.sum + fitted.sum));
    return {
      size,
      deviations: size * Math.sqrt(free),
      parts: { square: own.square, pull: own.pull, squareTaken, pullTaken },
      deviance: fitted.deviance + (sigmas.length + prior.weight) * Math.log1p(-share),
    };
  };
}
