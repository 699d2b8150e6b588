import { checkedUnit } from "./checkedUnit.js";
import { type Kind, type KindName, kinds } from "./kinds.js";
import type { QuantityFault } from "./quantityFault.js";
import type { SplitQuantity } from "./splitQuantity.js";
import { type Around, type Between, splitSpread } from "./splitSpread.js";
import { dashFault, endFault, formFault } from "./spreadFaults.js";
import { differenceToSi, toSi } from "./unitParser.js";

/** Longest text of a spread: that of two quantities. */
const longest = 120;

/** A spread in SI: its ends, and the value taken where only one can be. */
export interface Spread {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Reads a quantity with a spread: "0.4 mg/L ± 50 %", "0.40 ± 0.05 mg/L", "2 to 5 mg/L", "2 mg/L to 5 mg/L"; +/- does for
 * ±. A tolerance of a temperature is a difference: "15 degC ± 5 K" is "10 degC to 20 degC".
 *
 * The value taken is the centre of a ±. Of two ends it is the geometric mean, since what is so little known is known by
 * its factor; the arithmetic mean for a temperature, whose zero is the scale's, and where an end is not above zero.
 *
 * @param text at most 120 characters
 * @param kind which quantity is wanted; both ends must lie in its range of sense
 * @returns the spread in SI, or a fault; undefined for a text without a spread, which `quantity` reads
 * @example
 * spreadQuantity("0.4 mg/L ± 50 %", "concentration") // { value: 0.0004, low: 0.0002, high: 0.0006 }
 */
export function spreadQuantity(text: string, kind: KindName): Spread | { readonly fault: QuantityFault } | undefined {
  const wanted: Kind = kinds[kind];
  if (text.length > longest) return undefined;
  const split = splitSpread(text);
  if (split === undefined) return dashFault(text);
  const unfit = formFault(text, split, wanted);
  if (unfit !== undefined) return unfit;
  const spread = split.form === "between" ? between(text, split, wanted) : around(text, split, wanted);
  return "fault" in spread ? spread : (endFault(text, split, spread, wanted) ?? spread);
}

type Reading = Spread | { readonly fault: QuantityFault };

function between(text: string, { low: from, high: to }: Between, wanted: Kind): Reading {
  const [first, last] = [
    checkedUnit(from, blamed(text, from, to), wanted),
    checkedUnit(to, blamed(text, to, from), wanted),
  ];
  if ("fault" in first) return first;
  if ("fault" in last) return last;
  const low = toSi(from.value, first.unit, wanted.si);
  const high = toSi(to.value, last.unit, wanted.si);
  const value = low > 0 && wanted.si !== "K" ? Math.sqrt(low * high) : (low + high) / 2;
  return { value, low, high };
}

function around(text: string, { centre, by }: Around, wanted: Kind): Reading {
  const middle = checkedUnit(centre, blamed(text, centre, by), wanted);
  if ("fault" in middle) return middle;
  const value = toSi(centre.value, middle.unit, wanted.si);
  if (by.unit === "%") {
    const [inner, outer] = [(value * (100 - by.value)) / 100, (value * (100 + by.value)) / 100];
    return { value, low: Math.min(inner, outer), high: Math.max(inner, outer) };
  }
  const tolerance = checkedUnit(by, blamed(text, by, centre), wanted);
  if ("fault" in tolerance) return tolerance;
  const reach = differenceToSi(by.value, tolerance.unit, wanted.si);
  return { value, low: value - reach, high: value + reach };
}

/** What a fault of one number's unit quotes: that number alone where the other has a unit of its own. */
function blamed(text: string, one: SplitQuantity, other: SplitQuantity): string {
  return one.unit === other.unit || other.unit === "%" ? text : `${one.digits} ${one.unit}`;
}
