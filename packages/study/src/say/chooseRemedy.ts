import type { Remedy, RemedyAnswer, RemedyResult } from "../choose/RemedyAnswer.js";
import { limitName } from "./limitName.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";

/** What to do, as a clause: "replace 8 mm hose on the suction side by 9.5 mm". */
export function remedyText(remedy: Remedy, units: UnitSystem): string {
  const bore = (value: number) => quantity(value, "bore", units);
  const length = (value: number) => quantity(value, "length", units);
  switch (remedy.kind) {
    case "wider bore":
      return `${bore(remedy.to)} bore for ${bore(remedy.from)} on the ${remedy.side} side`;
    case "shorter run":
      return `${remedy.part} ${length(remedy.to)} long, not ${length(remedy.from)}`;
    case "one more branch":
      return `one more beside ${names(remedy.parts)}`;
    case "larger element":
      return `twice the area in ${names(remedy.parts)}`;
    case "warmer fuel":
    case "cooler fuel": {
      // A difference of temperature: where a scale begins does not count.
      const by = units === "us" ? `${(remedy.by * 1.8).toFixed(0)} °F` : `${remedy.by.toFixed(0)} K`;
      return `fuel ${by} ${remedy.kind === "warmer fuel" ? "warmer" : "cooler"}`;
    }
    case "lower pump":
      return `pump ${length(remedy.by)} lower`;
    case "higher tank":
      return `tank ${length(remedy.by)} higher`;
    case "fewer fittings":
      return remedy.to === 0 ? `${remedy.part} left out` : `${remedy.part}: ${remedy.to} for ${remedy.from}`;
    case "clean element":
      return `a clean element in ${remedy.part}`;
    case "open vent":
      return `vent of ${remedy.tank} open`;
    case "open branch":
      return `${remedy.part} opened`;
    case "fuller tank":
      return `${remedy.tank} never under half full`;
  }
}

/** Changes that are made together. */
export function remediesText(changes: readonly Remedy[], units: UnitSystem): string {
  return changes.map((one) => remedyText(one, units)).join(", and ");
}

/** What would help most, in a sentence or two. */
export function remedySentence(answer: RemedyAnswer, units: UnitSystem): string {
  const { single, now, pairs, pump } = answer;
  const at = quantity(now.temperature, "temperature", units);
  const [best] = single;
  const name = `${answer.system}, ${now.verdict === "starves" ? "which starves" : `with ${hand(now)} in hand`} at ${at},`;
  if (!best || best.inHand <= now.inHand) {
    const binds = limitName(now.limit, pump);
    return `No single change helps ${answer.system}: ${binds} binds at ${at} whatever is done on the way to it.`;
  }
  const first = `What helps ${name} most is ${remedyText(best.changes[0] as Remedy, units)}: ${after(best)}.`;
  const [pair] = pairs;
  return pair ? `${first} The best pair is ${remediesText(pair.changes, units)}: ${after(pair)}.` : first;
}

function after(result: RemedyResult): string {
  if (result.verdict === "starves") return "it still starves";
  if (result.verdict === "cannot say") return `${hand(result)} in hand, but no figure is a promise`;
  if (result.verdict === "holds") return `it holds, with ${hand(result)} in hand`;
  const why = result.overClean === null ? "it is tight" : "clean elements go over the clean limit";
  return `it is fed, with ${hand(result)} in hand, but ${why}`;
}

function hand({ inHand }: RemedyResult): string {
  return quantity(inHand, "ratio", "metric");
}

function names(parts: readonly string[]): string {
  return parts.join(", ");
}
