import { shown } from "../shown.js";
import { type Kind, type KindName, kinds } from "./kinds.js";
import { measureOf } from "./measures.js";
import { splitQuantity } from "./splitQuantity.js";
import { readUnit } from "./unitExpression.js";
import { type ParsedUnit, parseUnit, toSi } from "./unitParser.js";

/** Longest text of a quantity; the longest sensible one has some 20 characters. */
const longest = 60;

/** Why a text is no quantity of the kind wanted. */
export interface QuantityFault {
  /** For programs: which of the few ways in which a quantity can be wrong. */
  readonly code:
    | "no unit"
    | "unknown unit"
    | "wrong measure"
    | "out of range"
    | "not a quantity"
    | "decimal comma"
    | "too long";
  /** For people: what is wrong and what would be right, without a full stop. */
  readonly message: string;
}

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
  if (split.unit === "") {
    return fault("no unit", `${shown(text)} has no unit; write it as "${split.digits} ${unitOf(wanted)}"`);
  }
  const unit = readUnit(split.unit);
  if ("unknown" in unit) {
    const hint = unit.meant === undefined ? `write ${wanted.words} such as ${like(wanted)}` : `write "${unit.meant}"`;
    return fault("unknown unit", `${shown(text)}: "${unit.unknown}" is not a unit known here; ${hint}`);
  }
  const si = parseUnit(wanted.si);
  if (!unit.equalBase(si)) {
    const found = measureOf(unit);
    return fault("wrong measure", `${shown(text)} is ${found}; ${wanted.measure} is wanted, such as ${like(wanted)}`);
  }
  return inRange(text, toSi(split.value, unit, wanted.si), wanted);
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

function inRange(text: string, value: number, wanted: Kind): QuantityResult {
  const { least, most } = boundsOf(wanted);
  if (value >= least && value <= most) return { value };
  const range = `${wanted.least} to ${wanted.most} makes sense, such as ${like(wanted)}`;
  const size = value < 0 && least >= 0 ? "negative" : `too ${direction(value < least, wanted)} for ${wanted.words}`;
  return fault("out of range", `${shown(text)} is ${size}; ${range}`);
}

function direction(under: boolean, wanted: Kind): string {
  if (wanted.measure === "a temperature" || wanted.words === "an altitude") return under ? "low" : "high";
  return under ? "small" : "large";
}

const bounds = new Map<Kind, { readonly least: number; readonly most: number }>();

/** A kind's range in SI, worked out on first use. */
function boundsOf(kind: Kind): { readonly least: number; readonly most: number } {
  let found = bounds.get(kind);
  if (found === undefined) {
    const [least, most] = [inSi(kind.least, kind), inSi(kind.most, kind)];
    // A bound typed in another unit may land a rounding outside: "1000 um" is 1 mm.
    found = { least: least - Math.abs(least) * 1e-12, most: most + Math.abs(most) * 1e-12 };
    bounds.set(kind, found);
  }
  return found;
}

function inSi(text: string, kind: Kind): number {
  const split = splitQuantity(text);
  return toSi(split?.value ?? Number.NaN, readUnit(split?.unit ?? "") as ParsedUnit, kind.si);
}

/** The unit a kind is usually written in, from its example. */
function unitOf(kind: Kind): string {
  return kind.example.slice(kind.example.indexOf(" ") + 1);
}

function like(kind: Kind): string {
  return `"${kind.example}"`;
}

function fault(code: QuantityFault["code"], message: string): QuantityResult {
  return { fault: { code, message } };
}
