import type { SwapAnswer, SwapReason } from "../choose/SwapAnswer.js";
import type { StarvesBelow } from "../choose/starvesBelow.js";
import { capitalWords } from "./capitalWords.js";
import { figOf } from "./figOf.js";
import { joined } from "./joined.js";
import { lifeReasonWords } from "./lifeReasonWords.js";
import { chanceText } from "./lifeWords.js";
import { quantity } from "./quantity.js";
import { reasonWords } from "./reasonWords.js";
import type { UnitSystem } from "./units.js";
import { type Figure, say, type Words } from "./words.js";

/** The verdict on a swap in one sentence. */
export function swapSentence(answer: SwapAnswer, units: UnitSystem): Words {
  const what = `${answer.with} in place of ${answer.at.join(" and ")}`;
  switch (answer.verdict) {
    case "yes":
      return say`Yes: ${answer.system} may have ${what}.`;
    case "with care":
      return say`With care: ${answer.system} may have ${what}, knowing what is said below.`;
    case "no":
      return say`No: do not fit ${what}${shortly(answer, units)}.`;
    case "cannot say":
      return say`Cannot say whether ${answer.system} may have ${what}: ask the maker of the element or of the machine.`;
  }
}

/** The deciding reason in a few words. */
function shortly({ reasons }: SwapAnswer, units: UnitSystem): string | Words {
  const [first] = reasons;
  switch (first?.code) {
    case "coarser than asked":
      return say`; it is coarser than the ${first.asked} the manual asks for`;
    case "starves":
      return say`; ${belowWords(first.below, units)}`;
    case "early":
      return say`; a limit is met after ${end(first.time, units)}`;
    case "style":
    case "thread":
    case "direction":
      return "; it does not fit";
    default:
      return "";
  }
}

/** Where the engine begins to starve, as a clause. */
function belowWords(below: StarvesBelow, units: UnitSystem): Words {
  const at = live("starves below", quantity(below.temperature, "temperature", units));
  if (below.code === "below") return say`the engine starves below ${at}`;
  if (below.code === "always") return say`the engine starves even at ${at}`;
  return say`the engine does not starve down to ${at}, where figures end`;
}

/** A figure of the system with the other element. */
function live(figure: string, text: string): Figure {
  return figOf("changed", figure, text);
}

function end(time: number, units: UnitSystem): Figure {
  return live("end of life", quantity(time, "running time", units));
}

/**
 * A reason as a sentence with its figures: those of the system with the other element by the names that workings have, the
 * rest as a verdict and a life have them.
 */
export function swapReasonWords(reason: SwapReason, answer: SwapAnswer, units: UnitSystem): Words {
  return capitalWords(say`${clauseOf(reason, answer, units)}.`);
}

function clauseOf(reason: SwapReason, answer: SwapAnswer, units: UnitSystem): string | Words {
  const at = (kelvin: number) => live("temperature", quantity(kelvin, "temperature", units));
  const interval = (time: number) => live("service interval", quantity(time, "running time", units));
  const rating = ({ beta, size }: { readonly beta: number; readonly size: number }) =>
    say`beta ${live("beta asked", String(beta))} at ${live("size asked", quantity(size, "particle size", units))}`;
  const water = (of: string, share: number) => live(of, quantity(share, "ratio", units));
  switch (reason.code) {
    case "starves":
    case "tight":
    case "not judged": {
      const { point } = reason;
      const why = joined(point.reasons.map((one) => reasonWords(one, { pump: answer.pump, point, units })));
      if (reason.code === "not judged")
        return say`nobody can say whether it feeds the engine at ${at(point.temperature)}: ${why}`;
      if (reason.code === "tight") return say`it is tight at ${at(point.temperature)}: ${why}`;
      return say`${belowWords(reason.below, units)}; at ${at(point.temperature)} ${why}`;
    }
    case "coarser than asked":
      return say`fuel would come to the injection pump at ${reason.found}, dirtier at ${list(reason.sizes)} µm(c) than the ${reason.asked} the manual asks for`;
    case "protection not known":
      return unknownText(reason.why, reason.fineness, answer);
    case "protection kept":
      return say`fuel comes to the injection pump at ${reason.found}, and the manual asks for ${reason.asked}`;
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
      return say`it is finer than what is fitted (${reason.found} for ${reason.now} at the injection pump), and the ${reason.asked} the manual asks for is kept without it: that is no reason to change`;
    case "rating not met":
      return say`no element on the way would reach the ${rating(reason)} the manual asks for`;
    case "rating not known":
      return say`no data say whether any element on the way reaches the ${rating(reason)} the manual asks for; ask the maker`;
    case "early":
      return say`a limit is met after ${end(reason.time, units)}, before the ${interval(reason.interval)} of ${sourceText(reason.source)}`;
    case "lasts":
      return reason.time === null
        ? say`it lasts beyond the ${interval(reason.interval)} between changes: no limit is met in ten years of this duty`
        : say`it lasts ${end(reason.time, units)} at the likely figures, and is changed after ${interval(reason.interval)}`;
    case "life not known":
      return say`how long it lasts is not known: ${joined(
        reason.reasons.map((one) => lifeReasonWords(one, units)),
        "; ",
      )}`;
    case "may starve early":
      return say`the chance that it starves the engine before ${interval(reason.interval)} is ${live("chance of an end before the service interval", chanceText(reason, reason.draws))}`;
    case "style":
      return say`it is of another build: ${reason.other}, where ${reason.fitted} is fitted`;
    case "thread":
      return say`its thread or port is ${reason.other}, and the one fitted has ${reason.fitted}`;
    case "thread kept":
      return say`its thread or port is ${reason.thread}, as at the place it is for`;
    case "direction":
      return say`fuel goes through it ${reason.other}, and through the one fitted ${reason.fitted}`;
    case "thread not known":
      return reason.other === null
        ? "no thread or port is stated; compare seal, thread and height by hand before fitting"
        : say`its thread or port is ${reason.other}; what the machine has is not stated: compare seal, thread and height by hand`;
    case "too much flow":
      return say`${reason.place} carries ${live("most flow at the places", quantity(reason.flow, "flow", units))}, and its maker allows it ${live("most flow allowed", quantity(reason.most, "flow", units))}`;
    case "less water":
      return reason.other === null
        ? say`it is not stated to separate water; the one fitted takes ${water("water kept by what is fitted", reason.fitted)} of the free water`
        : say`it separates ${water("water kept by the other element", reason.other)} of the free water; the one fitted takes ${water("water kept by what is fitted", reason.fitted)}`;
    case "neighbour stays":
      return say`${reason.neighbour}, beside ${reason.place}, stays as it is: fuel takes the easier way, so change both or neither`;
    case "was backwards":
      return say`the one at ${reason.place} is fitted against its arrow; the new one is reckoned the right way round`;
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
