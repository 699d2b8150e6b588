import { shown } from "../shown.js";
import { checkedUnit } from "./checkedUnit.js";
import { type Kind, type KindName, kinds } from "./kinds.js";
import { fault, like, type QuantityFault } from "./quantityFault.js";
import { inRange } from "./range.js";
import { splitQuantity } from "./splitQuantity.js";
import { toSi } from "./unitParser.js";

/** Longest text of a quantity; the longest sensible one has some 20 characters. */
const longest = 60;

/** A quantity in SI, or why there is none. */
export type QuantityResult = { readonly value: number } | { readonly fault: QuantityFault };

/**
 * Reads one quantity as people write it, one number and one unit, into SI. There is no default unit: "10" is a fault.
 *
 * Right to a relative 1e-15: number and unit meet in a few products of exact factors.
 *
 * @param text such as "10 mm", "12 inHg", "3 mm²/s", "59 °F", "5/16 in"; at most 60 characters
 * @param kind which quantity is wanted; fixes its measure, its range of sense and the example in a fault
 * @returns value in SI, or a fault with its code and message; it never throws
 * @see tradeUnits for the units added and their exact definitions
 * @example
 * quantity("19 mm", "bore") // { value: 0.019 }
 * quantity("10mm2", "length") // fault: "10mm2" is an area; a length is wanted, such as "6 m"
 */
export function quantity(text: string, kind: KindName): QuantityResult {
  const wanted: Kind = kinds[kind];
  if (text.length > longest) {
    return fault(
      "too long",
      `${shown(text)} is too long for a quantity; write ${wanted.words} such as ${like(wanted)}`,
    );
  }
  const split = splitQuantity(text);
  if (split === undefined) return notAQuantity(text, wanted);
  const checked = checkedUnit(split, text, wanted);
  if ("fault" in checked) return checked;
  return inRange(text, toSi(split.value, checked.unit, wanted.si), wanted);
}

function notAQuantity(text: string, wanted: Kind): QuantityResult {
  if (/\d,\d/.test(text)) {
    // "1,000" may be a thousand or one: there nothing is proposed.
    const point = /^[^,]*,(?!\d{3}(?!\d))[^,]*$/.test(text)
      ? `write it as ${shown(text.replace(",", "."))}`
      : undefined;
    const hint = point ?? `write the number with a decimal point, such as ${like(wanted)}`;
    return fault("decimal comma", `${shown(text)} has a comma; ${hint}`);
  }
  const inches = /^([\d./ -]+?) ?(?:"|''|\u2033|\u201d)$/.exec(text);
  if (inches !== null && wanted.measure === "a length") {
    return fault("not a quantity", `${shown(text)} has no unit that can be read; write inches as "${inches[1]} in"`);
  }
  const message = `${shown(text)} is not one number with one unit; write ${wanted.words} such as ${like(wanted)}`;
  return fault("not a quantity", message);
}
