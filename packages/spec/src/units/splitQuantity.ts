import { tidyUnit } from "./tidyUnit.js";

/** A quantity's text taken apart: its number, and its unit expression still as typed (tidied). */
export interface SplitQuantity {
  readonly value: number;
  /** The number as typed. */
  readonly digits: string;
  /** The unit expression, "" when there is none. */
  readonly unit: string;
}

const number = String.raw`[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?`;
const factor = String.raw`(?:(?:in|mm|cm)H2O|[A-Za-z]+)(?:\^?-?[1-4])?`;
const unit = `(?:1? ?/ ?)?${factor}(?:(?: ?[*/] ?| )${factor})*`;
const quantityPattern = new RegExp(`^(${number}) ?((?:${unit})?)$`);
// "5/8 in", "1 1/4 in", "1-1/4 in": one number, as hose and tube are sold.
const inchFraction = /^(?:(\d{1,3})[ -])?(\d{1,2})\/([1-9]\d{0,2}) ?(in|inch|inches)$/;

/**
 * Takes a quantity's text apart, or answers undefined when it is anything but one number and at most one unit expression.
 * This pattern is the only way to the unit parser: what it does not describe is never handed on.
 */
export function splitQuantity(text: string): SplitQuantity | undefined {
  const tidy = tidyUnit(text).replace(/ +/g, " ");
  const fraction = inchFraction.exec(tidy);
  if (fraction !== null) {
    const [, whole = "0", over, under, inch = "in"] = fraction;
    return { value: Number(whole) + Number(over) / Number(under), digits: tidy.replace(/ ?in.*$/, ""), unit: inch };
  }
  const plain = quantityPattern.exec(tidy);
  if (plain === null) return undefined;
  const [, digits = "", unitText = ""] = plain;
  return { value: Number(digits), digits, unit: unitText };
}
