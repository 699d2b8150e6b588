import { InputError } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import type { CheckPoint } from "../check/CheckAnswer.js";
import { check } from "../check/check.js";
import { applyRemedy } from "./applyRemedy.js";
import type { Remedy, RemedyAnswer, RemedyKind, RemedyResult } from "./RemedyAnswer.js";
import { remediesOf } from "./remedies.js";
import { temperaturesOf } from "./temperaturesOf.js";

/** What to go by besides what the file says. */
export interface RemedyOptions {
  /** fuel temperatures to judge at, K; the seasons' and the file's own when left out */
  readonly temperatures?: readonly number[];
  /** what a change of a kind costs, in any one currency */
  readonly costs?: Partial<Record<RemedyKind, number>>;
  /** how many pairs to tell; 3 when left out */
  readonly pairs?: number;
}

/** Less in hand than this, as a share of the demand, is no gain. */
const GAIN = 1e-6;

/**
 * What would help most? Every single change there is (a wider bore, a shorter run, one more branch, a larger element,
 * warmer fuel, a lower pump, fewer fittings, a clean element, an open vent), each with the ceiling it buys, and the best
 * pairs of them. Judged where least is in hand over the temperatures, with tanks low.
 *
 * Ranked by what is in hand at the bad end of what is known; of those that come to the same the cheaper is first, then the
 * one met first. A change that buys nothing is told too, so that nobody tries it in vain.
 *
 * @param system from a system file
 * @throws InputError for an option out of range
 */
export function remedy(system: System, options: RemedyOptions = {}): RemedyAnswer {
  const temperatures = options.temperatures ?? temperaturesOf(system);
  if (temperatures.length === 0) throw new InputError("remedy", "temperatures", "one or more", 0);
  const { costs = {}, pairs = 3 } = options;
  const judged = (changes: readonly Remedy[]) => resultOf(system, changes, temperatures, costs);
  const asIs = check(system, { temperatures });
  const worst = leastInHand(asIs.points);
  const now = judged([]);
  const single = remediesOf(system, worst.binds === "vapour")
    .map((one) => judged([one]))
    .sort(mostFirst);
  const useful = single.filter(({ inHand, overClean }) => gains(inHand, overClean, now));
  return {
    question: "remedy",
    system: system.name,
    pump: system.pump.kind,
    verdict: asIs.verdict,
    worst,
    now,
    demand: worst.demand.total,
    single,
    pairs: pairsOf(useful.flatMap(({ changes }) => changes))
      .map(judged)
      .sort(mostFirst)
      .filter(({ inHand, overClean }) => single[0] !== undefined && gains(inHand, overClean, single[0]))
      .slice(0, pairs),
  };
}

/** Whether a change buys anything: more in hand, or less over the clean limit. */
function gains(inHand: number, overClean: number | null, now: RemedyResult): boolean {
  return inHand > now.inHand + GAIN || (overClean ?? 0) < (now.overClean ?? 0) - 1;
}

function resultOf(
  system: System,
  changes: readonly Remedy[],
  temperatures: readonly number[],
  costs: NonNullable<RemedyOptions["costs"]>,
): RemedyResult {
  const warmer = changes.reduce((sum, one) => sum + warmth(one), 0);
  const changed = changes.reduce(applyRemedy, system);
  const answer = check(changed, { temperatures: temperatures.map((one) => one + warmer) });
  const point = leastInHand(answer.points);
  const over = answer.points.map(({ vacuum, vacuumLimits }) => vacuum.high - (vacuumLimits.clean ?? Infinity));
  const known = changes.map(({ kind }) => costs[kind]);
  return {
    changes,
    temperature: point.temperature,
    verdict: answer.verdict,
    ceiling: point.ceilings.atChange.flow.low,
    limit: point.binds,
    inHand: point.inHand.low,
    overClean: Math.max(...over) > 0 ? Math.max(...over) : null,
    cost: known.every((cost) => cost !== undefined) ? known.reduce((sum: number, cost) => sum + (cost ?? 0), 0) : null,
  };
}

function warmth(remedy: Remedy): number {
  if (remedy.kind === "warmer fuel") return remedy.by;
  return remedy.kind === "cooler fuel" ? -remedy.by : 0;
}

function leastInHand(points: readonly CheckPoint[]): CheckPoint {
  return points.reduce((least, one) => (one.inHand.low < least.inHand.low ? one : least));
}

/** More in hand first; what keeps the clean limit before what does not comes to the same; then the cheaper. */
function mostFirst(one: RemedyResult, other: RemedyResult): number {
  const rank = other.inHand - one.inHand;
  if (Number.isFinite(rank) && Math.abs(rank) > GAIN) return rank;
  if (one.inHand !== other.inHand && !Number.isFinite(rank)) return other.inHand === Infinity ? 1 : -1;
  const clean = (one.overClean ?? 0) - (other.overClean ?? 0);
  return clean !== 0 ? clean : (one.cost ?? Infinity) < (other.cost ?? Infinity) ? -1 : 0;
}

/** Every two changes that do not touch the same thing. */
function pairsOf(changes: readonly Remedy[]): Remedy[][] {
  return changes.flatMap((one, at) =>
    changes.slice(at + 1).flatMap((other) => (touched(one) === touched(other) ? [] : [[one, other]])),
  );
}

/** What a change is made to: of two that touch the same elements the second would undo or double the first. */
function touched(remedy: Remedy): string {
  switch (remedy.kind) {
    case "one more branch":
    case "larger element":
      return `element ${remedy.parts.join()}`;
    case "clean element":
    case "open branch":
      return `element ${remedy.part}`;
    default:
      return JSON.stringify(remedy);
  }
}
