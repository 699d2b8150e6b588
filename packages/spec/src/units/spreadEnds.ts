import { type KindName, kinds } from "./kinds.js";
import { splitSpread } from "./splitSpread.js";
import { spreadQuantity } from "./spreadQuantity.js";
import { splitShare } from "./spreadShare.js";

/**
 * The ends of a text with a spread, each written as a file could hold it alone; undefined for any other text. Any kind
 * that takes both ends will do to read them: those of one measure share their SI unit.
 *
 * @example
 * spreadEnds("2 ± 1 mg/L") // { low: "0.001 kg/m^3", high: "0.003 kg/m^3" }
 */
export function spreadEnds(text: string): { readonly low: string; readonly high: string } | undefined {
  const [from, to] = splitShare(text) ?? [];
  if (from !== undefined) return { low: `${from} %`, high: `${to} %` };
  if (splitSpread(text) === undefined) return undefined;
  for (const [name, { si }] of Object.entries(kinds)) {
    const read = spreadQuantity(text, name as KindName);
    if (read !== undefined && "value" in read) return { low: `${read.low} ${si}`, high: `${read.high} ${si}` };
  }
  return undefined;
}
