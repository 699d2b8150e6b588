import type {
  Arrangement,
  NearestMiss,
  SizeAnswer,
  SizeFailure,
  SizeReason,
  SizeStage,
} from "../choose/sizing/SizeAnswer.js";
import { moneyText } from "./chooseMoney.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";

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
export function sizeReasonText(reason: SizeReason, units: UnitSystem): string {
  const hours = (time: number) => quantity(time, "running time", units);
  switch (reason.code) {
    case "nothing asked":
      return "Nothing says what the injection pump asks for; give a code such as 15/13/10, or the fineness its manual names.";
    case "no interval":
      return "No interval between changes is stated; give the one wanted.";
    case "longer than the manual allows":
      return `An interval of ${hours(reason.interval)} is longer than the ${hours(reason.most)} the manual allows.`;
    case "no vacuum limit":
      return "No vacuum limit is given, and for this pump and fuel there is no published one to take; the maker's manual has it.";
    case "life cannot be reckoned":
      return `Life cannot be reckoned: ${reason.why.map((one) => (one === "no duty" ? "the file does not say how the machine is run" : "it does not say how dirty the fuel comes")).join(", and ")}.`;
    case "no solids":
      return "The stated cleanliness of the delivered fuel gives no mass of solids.";
    case "fuel not judged":
      return `At ${quantity(reason.temperature, "temperature", units)} no figure is a promise: the fuel is below its cloud point or outside its data.`;
  }
}

/** What a search came to, in a sentence or two. */
export function sizeSentence(answer: SizeAnswer, units: UnitSystem): string {
  const { verdict, passing, candidates, best, arrangements, side, temperatures } = answer;
  if (verdict === "cannot say") return `Cannot say what would do for the ${side} side of ${answer.system}:`;
  const shown = (kelvin: number | undefined) => quantity(kelvin ?? Number.NaN, "temperature", units);
  const [first, last] = [shown(temperatures[0]), shown(temperatures.at(-1))];
  const range = first === last ? `at ${first}` : `from ${first} to ${last}`;
  if (verdict === "no") {
    const none = `None of ${candidates} arrangements on the ${side} side of ${answer.system} meets every limit ${range}.`;
    return answer.nearest === null ? none : `${none} ${nearestText(answer.nearest, answer.asked, units)}`;
  }
  const head = `${passing} of ${candidates} arrangements on the ${side} side of ${answer.system} meet every limit ${range}.`;
  const cheapest = best.cost === null ? undefined : arrangements[best.cost];
  if (cheapest)
    return `${head} The cheapest is ${named(cheapest, units)}, at ${moneyText(cheapest.yearlyCost ?? 0)} a year.`;
  const least = best.vacuum === null ? undefined : arrangements[best.vacuum];
  return least ? `${head} Least vacuum draws ${named(least, units)}.` : head;
}

/** What came nearest to meeting every limit, and by what it misses. */
function nearestText(nearest: NearestMiss, { code, interval }: SizeAnswer["asked"], units: UnitSystem): string {
  const head = `The nearest is ${named(nearest, units)}`;
  const hours = (time: number) => quantity(time, "running time", units);
  if (nearest.by === "interval" && nearest.life !== null && interval !== null) {
    return `${head}: all else is kept, but a limit is met after ${hours(nearest.life)}, not the ${hours(interval)} wanted.`;
  }
  if (nearest.by === "cleanliness" && nearest.code !== null && code !== null) {
    return `${head}: it feeds the engine, but fuel comes to the injection pump at ${nearest.code}, and ${code} is asked for.`;
  }
  if (nearest.by === "rating") return `${head}: it feeds the engine, but is not tested to the fineness asked.`;
  return `${head}: ${failures[nearest.by]}, with ${quantity(nearest.inHand, "ratio", units)} in hand at the worst temperature.`;
}

function named({ stages, bore }: Pick<Arrangement, "stages" | "bore">, units: UnitSystem): string {
  const rows = stages.map(({ element, count }) => (count === 1 ? element : `${count} of ${element} side by side`));
  const width = bore === null ? "" : `, with lines of ${quantity(bore, "bore", units)}`;
  return `${rows.join(", then ")}${width}`;
}

/** Stages as a table has them: "2 x element P25, then element F4". */
export function stagesText(stages: readonly SizeStage[]): string {
  return stages.map(({ element, count }) => (count === 1 ? element : `${count} x ${element}`)).join(", then ");
}
