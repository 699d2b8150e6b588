import type { Finding, GaugeReason, GaugeSide, HoursLeft } from "./GaugeAnswer.js";
import type { GaugeFacts } from "./gaugeFacts.js";
import { type FittedSide, type LeftFacts, leftOf } from "./leftOf.js";
import type { SideFit, SoilFit } from "./SideFit.js";

/** Readings of a run before growth can be told from anything. */
export const FEWEST = 4;

/** Running time left by one gauge, with all readings and without those that stand off, or why it cannot be told. */
export interface Lefts {
  /** null where no gauge is asked */
  readonly side: GaugeSide | null;
  readonly all: HoursLeft | GaugeReason;
  readonly without: HoursLeft | GaugeReason | null;
}

/** Running time left by each gauge. */
export function leftsOf(
  facts: GaugeFacts,
  fits: Readonly<Record<GaugeSide, SideFit | null>>,
  findings: readonly Finding[],
): Lefts[] {
  if (findings.some(({ code }) => code !== "loading" && code !== "jump")) {
    return [{ side: null, all: { code: "not the filter" }, without: null }];
  }
  if (!facts.limited) return [{ side: null, all: { code: "no limit" }, without: null }];
  return (["suction", "delivery"] as const).flatMap((side): Lefts[] => {
    const fit = fits[side];
    if (!fit) return [];
    const count = counted(fit);
    if (count < FEWEST) return [{ side, all: { code: "too few readings", count, needed: FEWEST }, without: null }];
    const own: FittedSide = { path: facts[side], fit };
    const rest = leftFacts(facts, side, fits);
    const of = (soil: SoilFit) => (soil.trend ? leftOf(own, soil, rest) : ({ code: "no trend", count } as const));
    return [{ side, all: of(fit.soil), without: fit.soilWithout && of(fit.soilWithout) }];
  });
}

/** What is left by one gauge is worked out from. */
export function leftFacts(
  facts: GaugeFacts,
  side: GaugeSide,
  fits: Readonly<Record<GaugeSide, SideFit | null>>,
): LeftFacts {
  const other = side === "suction" ? "delivery" : "suction";
  const now = fits[side]?.weighed.run.instants.at(-1)?.time ?? 0;
  return { ...facts, besideAt: stateOf(facts, other, fits[other]), meter: facts.run.meter, now };
}

/** Readings at different hours. */
export function counted(fit: SideFit | null): number {
  return new Set(fit?.weighed.run.instants.map(({ time }) => time)).size;
}

/** The elements of a side at a running time, s, as their gauge has them; clean, or as the file states, without one. */
function stateOf(
  facts: GaugeFacts,
  side: GaugeSide,
  fit: SideFit | null,
): (time: number) => ReadonlyMap<string, number> {
  const path = facts[side];
  if (!fit) return () => path.at(1);
  const { best } = fit.soil;
  const state = best.model.stateAt(best.fit.parameters);
  return (time) => path.at(Math.max(1, state.ratioAt(time)));
}

/** Whichever comes first; a reason where nothing comes at all, or where the other side may come first and nobody can tell. */
export function soonest(found: readonly (HoursLeft | GaugeReason | null)[]): HoursLeft | GaugeReason | null {
  const known = found.flatMap((one) => (one && "middle" in one ? [one] : []));
  if (known.length === 0) return found.find((one) => one !== null) ?? null;
  const first = known.reduce((sooner, one) => (one.middle < sooner.middle ? one : sooner));
  const doubt = found.find((one) => one && "code" in one && one.code === "too wide" && one.low < first.low);
  return doubt ?? first;
}
