import type { ReadingPlace } from "./GaugeAnswer.js";
import type { Instant } from "./Instant.js";
import type { SideFit } from "./SideFit.js";
import { perDemand, type Term, termAt } from "./Term.js";

/** A term with its size in Pa. */
export interface Sized {
  readonly term: Term;
  /** its place among the terms of the fit */
  readonly place: number;
  readonly at: number;
  /** Pa; more resistance is above zero */
  readonly by: number;
  readonly reading: ReadingPlace;
}

/** A term's size in the best law's fit. */
export function sizeOf({ explained: { terms, fits } }: SideFit, at: number): number {
  return fits[0]?.fit.parameters.slice(-terms.length)[at] ?? 0;
}

/** What is fitted besides soil, as Pa where it is largest or begins; readings that stand off are no part of it. */
export function sizedOf(fit: SideFit): Sized[] {
  const { explained, weighed } = fit;
  const { instants } = weighed.run;
  const [best] = explained.fits;
  if (!best) return [];
  const state = best.model.stateAt(best.fit.parameters);
  return explained.terms.flatMap((term, place): Sized[] => {
    if (term.kind === "outlier") return [];
    const at = readingOf(term, instants);
    const instant = instants[at] as Instant;
    const ratio = state.ratioAt(instant.time);
    const size = sizeOf(fit, place);
    const more = size * termAt(term, at, instant, ratio, best.model.span);
    const by =
      term.kind === "thin"
        ? -size * perDemand(instant, state.demand, ratio)
        : instant.table.at(state.demand, ratio + more) - instant.table.at(state.demand, ratio);
    return [{ term, place, at: term.kind === "cold" ? instant.temperature : at, by, reading: placeOf(instant) }];
  });
}

/** The reading at which a term is largest, or begins. */
export function readingOf(term: Term, instants: readonly Instant[]): number {
  if ("at" in term) return term.at;
  if (term.kind === "fall") return instants.length - 1;
  return instants.reduce(
    (coldest, { temperature }, at) => (temperature < (instants[coldest] as Instant).temperature ? at : coldest),
    0,
  );
}

/** Where a reading stands. */
export function placeOf({ reading: { row, line } }: Instant): ReadingPlace {
  return { row, line };
}
