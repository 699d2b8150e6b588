import type { LifeSpread } from "../../life/LifeAnswer.js";
import type { Arrangement, SizeAnswer } from "./SizeAnswer.js";

/** Arrangements drawn at most for each that is shown. */
const MOST = 5;

/**
 * Which arrangements of an answer to draw next: the first `few` by yearly cost and the best of each ranking; and then, as
 * many at a time, those that could still be cheaper than the cheapest drawn, its stoppages counted. None when all is settled,
 * or five times as many as asked are drawn.
 *
 * @param answer with what was drawn already, from `withChances`
 * @param few how many to draw at least
 * @returns places in `arrangements`
 */
export function nextToDraw({ arrangements, best }: SizeAnswer, few: number): number[] {
  const isOpen = (at: number) => arrangements[at] !== undefined && arrangements[at].spread === undefined;
  const bests = [best.cost, best.vacuum, best.changes].filter((at) => at !== null);
  const due = new Set([...arrangements.keys()].slice(0, few).concat(bests).filter(isOpen));
  if (due.size > 0) return [...due];
  const drawn = arrangements.filter(({ spread }) => spread !== undefined);
  if (drawn.length >= MOST * few) return [];
  const cheapest = Math.min(...drawn.map(({ yearlyCost }) => yearlyCost ?? Infinity));
  const cheaper = [...arrangements.keys()].filter((at) => isOpen(at) && costOf(arrangements[at]) < cheapest);
  return cheaper.slice(0, few);
}

/**
 * An answer with the lives of some arrangements drawn: their spread, and within their yearly cost that of a stoppage at its
 * chance before each change. The arrangements stand by yearly cost again, and `best` knows their places.
 *
 * @param spreads by place in `arrangements`
 * @param stoppage cost of one, in the catalogue's own currency; null where none is stated
 */
export function withChances(
  answer: SizeAnswer,
  spreads: ReadonlyMap<number, LifeSpread>,
  stoppage: number | null,
): SizeAnswer {
  const all = answer.arrangements.map((one, at) => {
    const spread = spreads.get(at);
    return spread ? drawnOf(one, spread, stoppage) : one;
  });
  const order = [...all.keys()].sort((one, other) => costOf(all[one]) - costOf(all[other]) || one - other);
  const moved = (place: number | null) => (place === null ? null : order.indexOf(place));
  const { cost, vacuum, changes } = answer.best;
  return {
    ...answer,
    arrangements: order.map((place) => all[place] as Arrangement),
    best: { cost: cost === null ? null : 0, vacuum: moved(vacuum), changes: moved(changes) },
  };
}

function drawnOf(one: Arrangement, spread: LifeSpread, stoppage: number | null): Arrangement {
  const { yearlyCost, changesAYear, elements } = one;
  const stoppages = stoppage === null ? null : (changesAYear / elements) * spread.chance * stoppage;
  return { ...one, spread, stoppages, yearlyCost: yearlyCost === null ? null : yearlyCost + (stoppages ?? 0) };
}

/** What has no known cost comes last. */
function costOf(one: Arrangement | undefined): number {
  return one?.yearlyCost ?? Number.MAX_VALUE;
}
