import type {
  Arrangement,
  NearestMiss,
  SizeAnswer,
  SizeFailure,
  SizeReason,
  SizeStage,
} from "../choose/sizing/SizeAnswer.js";
import { moneyText } from "./chooseMoney.js";
import { figOf } from "./figOf.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { say, type Words } from "./words.js";

const failures: Readonly<Record<SizeFailure, string>> = {
  "pump capacity": "less than 20 % in hand of what the pump can move",
  "vacuum clean": "over the vacuum limit with clean elements",
  "vacuum at change": "less than 20 % in hand before the vacuum limit at change",
  "feed pressure": "less than 20 % in hand before the feed pressure is too low",
  vapour: "less than 20 % in hand before the fuel boils",
  "catch not known": "no beta ratios stated for an element",
  "capacity not known": "neither a capacity test nor an area stated for an element",
  "most flow": "an element carries more than its maker allows",
  cleanliness: "fuel dirtier at the injection pump than asked",
  rating: "no element tested to the fineness asked",
  interval: "a limit is met before the interval is over",
};

/** What arrangements fail by, as a clause. */
export function sizeFailureText(by: SizeFailure): string {
  return failures[by];
}

/** Why nothing was searched, as a sentence. */
export function sizeReasonWords(reason: SizeReason, units: UnitSystem): Words {
  const hours = (figure: string, time: number) => figOf("search", figure, quantity(time, "running time", units));
  switch (reason.code) {
    case "nothing asked":
      return say`Nothing says what the injection pump asks for; give a code such as 15/13/10, or the fineness its manual names.`;
    case "no interval":
      return say`No interval between changes is stated; give the one wanted.`;
    case "longer than the manual allows":
      return say`An interval of ${hours("interval asked", reason.interval)} is longer than the ${hours("longest interval allowed", reason.most)} the manual allows.`;
    case "no vacuum limit":
      return say`No vacuum limit is given, and for this pump and fuel there is no published one to take; the maker's manual has it.`;
    case "life cannot be reckoned":
      return say`Life cannot be reckoned: ${reason.why.map((one) => (one === "no duty" ? "the file does not say how the machine is run" : "it does not say how dirty the fuel comes")).join(", and ")}.`;
    case "no solids":
      return say`The stated cleanliness of the delivered fuel gives no mass of solids.`;
    case "fuel not judged":
      return say`At ${figOf("search", "temperature not judged", quantity(reason.temperature, "temperature", units))} no figure is a promise: the fuel is below its cloud point or outside its data.`;
  }
}

/** What a search came to, in a sentence or two. */
export function sizeSentence(answer: SizeAnswer, units: UnitSystem): Words {
  const { verdict, best, arrangements, side, temperatures } = answer;
  if (verdict === "cannot say") return say`Cannot say what would do for the ${side} side of ${answer.system}:`;
  const counted = (key: "passing" | "candidates") => figOf("search", key, String(answer[key]));
  const candidates = counted("candidates");
  const searchedAt = (at: number) =>
    figOf(
      "search",
      `temperature ${at + 1} searched at`,
      quantity(temperatures[at] ?? Number.NaN, "temperature", units),
    );
  const [first, last] = [searchedAt(0), searchedAt(temperatures.length - 1)];
  const range = first.text === last.text ? say`at ${first}` : say`from ${first} to ${last}`;
  if (verdict === "no") {
    const none = say`None of ${candidates} arrangements on the ${side} side of ${answer.system} meets every limit ${range}.`;
    return answer.nearest === null ? none : say`${none} ${nearestText(answer.nearest, answer.asked, units)}`;
  }
  const head = say`${counted("passing")} of ${candidates} arrangements on the ${side} side of ${answer.system} meet every limit ${range}.`;
  const cheapest = best.cost === null ? undefined : arrangements[best.cost];
  if (cheapest)
    return say`${head} The cheapest is ${named(cheapest, units, `arrangement ${best.cost}`)}, at ${figOf(`arrangement ${best.cost}`, "cost of a year", moneyText(cheapest.yearlyCost ?? 0))} a year.`;
  const least = best.vacuum === null ? undefined : arrangements[best.vacuum];
  return least ? say`${head} Least vacuum draws ${named(least, units, `arrangement ${best.vacuum}`)}.` : head;
}

/** What came nearest to meeting every limit, and by what it misses. */
function nearestText(nearest: NearestMiss, { code, interval }: SizeAnswer["asked"], units: UnitSystem): Words {
  const head = say`The nearest is ${named(nearest, units, "nearest")}`;
  const hours = (of: string, figure: string, time: number) => figOf(of, figure, quantity(time, "running time", units));
  if (nearest.by === "interval" && nearest.life !== null && interval !== null) {
    return say`${head}: all else is kept, but a limit is met after ${hours("nearest", "end of life", nearest.life)}, not the ${hours("search", "interval asked", interval)} wanted.`;
  }
  if (nearest.by === "cleanliness" && nearest.code !== null && code !== null) {
    return say`${head}: it feeds the engine, but fuel comes to the injection pump at ${nearest.code}, and ${code} is asked for.`;
  }
  if (nearest.by === "rating") return say`${head}: it feeds the engine, but is not tested to the fineness asked.`;
  return say`${head}: ${failures[nearest.by]}, with ${figOf("nearest", "least in hand", quantity(nearest.inHand, "ratio", units))} in hand at the worst temperature.`;
}

function named({ stages, bore }: Pick<Arrangement, "stages" | "bore">, units: UnitSystem, of: string): Words {
  const rows = stages.map(({ element, count }) => (count === 1 ? element : `${count} of ${element} side by side`));
  const width =
    bore === null ? "" : say`, with lines of ${figOf(of, "bore of the lines", quantity(bore, "bore", units))}`;
  return say`${rows.join(", then ")}${width}`;
}

/** Stages as a table has them: "2 x element P25, then element F4". */
export function stagesText(stages: readonly SizeStage[]): string {
  return stages.map(({ element, count }) => (count === 1 ? element : `${count} x ${element}`)).join(", then ");
}
