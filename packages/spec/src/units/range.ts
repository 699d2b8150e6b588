import { shown } from "../shown.js";
import type { Kind } from "./kinds.js";
import { fault, like, type QuantityFault } from "./quantityFault.js";
import { splitQuantity } from "./splitQuantity.js";
import { readUnit } from "./unitExpression.js";
import { type ParsedUnit, toSi } from "./unitParser.js";

/** The value, in SI, or a fault when it is outside its kind's range of sense. */
export function inRange(
  text: string,
  value: number,
  wanted: Kind,
): { readonly value: number } | { readonly fault: QuantityFault } {
  const { least, most } = rangeOf(wanted);
  if (value >= least && value <= most) return { value };
  const range = `${wanted.least} to ${wanted.most} makes sense, such as ${like(wanted)}`;
  const size = value < 0 && least >= 0 ? "negative" : `too ${direction(value < least, wanted)} for ${wanted.words}`;
  return fault("out of range", `${shown(text)} is ${size}; ${range}`);
}

function direction(under: boolean, wanted: Kind): string {
  if (wanted.measure === "a temperature" || wanted.words === "an altitude") return under ? "low" : "high";
  return under ? "small" : "large";
}

const ranges = new Map<Kind, { readonly least: number; readonly most: number }>();

/** A kind's range in SI, worked out on first use. */
export function rangeOf(kind: Kind): { readonly least: number; readonly most: number } {
  let found = ranges.get(kind);
  if (found === undefined) {
    const [least, most] = [inSi(kind.least, kind), inSi(kind.most, kind)];
    // A bound typed in another unit may land a rounding outside: "1000 um" is 1 mm.
    found = { least: least - Math.abs(least) * 1e-12, most: most + Math.abs(most) * 1e-12 };
    ranges.set(kind, found);
  }
  return found;
}

function inSi(text: string, kind: Kind): number {
  const split = splitQuantity(text);
  return toSi(split?.value ?? Number.NaN, readUnit(split?.unit ?? "") as ParsedUnit, kind.si);
}
