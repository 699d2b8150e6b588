import type { Remedy, RemedyAnswer, RemedyResult } from "../choose/RemedyAnswer.js";
import { figOf } from "./figOf.js";
import { joined } from "./joined.js";
import { limitName } from "./limitName.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { say, type Words } from "./words.js";

/** What to do, as a clause: "9.5 mm bore for 8 mm on the suction side"; `live` names the change's own figures. */
function remedyWords(remedy: Remedy, units: UnitSystem, live: (key: string, text: string) => Words[number]): Words {
  const bore = (key: string, value: number) => live(key, quantity(value, "bore", units));
  const length = (key: string, value: number) => live(key, quantity(value, "length", units));
  switch (remedy.kind) {
    case "wider bore":
      return say`${bore("to", remedy.to)} bore for ${bore("from", remedy.from)} on the ${remedy.side} side`;
    case "shorter run":
      return say`${remedy.part} ${length("to", remedy.to)} long, not ${length("from", remedy.from)}`;
    case "one more branch":
      return say`one more beside ${names(remedy.parts)}`;
    case "larger element":
      return say`twice the area in ${names(remedy.parts)}`;
    case "warmer fuel":
    case "cooler fuel": {
      // A difference of temperature: where a scale begins does not count.
      const by = units === "us" ? `${(remedy.by * 1.8).toFixed(0)} °F` : `${remedy.by.toFixed(0)} K`;
      return say`fuel ${live("by", by)} ${remedy.kind === "warmer fuel" ? "warmer" : "cooler"}`;
    }
    case "lower pump":
      return say`pump ${length("by", remedy.by)} lower`;
    case "higher tank":
      return say`tank ${length("by", remedy.by)} higher`;
    case "fewer fittings":
      if (remedy.to === 0) return say`${remedy.part} left out`;
      return say`${remedy.part}: ${live("to", String(remedy.to))} for ${live("from", String(remedy.from))}`;
    case "clean element":
      return say`a clean element in ${remedy.part}`;
    case "open vent":
      return say`vent of ${remedy.tank} open`;
    case "open branch":
      return say`${remedy.part} opened`;
    case "fuller tank":
      return say`${remedy.tank} never under half full`;
  }
}

/**
 * Changes that are made together.
 *
 * @param of which of the changes tried they are, as workings name them: "single 0", "pairs 2"
 */
export function remediesWords(changes: readonly Remedy[], units: UnitSystem, of = "now"): Words {
  const clauses = changes.map((one, at) =>
    remedyWords(one, units, (key, text) => figOf(of, `change ${at + 1}, ${key}`, text)),
  );
  return joined(clauses, ", and ");
}

/** What would help most, in a sentence or two. */
export function remedySentence(answer: RemedyAnswer, units: UnitSystem): Words {
  const { single, now, pairs, pump } = answer;
  const at = figOf("now", "temperature where least is in hand", quantity(now.temperature, "temperature", units));
  const [best] = single;
  const starves = now.verdict === "starves";
  const state = starves ? say`which starves` : say`with ${hand(now, "now")} in hand`;
  if (!best || best.inHand <= now.inHand) {
    const binds = limitName(now.limit, pump);
    return say`No single change helps ${answer.system}: ${binds} binds at ${at} whatever is done on the way to it.`;
  }
  const first = say`What helps ${answer.system}, ${state} at ${at}, most is ${remediesWords(best.changes, units, "single 0")}: ${after(best, "single 0")}.`;
  const [pair] = pairs;
  if (!pair) return first;
  return say`${first} The best pair is ${remediesWords(pair.changes, units, "pairs 0")}: ${after(pair, "pairs 0")}.`;
}

function after(result: RemedyResult, of: string): Words {
  if (result.verdict === "starves") return say`it still starves`;
  if (result.verdict === "cannot say") return say`${hand(result, of)} in hand, but no figure is a promise`;
  if (result.verdict === "holds") return say`it holds, with ${hand(result, of)} in hand`;
  const why = result.overClean === null ? "it is tight" : "clean elements go over the clean limit";
  return say`it is fed, with ${hand(result, of)} in hand, but ${why}`;
}

function hand({ inHand }: RemedyResult, of: string): Words[number] {
  return figOf(of, "in hand, low end", quantity(inHand, "ratio", "metric"));
}

function names(parts: readonly string[]): string {
  return parts.join(", ");
}
