import {
  binCount,
  CatchBalance,
  type DutyPhase,
  life as followLife,
  type LifeGiven,
  type LifeMoment,
  SupplyModel,
} from "@thirstline/core";

/** How fast every element catches soil, or keeps water, at a moment of a phase, kg/s over its loads, by name. */
export type RatesAt = (phase: DutyPhase, moment: LifeMoment) => ReadonlyMap<string, number>;

/** Steps a season is cut into for the sum over time; even, as Simpson's rule has it. */
const CUTS = 8;

/** Rates worked out apart from the life that was followed, from core's balance of tank and path. */
export function ratesOf(given: LifeGiven, what: "soil" | "water"): RatesAt {
  return (phase, moment) => {
    const model = new SupplyModel(given.supply, { fuel: phase.fuel, passage: "smooth", end: given.end ?? "middle" });
    model.restrict(new Map(given.elements.map(({ name }, at) => [name, moment.restriction[at] ?? 1])));
    const balance = balanceOf(given, phase, what);
    const rates = new Map(given.elements.map(({ name }) => [name, 0]));
    for (const { share, demand } of phase.loads) {
      balance.update(model, demand);
      for (const { name } of given.elements) rates.set(name, (rates.get(name) ?? 0) + share * balance.rate(name));
    }
    return rates;
  };
}

function balanceOf(given: LifeGiven, phase: DutyPhase, what: "soil" | "water"): CatchBalance {
  if (what === "soil") {
    const known = given.elements.flatMap(({ name, efficiency }) => (efficiency ? [[name, efficiency] as const] : []));
    return new CatchBalance(given.delivered, new Map(known), given.held);
  }
  const masses = new Float64Array(binCount);
  masses[0] = phase.freeWater ?? 0;
  const known = given.elements.flatMap(({ name, separates }) =>
    separates === undefined ? [] : [[name, new Float64Array(binCount).fill(separates)] as const],
  );
  return new CatchBalance({ counts: new Float64Array(binCount), masses }, new Map(known), given.held);
}

/** A moment on the way with its weight in the sum over time, s. */
export interface Weighed {
  readonly moment: LifeMoment;
  readonly phase: DutyPhase;
  readonly weight: number;
}

/**
 * Moments of a life with Simpson's weights up to its end: the life is followed once more with every season cut finely, so
 * that its moments lie close, and the last stretch once more by itself.
 */
export function weighedMoments(given: LifeGiven, end: number): Weighed[] {
  const whole = stretches(given, end);
  return whole.flatMap(({ from, length, phase }): Weighed[] => {
    const step = length / CUTS;
    const moments = Array.from({ length: CUTS + 1 }, (_, at) => momentAt(given, from + at * step));
    return moments.map((moment, at) => ({
      moment,
      phase,
      weight: (step / 3) * (at === 0 || at === CUTS ? 1 : at % 2 === 1 ? 4 : 2),
    }));
  });
}

/** Behind a dirty delivery the first moment is this much later, s, so that it is in it. */
const AFTER = 1e-6;

function stretches({ phases, dirty }: LifeGiven, end: number) {
  const found: { readonly from: number; readonly length: number; readonly phase: DutyPhase }[] = [];
  for (let at = 0, from = 0; from < end && phases.length > 0; at++) {
    const phase = phases[at % phases.length] as DutyPhase;
    const to = from + Math.min(phase.duration, end - from);
    // Where a dirty delivery is taken the rates jump, so the stretch is taken in two.
    const cut = dirty && dirty.at > from && dirty.at < to ? dirty.at : to;
    if (cut > from) found.push({ from, length: cut - from, phase });
    if (cut < to) found.push({ from: cut + AFTER, length: to - cut - AFTER, phase });
    from += phase.duration;
  }
  return found;
}

/** What each element catches of a dirty delivery taken before an end, kg, by name; null where there is none. */
export function ofDelivery(given: LifeGiven, end: number): ReadonlyMap<string, number> | null {
  const { dirty, phases } = given;
  if (!dirty || dirty.at > end) return null;
  let gone = 0;
  let phase = phases[0] as DutyPhase;
  for (let at = 0; gone <= dirty.at; at++) {
    phase = phases[at % phases.length] as DutyPhase;
    gone += phase.duration;
  }
  const moment = momentAt(given, dirty.at);
  const model = new SupplyModel(given.supply, { fuel: phase.fuel, passage: "smooth", end: given.end ?? "middle" });
  model.restrict(new Map(given.elements.map(({ name }, at) => [name, moment.restriction[at] ?? 1])));
  const balance = balanceOf(given, phase, "soil");
  const [load] = phase.loads;
  if (load) balance.update(model, load.demand);
  const brought = dirty.extra.masses.map((mass) => mass * dirty.volume);
  return new Map(given.elements.map(({ name }) => [name, balance.ofPulse(name, brought)]));
}

const moments = new WeakMap<LifeGiven, Map<number, LifeMoment>>();

/** The elements at a running time: where a life that ends there has got to. */
function momentAt(given: LifeGiven, time: number): LifeMoment {
  const kept = moments.get(given) ?? new Map<number, LifeMoment>();
  moments.set(given, kept);
  const found =
    kept.get(time) ?? (followLife({ ...given, horizon: Math.max(time, 1e-9) }).moments.at(-1) as LifeMoment);
  kept.set(time, found);
  return found;
}
