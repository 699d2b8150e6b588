import type { Finding, GaugeSide, Outlier, ReadingPlace } from "./GaugeAnswer.js";
import type { Instant } from "./Instant.js";
import { fileNoise } from "./noise.js";
import type { SideFit } from "./SideFit.js";
import { perDemand, type Term, termAt } from "./Term.js";
import { termGains } from "./termGains.js";

/** Readings so near in number belong to one event. */
const NEAR = 1;

/** A term with its size in Pa. */
interface Sized {
  readonly term: Term;
  readonly at: number;
  /** Pa; more resistance is above zero */
  readonly by: number;
  readonly place: ReadingPlace;
}

/** What is known beforehand of the file's demand, and of the pressure its pump makes, must be off by so much, in deviations. */
const WEAK_FROM_NEW = { demand: -0.7, rise: 2 } as const;
/** How far the vacuum must be down where the feed pressure fell, in deviations: a place is asked of, none is searched. */
const LESS = -1.7;

/**
 * What the readings show, named. Less vacuum together with weak delivery is air or slip, since elements that let more
 * through would raise the feed pressure; without a feed pressure the one cannot be told from the other.
 *
 * Where the feed pressure falls by a step, the vacuum is asked whether it fell at that reading too; where delivery is weak
 * from the first reading on, whether the vacuum is low from the first on.
 */
export function findingsOf(suction: SideFit | null, delivery: SideFit | null): Finding[] {
  const before = suction ? sizedOf(suction) : [];
  const behind = delivery ? sizedOf(delivery) : [];
  const air = suction && delivery ? airOf(suction, delivery, before, behind) : [];
  const taken = new Set(air.flatMap(({ of }) => of));
  const rest = [
    ...withoutEchoes(before, air.length > 0)
      .filter((one) => !taken.has(one))
      .map((one) => named("suction", one, delivery !== null)),
    ...withoutEchoes(behind, air.length > 0)
      .filter((one) => !taken.has(one))
      .map((one) => named("delivery", one, suction !== null)),
  ];
  const all = [...air.map(({ finding }) => finding), ...rest];
  if (all.length > 0) return all;
  const sides: [GaugeSide, SideFit | null][] = [
    ["suction", suction],
    ["delivery", delivery],
  ];
  return sides.flatMap(([side, fit]): Finding[] => (fit?.soil.trend ? [{ code: "loading", side }] : []));
}

function isDown({ kind }: Term, by: number): boolean {
  return (kind === "step" || kind === "thin") && by < 0;
}

/** Once the flow itself is in doubt, or the elements let through more, later steps of that side only make up for it. */
function withoutEchoes(sized: readonly Sized[], inDoubt: boolean): readonly Sized[] {
  const down = sized.find(({ term, by }) => isDown(term, by));
  if (!down && !inDoubt) return sized;
  return sized.filter((one) => (one === down && !inDoubt) || (one.term.kind !== "step" && one.term.kind !== "thin"));
}

interface Air {
  readonly finding: Finding;
  /** what it explains */
  readonly of: readonly Sized[];
}

function airOf(suction: SideFit, delivery: SideFit, before: readonly Sized[], behind: readonly Sized[]): Air[] {
  const weak = behind.filter(({ term, by }) => term.kind === "step" && by > 0);
  const later = weak.flatMap((one): Air[] => {
    const also = before.filter(({ at, by, term }) => isDown(term, by) && Math.abs(at - one.at) <= NEAR);
    const less = also[0]?.by ?? lessFrom(suction, one.at);
    if (less === null) return [];
    return [{ finding: { code: "air or slip", from: one.place, by: -less, weakBy: one.by }, of: [one, ...also] }];
  });
  if (later.length > 0) return later;
  const [demand = 0] = suction.explained.fits[0]?.fit.parameters ?? [];
  const [, rise = 0] = delivery.explained.fits[0]?.fit.parameters ?? [];
  const low = before.filter(({ term, at, by }) => isDown(term, by) && at === 0);
  const first = suction.weighed.run.instants[0];
  if (!suction.weighed.run.start.known || !first || rise < WEAK_FROM_NEW.rise) return [];
  if (low.length === 0 && demand > WEAK_FROM_NEW.demand) return [];
  const { table } = first;
  const by = low[0] ? -low[0].by : table.at(1, 1) - table.at(Math.exp(fileNoise.demand * demand), 1);
  return [
    { finding: { code: "air or slip", from: placeOf(first), by, weakBy: rise * delivery.weighed.zeroSpread }, of: low },
  ];
}

/** How much less vacuum there is from a reading on, Pa, below zero; null where it did not fall. */
function lessFrom({ weighed, explained }: SideFit, at: number): number | null {
  const [best] = explained.fits;
  const instant = weighed.run.instants[at];
  if (!best || !instant) return null;
  const gain = termGains(weighed, best)({ kind: "step", at });
  if (!gain || gain.deviations > LESS) return null;
  const state = best.model.stateAt(best.fit.parameters);
  return gain.size * instant.table.slope(state.demand, state.ratioAt(instant.time));
}

function named(side: GaugeSide, { term, at, by, place }: Sized, bothKnown: boolean): Finding {
  if (term.kind === "cold") return { code: "cold", side, by, coldest: at };
  if (term.kind === "fall") return { code: "falls", side, from: null, by: -by };
  if (by > 0)
    return at === 0 ? { code: "high when new", side, from: place, by } : { code: "jump", side, from: place, by };
  if (at === 0 && side === "suction") return { code: "low", from: place, by: -by };
  return bothKnown || side === "delivery"
    ? { code: "falls", side, from: place, by: -by }
    : { code: "low", from: place, by: -by };
}

/** Readings that stand off, with what the others let expect. */
export function outliersOf(side: GaugeSide, fit: SideFit | null): Outlier[] {
  if (!fit) return [];
  const { weighed, explained } = fit;
  const { instants } = weighed.run;
  return explained.terms.flatMap((term, at): Outlier[] => {
    if (term.kind !== "outlier") return [];
    const instant = instants[term.at] as Instant;
    const deviations = sizeOf(fit, at);
    const sign = side === "delivery" ? -1 : 1;
    const expected = instant.read - deviations * (weighed.sigmas[term.at] as number);
    return [
      {
        ...placeOf(instant),
        side,
        read: sign * instant.read,
        expected: sign * expected,
        deviations: sign * deviations,
      },
    ];
  });
}

/** A term's size in the best law's fit. */
function sizeOf({ explained: { terms, fits } }: SideFit, at: number): number {
  return fits[0]?.fit.parameters.slice(-terms.length)[at] ?? 0;
}

function sizedOf(fit: SideFit): Sized[] {
  const { explained, weighed } = fit;
  const { instants } = weighed.run;
  const [best] = explained.fits;
  if (!best) return [];
  const state = best.model.stateAt(best.fit.parameters);
  const span = Math.max(1, (instants.at(-1)?.time ?? 0) - (instants[0]?.time ?? 0));
  return explained.terms.flatMap((term, place): Sized[] => {
    if (term.kind === "outlier") return [];
    const at = reading(term, instants);
    const instant = instants[at] as Instant;
    const ratio = state.ratioAt(instant.time);
    const size = sizeOf(fit, place);
    const more = size * termAt(term, at, instant, ratio, span);
    const by =
      term.kind === "thin"
        ? -size * perDemand(instant, state.demand, ratio)
        : instant.table.at(state.demand, ratio + more) - instant.table.at(state.demand, ratio);
    return [{ term, at: term.kind === "cold" ? instant.temperature : at, by, place: placeOf(instant) }];
  });
}

/** The reading at which a term is largest, or begins. */
function reading(term: Term, instants: readonly Instant[]): number {
  if ("at" in term) return term.at;
  if (term.kind === "fall") return instants.length - 1;
  return instants.reduce(
    (coldest, { temperature }, at) => (temperature < (instants[coldest] as Instant).temperature ? at : coldest),
    0,
  );
}

/** Where a reading stands. */
function placeOf({ reading: { row, line } }: Instant): ReadingPlace {
  return { row, line };
}
