import type { Finding, GaugeSide } from "./GaugeAnswer.js";
import { fileNoise } from "./noise.js";
import type { SideFit } from "./SideFit.js";
import { placeOf, type Sized, sizedOf } from "./sizedOf.js";
import type { Term } from "./Term.js";
import { termGains } from "./termGains.js";

/** Readings so near in number belong to one event. */
const NEAR = 1;

/** What tells that the vacuum is down where the feed pressure is: a step found, one asked of, or the demand from new. */
type Less = Sized | "asked" | "from new";

/** A finding and what it was found by: nothing but soil, a term, or weak delivery with what the vacuum says to it. */
export type Shown =
  | { readonly finding: Finding; readonly by: "soil" }
  | { readonly finding: Finding; readonly by: "term"; readonly side: GaugeSide; readonly sized: Sized }
  | { readonly finding: Finding; readonly by: "air"; readonly less: Less; readonly weak: Sized | null };

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
export function findingsOf(suction: SideFit | null, delivery: SideFit | null): Shown[] {
  const before = suction ? sizedOf(suction) : [];
  const behind = delivery ? sizedOf(delivery) : [];
  const air = suction && delivery ? airOf(suction, delivery, before, behind) : [];
  const inDoubt = air.length > 0;
  const all = [
    ...air,
    ...withoutEchoes(before, inDoubt).map((one) => shown("suction", one, delivery !== null)),
    ...withoutEchoes(behind, inDoubt).map((one) => shown("delivery", one, suction !== null)),
  ];
  if (all.length > 0) return all;
  const sides: [GaugeSide, SideFit | null][] = [
    ["suction", suction],
    ["delivery", delivery],
  ];
  return sides.flatMap(([side, fit]): Shown[] =>
    fit?.soil.trend ? [{ finding: { code: "loading", side }, by: "soil" }] : [],
  );
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

function airOf(suction: SideFit, delivery: SideFit, before: readonly Sized[], behind: readonly Sized[]): Shown[] {
  const weak = behind.filter(({ term, by }) => term.kind === "step" && by > 0);
  const later = weak.flatMap((one): Shown[] => {
    const also = before.filter(({ at, by, term }) => isDown(term, by) && Math.abs(at - one.at) <= NEAR);
    const less = also[0]?.by ?? lessFrom(suction, one.at);
    if (less === null) return [];
    const finding = { code: "air or slip", from: one.reading, by: -less, weakBy: one.by } as const;
    return [{ finding, by: "air", less: also[0] ?? "asked", weak: one }];
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
  const finding = {
    code: "air or slip",
    from: placeOf(first),
    by,
    weakBy: rise * delivery.weighed.zeroSpread,
  } as const;
  return [{ finding, by: "air", less: low[0] ?? "from new", weak: null }];
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

function shown(side: GaugeSide, sized: Sized, bothKnown: boolean): Shown {
  return { finding: named(side, sized, bothKnown), by: "term", side, sized };
}

function named(side: GaugeSide, { term, at, by, reading: place }: Sized, bothKnown: boolean): Finding {
  if (term.kind === "cold") return { code: "cold", side, by, coldest: at };
  if (term.kind === "fall") return { code: "falls", side, from: null, by: -by };
  if (by > 0)
    return at === 0 ? { code: "high when new", side, from: place, by } : { code: "jump", side, from: place, by };
  if (at === 0 && side === "suction") return { code: "low", from: place, by: -by };
  return bothKnown || side === "delivery"
    ? { code: "falls", side, from: place, by: -by }
    : { code: "low", from: place, by: -by };
}
