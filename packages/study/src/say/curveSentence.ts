import type { Band } from "@thirstline/core";
import type { CurveAnswer, CurvePoint, CurveState } from "../curve/CurveAnswer.js";
import { bandText } from "./bandText.js";
import { capital } from "./capital.js";
import { groundWords } from "./groundWords.js";
import { joined } from "./joined.js";
import { limitName } from "./limitName.js";
import { quantity } from "./quantity.js";
import { sideWords } from "./sideWords.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** What a curve shows, in words, with the figures at no demand, at the demand and at the ceiling. */
export function curveSentence(answer: CurveAnswer, point: CurvePoint, units: UnitSystem): Words {
  const at = fig("temperature", quantity(point.temperature, "temperature", units));
  const grounds = joined(point.unanswered.map((one) => groundWords(one, units)));
  if (point.clean === null) return say`Cannot draw a curve at ${at}: ${grounds}.`;
  const sentence = say`At ${at} ${shape(answer, point, point.clean, units)}. ${ceiling(answer, point, units)}`;
  return point.unanswered.length === 0 ? sentence : say`${sentence} No figure given for it is a promise: ${grounds}.`;
}

function shape(answer: CurveAnswer, point: CurvePoint, clean: CurveState, units: UnitSystem): Words {
  const demand = fig("demand", quantity(point.duty.demand, "flow", units));
  if (answer.pump === "none") {
    const rest = fig("head", quantity(clean.feedPressure?.middle[0] ?? Number.NaN, "pressure", units));
    const there = point.duty.feedPressure;
    const run = fig("feed pressure", there ? bandText(there, "pressure", units) : "none");
    return say`the pressure at the engine is ${rest} at no demand; at the demand of ${demand} it is ${run}`;
  }
  const vacuum = states(point, units);
  const where = sideWords(answer.pump).inlet;
  if (answer.suctionFollows === "pump") {
    const pumped = fig("suction flow", quantity(point.duty.suctionFlow, "flow", units));
    return say`relief goes back to the tank, so the suction line carries ${pumped} whatever the demand, and the vacuum ${where} stays at ${vacuum}`;
  }
  const rest = fig("vacuum at rest", quantity(clean.vacuum.middle[0] ?? Number.NaN, "vacuum", units));
  return say`the vacuum ${where} is ${rest} at no demand; at the demand of ${demand} it is ${vacuum}`;
}

/** The vacuum where the engine runs, in every state there is. */
function states({ duty }: CurvePoint, units: UnitSystem): Words {
  const shown = (name: string, band: Band, state: string): Words =>
    say`${fig(name, bandText(band, "vacuum", units))} ${state}`;
  return joined([
    shown("vacuum", duty.vacuum, "with clean elements"),
    ...(duty.vacuumNow ? [shown("vacuum now", duty.vacuumNow, "now")] : []),
    ...(duty.vacuumAtChange ? [shown("vacuum at change", duty.vacuumAtChange, "with elements due for change")] : []),
  ]);
}

function ceiling(answer: CurveAnswer, point: CurvePoint, units: UnitSystem): Words {
  const { flow, limit } = point.ceilings.atChange;
  const name = limitName(limit, answer.pump);
  if (flow.middle === Infinity) return say`No demand meets ${name}.`;
  if (flow.middle === 0) return say`Even no demand at all breaks ${name}.`;
  return say`${capital(name)} sets the ceiling: ${fig("ceiling at change", bandText(flow, "flow", units))}.`;
}
