import type { LifeEnd } from "@thirstline/core";
import { firstToGo } from "../life/firstToGo.js";
import type { LifeAnswer } from "../life/LifeAnswer.js";
import { joined } from "./joined.js";
import { lifeReasonWords } from "./lifeReasonWords.js";
import { namesWords } from "./namesWords.js";
import { quantity } from "./quantity.js";
import { sideWords } from "./sideWords.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** How long the elements last, as a sentence or three, with the figures it rests on. */
export function lifeSentence(answer: LifeAnswer, units: UnitSystem): Words {
  const { verdict, end, interval } = answer;
  if (verdict === "cannot say") {
    const why = joined(answer.reasons.map((one) => lifeReasonWords(one, units)));
    const figures = end ? say` ${endWords(answer, units)}` : [];
    return say`Cannot say whether the elements of ${answer.system} last: ${why}.${figures}`;
  }
  if (end?.time === 0) return atOnce(answer, units);
  const due = interval && fig("interval", hours(interval.time, units));
  if (verdict === "early") {
    const before = due ? say` before the service interval of ${due}` : [];
    return say`The elements of ${answer.system} are spent${before}. ${endWords(answer, units)}`;
  }
  const past = due ? say` their service interval of ${due}` : [];
  if (end) return say`The elements of ${answer.system} last${past}. ${endWords(answer, units)}`;
  const ahead = fig("horizon", hours(answer.horizon, units));
  return say`The elements of ${answer.system} last${past}: no limit is met within ten years of its duty, ${ahead}. ${unmet(answer)}`;
}

/** Nothing that soil could still do matters where a limit is broken from the start. */
function atOnce(answer: LifeAnswer, units: UnitSystem): Words {
  const soiled = answer.elements.some(({ soilAtStart }) => soilAtStart > 0);
  const state = soiled ? "with the soil the file states" : "with clean elements";
  const look = soiled
    ? "Look for what on the way costs so much."
    : "No change of elements will help; look for what else on the way costs so much.";
  return say`${answer.system} starves already ${state}: ${endedBy(answer)} at full demand and ${at(answer, units)}. ${look}`;
}

function endWords(answer: LifeAnswer, units: UnitSystem): Words {
  const { end } = answer;
  if (!end) return [];
  const when = fig("end", hours(end.time, units));
  return say`After ${when}, at full demand and ${at(answer, units)}, ${endedBy(answer)}. ${firstWords(answer)}`;
}

/** Which element goes first: the one that makes up most of the rise. */
function firstWords({ elements }: LifeAnswer): Words {
  const first = firstToGo(elements);
  if (first.length === 0 || elements.length < 2) return [];
  const names = namesWords(first.map(({ name }) => name));
  const share = first.reduce((sum, one) => sum + one.share, 0);
  const told = fig(`share of the rise of ${names}`, quantity(share, "ratio", "metric"));
  return say`${names} ${first.length > 1 ? "go" : "goes"} first, with ${told} of all the rise by then.`;
}

/** Without an end, how far the fullest has got. */
function unmet({ elements }: LifeAnswer): Words {
  const most = elements.reduce((fullest, one) => (one.restriction > fullest.restriction ? one : fullest));
  const ratio = fig(`resistance over clean of ${most.name}`, most.restriction.toFixed(1));
  return say`By then ${most.name} resists ${ratio} times as much as clean.`;
}

function at({ end }: LifeAnswer, units: UnitSystem) {
  return fig("temperature", quantity(end?.pointTemperature ?? Number.NaN, "temperature", units));
}

function endedBy({ end, pump }: LifeAnswer): Words {
  return end ? endClause(end.by, pump) : [];
}

/** What happens when a limit is met, as a clause. */
export function endClause(by: LifeEnd, pump: LifeAnswer["pump"]): Words {
  if (by.kind === "terminal drop") return say`${by.element} comes to its terminal drop`;
  switch (by.limit) {
    case "vacuum clean":
    case "vacuum at change":
      return say`the vacuum ${sideWords(pump).inlet} goes over its limit at change`;
    case "feed pressure":
      return say`the pressure ${sideWords(pump).feed} falls under what it needs`;
    case "vapour":
      return say`the pressure on the way falls under the fuel's vapour pressure`;
    case "pump capacity":
      return say`the demand becomes more than the pump can move`;
  }
}

function hours(time: number, units: UnitSystem): string {
  return quantity(time, "running time", units);
}
