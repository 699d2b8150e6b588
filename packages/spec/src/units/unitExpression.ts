import { nearest } from "../nearest.js";
import { type ParsedUnit, parseUnit } from "./unitParser.js";
import { meantWords, parserNames, unitWords } from "./words.js";

/** A unit expression read, or the first word of it that is no unit here, with the one that may have been meant. */
export type ReadUnit = ParsedUnit | { readonly unknown: string; readonly meant?: string };

/** Reads a unit expression word by word: each must be a unit known here before the parser sees any of it. */
export function readUnit(text: string): ReadUnit {
  const words = text.match(/(?:in|mm|cm)H2O|[A-Za-z]+/g) ?? [];
  const unknown = words.find((word) => !unitWords.has(word));
  if (unknown !== undefined) {
    const meant = meantFor(unknown);
    return meant === undefined ? { unknown } : { unknown, meant };
  }
  return parseUnit(forParser(text));
}

/** In the parser's notation: "mm2/s" as "mm^2/s", "1/m" as "m^-1". */
function forParser(text: string): string {
  const [, inverse = "", rest = ""] = /^(1? ?\/ ?)?(.*)$/.exec(text) ?? [];
  let sign = inverse === "" ? "" : "-";
  return rest.replace(/((?:in|mm|cm)H2O|[A-Za-z]+)(?:\^?(-?[1-4]))?/g, (_all, word: string, power = "1") => {
    const name = Object.hasOwn(parserNames, word) ? parserNames[word] : word;
    const signed = `${sign}${power}`.replace("--", "");
    sign = ""; // only the first word stands under a leading stroke
    return `${name}^${signed}`;
  });
}

function meantFor(word: string): string | undefined {
  if (Object.hasOwn(meantWords, word)) return meantWords[word];
  return nearest(word, unitWords);
}
