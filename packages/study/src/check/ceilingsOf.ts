import {
  type BandEnd,
  type Ceiling,
  ceilings,
  cleaned,
  type EndJudgement,
  type FuelState,
  type Judgement,
  type LimitName,
  type Limits,
  type Supply,
} from "@thirstline/core";
import type { CeilingFigure, CheckPoint } from "./CheckAnswer.js";
import { ordered } from "./ends.js";

/** What ceilings are found from; demand in m3/s, return included. */
export interface CeilingFacts {
  readonly supply: Supply;
  readonly fuel: FuelState;
  readonly limits: Limits;
  readonly demand: number;
  readonly judgement: Judgement;
}

/** Which end of every band each judgement stands for. */
const ENDS = { good: "low", middle: "middle", bad: "high" } as const satisfies Record<string, BandEnd>;

/**
 * The largest demand at which every limit holds, with clean elements and with the elements as they are against the limit
 * at change. Where relief goes back to the tank it is not the limit with least in hand: what is in hand on the suction
 * side is counted in the pump's flow there, a ceiling always in demand.
 */
export function ceilingsOf(facts: CeilingFacts): CheckPoint["ceilings"] {
  const { supply, fuel, limits, demand, judgement } = facts;
  const followsPump = supply.pump.kind === "fixed" && supply.pump.reliefTo === "tank";
  const atChange = (end: EndJudgement) => leastFlow(end.ceilings, "vacuum clean");
  const clean = (end: EndJudgement, name: keyof typeof ENDS) =>
    followsPump
      ? leastFlow(ceilings(cleaned(supply), fuel, limits, demand, ENDS[name]), "vacuum at change")
      : (end.clean ?? atChange(end));
  return { clean: figureOf(judgement, clean), atChange: figureOf(judgement, atChange) };
}

/** The ceiling of least flow among all but one. */
function leastFlow(found: readonly Ceiling[], except: LimitName): Ceiling {
  const counted = found.filter(({ limit }) => limit !== except);
  return counted.reduce((least, one) => (one.flow < least.flow ? one : least), counted[0] as Ceiling);
}

function figureOf(
  { good, middle, bad }: Judgement,
  of: (end: EndJudgement, name: keyof typeof ENDS) => Ceiling,
): CeilingFigure {
  const likely = of(middle, "middle");
  return { flow: ordered(of(bad, "bad").flow, likely.flow, of(good, "good").flow), limit: likely.limit };
}
