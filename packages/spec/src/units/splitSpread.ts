import { type SplitQuantity, splitQuantity } from "./splitQuantity.js";
import { tidyUnit } from "./tidyUnit.js";

/** "2 to 5 mg/L", "2 mg/L to 5 mg/L" */
export interface Between {
  readonly form: "between";
  readonly low: SplitQuantity;
  readonly high: SplitQuantity;
}

/** "0.40 ± 0.05 mg/L", "15 degC ± 5 K", "0.4 mg/L ± 50 %"; the unit of `by` is "%" in the last */
export interface Around {
  readonly form: "around";
  readonly centre: SplitQuantity;
  readonly by: SplitQuantity;
}

/** A quantity with a spread, taken apart; a unit that stands once, at the end, belongs to both numbers. */
export type SplitSpread = Between | Around;

/** What every text with a spread holds; most texts hold none, and are then not taken apart. */
const sign = /±|\+\/|\sto\s/;
const pair = /^(.+?)(?: ?(?:±|\+\/-) ?| (to) )(.+)$/;
const percent = /^(\d+(?:\.\d*)?|\.\d+) ?%$/;

/** Takes a quantity with a spread apart, or answers undefined for any other text. */
export function splitSpread(text: string): SplitSpread | undefined {
  if (!sign.test(text)) return undefined;
  const [, first = "", to, second = ""] = pair.exec(tidyUnit(text).replace(/ +/g, " ")) ?? [];
  const share = percent.exec(second)?.[1];
  if (to === undefined && share !== undefined) {
    const centre = splitQuantity(first);
    return centre && { form: "around", centre, by: { value: Number(share), digits: share, unit: "%" } };
  }
  const right = splitQuantity(second);
  if (right === undefined) return undefined;
  const own = splitQuantity(first);
  // Also for a fraction, which is no number until its inches follow: "1/4 to 3/8 in".
  const left = own !== undefined && own.unit !== "" ? own : splitQuantity(`${first} ${right.unit}`);
  if (left === undefined) return undefined;
  if (to !== undefined) return { form: "between", low: left, high: right };
  return /^[+-]/.test(right.digits) ? undefined : { form: "around", centre: left, by: right };
}
