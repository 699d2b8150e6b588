import type { CheckAnswer, CheckPoint } from "../check/CheckAnswer.js";
import { isGround } from "../check/ground.js";
import { capital } from "./capital.js";
import { joined } from "./joined.js";
import { limitName } from "./limitName.js";
import { quantity } from "./quantity.js";
import { inHandFigure, reasonWords } from "./reasonWords.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** The verdict at one temperature as a sentence or three, with the figures it rests on. */
export function verdictSentence(answer: CheckAnswer, point: CheckPoint, units: UnitSystem): Words {
  const at = fig("temperature", quantity(point.temperature, "temperature", units));
  const name = answer.system;
  const why = joined(point.reasons.map((one) => reasonWords(one, { pump: answer.pump, point, units })));
  switch (point.verdict) {
    case "holds":
      return say`${name} gets its fuel at ${at}, with ${inHandFigure(point)} in hand. ${bindsFirst(answer, point, units)}`;
    case "tight":
      return say`${name} gets its fuel at ${at}, but it is tight: ${why}.${most(answer, point)}`;
    case "starves":
      return say`${name} starves at ${at}: ${why}.${most(answer, point)}`;
    case "cannot say":
      return say`Cannot say whether ${name} gets its fuel at ${at}: ${why}.${promise(point)}`;
  }
}

function bindsFirst(answer: CheckAnswer, { binds, ceilings }: CheckPoint, units: UnitSystem): Words {
  const { flow, limit } = ceilings.atChange;
  const first = `${capital(limitName(binds, answer.pump))} would bind first`;
  // What binds on the suction side of a pump that relieves to the tank is met by the pump's flow, not by a demand.
  if (limit !== binds || flow.middle === Infinity) return say`${first}.`;
  return say`${first}, at a demand of ${fig("ceiling at change", quantity(flow.middle, "flow", units))}.`;
}

/** Figures are shown all the same, for what they are worth. */
function promise({ reasons }: CheckPoint): string {
  return reasons.some(isGround) ? " No figure given for it is a promise." : "";
}

function most({ pump }: CheckAnswer, point: CheckPoint): Words {
  if (!point.most || point.reasons.some(({ code }) => code === "shut")) return [];
  const share = fig("share", quantity(point.most.share, "ratio", "metric"));
  const side = pump === "none" ? "path" : "suction side";
  return say` Of what the ${side} costs, ${share} goes to ${point.most.name}.`;
}
