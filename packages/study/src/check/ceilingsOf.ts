import type { Ceiling, EndJudgement, Judgement, LimitName, Supply } from "@thirstline/core";
import type { CeilingFigure, CheckPoint } from "./CheckAnswer.js";
import { ordered } from "./ends.js";

/**
 * The largest demand at which every limit holds, with clean elements and with the elements as they are against the limit
 * at change. Where relief goes back to the tank it is not the limit with least in hand: what is in hand on the suction
 * side is counted in the pump's flow there, a ceiling always in demand.
 */
export function ceilingsOf({ pump }: Supply, judgement: Judgement): CheckPoint["ceilings"] {
  const followsPump = pump.kind === "fixed" && pump.reliefTo === "tank";
  const atChange = (end: EndJudgement) => leastFlow(end.ceilings, "vacuum clean");
  const clean = (end: EndJudgement) =>
    followsPump ? leastFlow(end.cleanCeilings, "vacuum at change") : (end.clean ?? atChange(end));
  return { clean: figureOf(judgement, clean), atChange: figureOf(judgement, atChange) };
}

/** The ceiling of least flow among all but one. */
function leastFlow(found: readonly Ceiling[], except: LimitName): Ceiling {
  const counted = found.filter(({ limit }) => limit !== except);
  return counted.reduce((least, one) => (one.flow < least.flow ? one : least), counted[0] as Ceiling);
}

function figureOf({ lowEnd, middle, highEnd }: Judgement, of: (end: EndJudgement) => Ceiling): CeilingFigure {
  const likely = of(middle);
  return { flow: ordered(of(highEnd).flow, likely.flow, of(lowEnd).flow), limit: likely.limit };
}
