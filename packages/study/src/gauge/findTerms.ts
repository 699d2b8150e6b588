import { studentQuantile } from "./fit/studentQuantile.js";
import { type Fitted, fitAll, fitOne, type Weighed } from "./fitAll.js";
import type { GaugeSide } from "./instantsOf.js";
import { flat } from "./shapes.js";
import type { Term } from "./Term.js";
import { type Gain, termGains } from "./termGains.js";

/** Chance that what is found is nothing but scatter: of all outliers and steps together, and of cold or fall. */
const CHANCE = { searched: 0.01, single: 0.005 };
/** Terms looked for at most. */
const MOST = 4;
/** Laws that score so much worse are not tried with a further term. */
const UNLIKELY = 25;
/** Fuel must have been so much colder at times, K, before cold can be told from anything else. */
const COLDER = 6;

/** Why a term was taken for more than scatter. */
interface Evidence {
  /** deviance before, and with the term */
  readonly before: number;
  readonly after: number;
  /** what had to be won, and by what: places looked at, the chance allowed of all of them, degrees of freedom */
  readonly needed: number;
  readonly places: number;
  readonly chance: number;
  readonly free: number;
  /** deviations that so small a chance lies beyond */
  readonly deviations: number;
}

/** A run with what soil does not explain. */
export interface Explained {
  readonly terms: readonly Term[];
  /** of each term, as it was found */
  readonly evidence: readonly Evidence[];
  /** every law with these terms, the best first */
  readonly fits: readonly Fitted[];
  /** every law without them */
  readonly soil: readonly Fitted[];
}

/**
 * What a run shows besides soil: readings that stand off, steps, less flow than noted, cold-dependence beyond viscosity, resistance that falls.
 *
 * One after another, what explains most is added, as long as the gain is more than scatter alone would give in so many places
 * looked at. Every law of growth competes at every turn, so that a law that grows steeply in the end is no step.
 */
export function findTerms(weighed: Weighed, side: GaugeSide): Explained {
  let terms: readonly Term[] = [];
  let evidence: readonly Evidence[] = [];
  const soil = ordered(fitAll(weighed));
  let fits: readonly Fitted[] = soil;
  while (terms.length < MOST && weighed.sigmas.length >= 4) {
    const better = nextTerm(weighed, side, terms, fits);
    if (better === null) break;
    terms = better.terms;
    evidence = [...evidence, better.evidence];
    fits = better.fits;
  }
  return { terms, evidence, fits, soil };
}

function ordered(fits: readonly Fitted[]): Fitted[] {
  return [...fits].sort((one, other) => one.score - other.score);
}

interface Candidate extends Gain {
  readonly term: Term;
  readonly fitted: Fitted;
}

function nextTerm(
  weighed: Weighed,
  side: GaugeSide,
  terms: readonly Term[],
  fits: readonly Fitted[],
): (Pick<Explained, "terms" | "fits"> & { readonly evidence: Evidence }) | null {
  const best = fits[0];
  if (!best) return null;
  const candidates = candidatesOf(weighed, side, terms);
  const found = fits
    .filter(({ score }) => score < best.score + 8)
    .slice(0, 5)
    .flatMap((fitted) => {
      const gains = termGains(weighed, fitted);
      return candidates.flatMap((term): Candidate[] => {
        const won = gains(term);
        return won ? [{ term, fitted, ...won }] : [];
      });
    })
    .sort((one, other) => one.deviance - other.deviance);
  const tried = new Set<Term>();
  for (const { term, size, fitted } of found) {
    if (tried.has(term) || tried.size >= 3) continue;
    tried.add(term);
    const sizes = fitted.fit.parameters.slice(-terms.length || fitted.fit.parameters.length);
    const again = fitOne(weighed, fitted.model.shape, [...terms, term], [...sizes, size]);
    if (!again) continue;
    const need = needed(weighed, again, term, candidates.length);
    if (best.deviance - again.deviance < need.needed) continue;
    const evidence = { before: best.deviance, after: again.deviance, ...need };
    const grown = [...terms, term];
    const among = fits.filter(({ model, score }) => model.shape === flat || score < best.score + UNLIKELY);
    const shapes = among.map(({ model }) => model.shape);
    return {
      terms: grown,
      evidence,
      fits: ordered(fitAll(weighed, grown, again.fit.parameters.slice(-grown.length), shapes)),
    };
  }
  return null;
}

/** How much a term must win of the deviance before it is taken for more than scatter. */
function needed({ sigmas, prior }: Weighed, { model }: Fitted, { kind }: Term, all: number) {
  const free = Math.max(1, sigmas.length + prior.weight - model.growing - model.terms.length);
  const isSearched = kind !== "cold" && kind !== "fall";
  const [chance, places] = isSearched ? [CHANCE.searched, all] : [CHANCE.single, 1];
  const deviations = studentQuantile(1 - chance / places / 2, free);
  const needed = (sigmas.length + prior.weight) * Math.log1p(deviations ** 2 / free);
  return { needed, places, chance, free, deviations };
}

function candidatesOf({ run }: Weighed, side: GaugeSide, terms: readonly Term[]): Term[] {
  const { instants, start } = run;
  const count = instants.length;
  const places = Array.from({ length: count }, (_, at) => at);
  const has = (kind: Term["kind"], at?: number) =>
    terms.some((term) => term.kind === kind && (at === undefined || ("at" in term && term.at === at)));
  // A run whose start is not known has no level to step from; a last reading alone is no step yet.
  const steps = places.filter((at) => (at > 0 || start.known) && at < count - 1 && !has("step", at));
  const temperatures = instants.map(({ temperature }) => temperature).sort((one, other) => one - other);
  const [coldest = 0] = temperatures;
  const warmest = temperatures.at(-1) ?? 0;
  const colds = has("cold") || warmest - coldest < COLDER ? [] : [warmest, (warmest + coldest) / 2];
  return [
    ...places.filter((at) => !has("outlier", at)).map((at): Term => ({ kind: "outlier", at })),
    ...steps.map((at): Term => ({ kind: "step", at })),
    ...(side === "suction" && !has("thin") ? steps.map((at): Term => ({ kind: "thin", at })) : []),
    ...colds.map((below): Term => ({ kind: "cold", below })),
    ...(has("fall") ? [] : [{ kind: "fall" } as const]),
  ];
}
