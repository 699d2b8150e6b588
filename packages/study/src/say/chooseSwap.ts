import type { SwapAnswer, SwapReason } from "../choose/SwapAnswer.js";
import type { StarvesBelow } from "../choose/starvesBelow.js";
import { capital } from "./capital.js";
import { joined } from "./joined.js";
import { lifeReasonWords } from "./lifeReasonWords.js";
import { chanceText } from "./lifeWords.js";
import { quantity } from "./quantity.js";
import { reasonWords } from "./reasonWords.js";
import type { UnitSystem } from "./units.js";
import { plain } from "./words.js";

/** The verdict on a swap in one sentence. */
export function swapSentence(answer: SwapAnswer, units: UnitSystem): string {
  const what = `${answer.with} in place of ${answer.at.join(" and ")}`;
  switch (answer.verdict) {
    case "yes":
      return `Yes: ${answer.system} may have ${what}.`;
    case "with care":
      return `With care: ${answer.system} may have ${what}, knowing what is said below.`;
    case "no":
      return `No: do not fit ${what}${shortly(answer, units)}.`;
    case "cannot say":
      return `Cannot say whether ${answer.system} may have ${what}: ask the maker of the element or of the machine.`;
  }
}

/** The deciding reason in a few words. */
function shortly({ reasons, asked }: SwapAnswer, units: UnitSystem): string {
  const [first] = reasons;
  switch (first?.code) {
    case "coarser than asked":
      return `; it is coarser than the ${asked} the manual asks for`;
    case "starves":
      return `; ${belowText(first.below, units)}`;
    case "early":
      return `; a limit is met after ${quantity(first.time, "running time", units)}`;
    case "style":
    case "thread":
    case "direction":
      return "; it does not fit";
    default:
      return "";
  }
}

/** Where the engine begins to starve, as a clause. */
export function belowText(below: StarvesBelow, units: UnitSystem): string {
  const at = quantity(below.temperature, "temperature", units);
  if (below.code === "below") return `the engine starves below ${at}`;
  if (below.code === "always") return `the engine starves even at ${at}`;
  return `the engine does not starve down to ${at}, where figures end`;
}

/** A reason as a sentence with its figures. */
export function swapReasonText(reason: SwapReason, answer: SwapAnswer, units: UnitSystem): string {
  return `${capital(clauseOf(reason, answer, units))}.`;
}

function clauseOf(reason: SwapReason, answer: SwapAnswer, units: UnitSystem): string {
  const at = (kelvin: number) => quantity(kelvin, "temperature", units);
  switch (reason.code) {
    case "starves":
    case "tight":
    case "not judged": {
      const { point } = reason;
      const why = plain(joined(point.reasons.map((one) => reasonWords(one, { pump: answer.pump, point, units }))));
      if (reason.code === "not judged")
        return `nobody can say whether it feeds the engine at ${at(point.temperature)}: ${why}`;
      if (reason.code === "tight") return `it is tight at ${at(point.temperature)}: ${why}`;
      return `${belowText(reason.below, units)}; at ${at(point.temperature)} ${why}`;
    }
    case "coarser than asked":
      return `fuel would come to the injection pump at ${reason.found}, dirtier at ${list(reason.sizes)} µm(c) than the ${reason.asked} the manual asks for`;
    case "protection not known":
      return unknownText(reason.why, reason.fineness, answer);
    case "protection kept":
      return `fuel comes to the injection pump at ${reason.found}, and the manual asks for ${reason.asked}`;
    case "no coarser than now":
      return reason.fineness === "same"
        ? "it catches as much as what is fitted, at every size"
        : "it catches no less than what is fitted, at any size";
    case "coarser than now":
      return "it catches less than what is fitted, and leaves the rest to the elements behind it, which fill the sooner";
    case "filling not known":
      return reason.why === "catch"
        ? "how long it lasts is not known: no beta ratios say what it catches; ask its maker"
        : "how long it lasts is not known: neither a capacity test nor its area says how much it takes; ask its maker";
    case "finer than asked":
      return `it is finer than what is fitted (${reason.found} for ${reason.now} at the injection pump), and the ${reason.asked} the manual asks for is kept without it: that is no reason to change`;
    case "rating not met":
      return `no element on the way would reach the beta ${reason.beta} at ${quantity(reason.size, "particle size", units)} the manual asks for`;
    case "rating not known":
      return `no data say whether any element on the way reaches the beta ${reason.beta} at ${quantity(reason.size, "particle size", units)} the manual asks for; ask the maker`;
    case "early":
      return `a limit is met after ${quantity(reason.time, "running time", units)}, before the ${quantity(reason.interval, "running time", units)} of ${sourceText(reason.source)}`;
    case "lasts":
      return reason.time === null
        ? `it lasts beyond the ${quantity(reason.interval, "running time", units)} between changes: no limit is met in ten years of this duty`
        : `it lasts ${quantity(reason.time, "running time", units)} at the likely figures, and is changed after ${quantity(reason.interval, "running time", units)}`;
    case "life not known":
      return `how long it lasts is not known: ${reason.reasons.map((one) => plain(lifeReasonWords(one, units))).join("; ")}`;
    case "may starve early":
      return `the chance that it starves the engine before ${quantity(reason.interval, "running time", units)} is ${chanceText(reason, reason.draws)}`;
    case "style":
      return `it is of another build: ${reason.other}, where ${reason.fitted} is fitted`;
    case "thread":
      return `its thread or port is ${reason.other}, and the one fitted has ${reason.fitted}`;
    case "thread kept":
      return `its thread or port is ${reason.thread}, as at the place it is for`;
    case "direction":
      return `fuel goes through it ${reason.other}, and through the one fitted ${reason.fitted}`;
    case "thread not known":
      return reason.other === null
        ? "no thread or port is stated; compare seal, thread and height by hand before fitting"
        : `its thread or port is ${reason.other}; what the machine has is not stated: compare seal, thread and height by hand`;
    case "too much flow":
      return `${reason.place} carries ${quantity(reason.flow, "flow", units)}, and its maker allows it ${quantity(reason.most, "flow", units)}`;
    case "less water":
      return reason.other === null
        ? `it is not stated to separate water; the one fitted takes ${quantity(reason.fitted, "ratio", units)} of the free water`
        : `it separates ${quantity(reason.other, "ratio", units)} of the free water; the one fitted takes ${quantity(reason.fitted, "ratio", units)}`;
    case "neighbour stays":
      return `${reason.neighbour}, beside ${reason.place}, stays as it is: fuel takes the easier way, so change both or neither`;
    case "was backwards":
      return `the one at ${reason.place} is fitted against its arrow; the new one is reckoned the right way round`;
  }
}

function unknownText(why: string, fineness: string, { asked }: SwapAnswer): string {
  const beside =
    fineness === "not known"
      ? "nobody states what it catches beside the one fitted"
      : fineness === "coarser"
        ? "it catches less than the one fitted"
        : "it catches more of some sizes and less of others than the one fitted";
  switch (why) {
    case "its catch":
      return `whether the ${asked} the manual asks for is kept is not known: no beta ratios are stated for some element on the way; ask its maker`;
    case "the delivered fuel":
      return `${beside}, and the file does not say how dirty the fuel comes, so nobody can tell whether the ${asked} the manual asks for is kept; ask the maker`;
    case "the duty":
      return `${beside}, and the file does not say how the machine is run, so nobody can tell whether the ${asked} the manual asks for is kept; ask the maker`;
    default:
      return `${beside}, and the file does not say what the injection pump asks for; ask the maker of the machine`;
  }
}

function list(items: readonly string[]): string {
  return items.length < 2 ? items.join() : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}

function sourceText(source: string | null): string {
  return source === null ? "the service interval" : `the ${source.replace(/^the /, "")}`;
}
