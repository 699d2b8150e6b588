import { shown } from "../shown.js";
import type { Kind } from "./kinds.js";
import { measureOf } from "./measures.js";
import { fault, like, type QuantityFault, unitOf } from "./quantityFault.js";
import type { SplitQuantity } from "./splitQuantity.js";
import { readUnit } from "./unitExpression.js";
import { type ParsedUnit, parseUnit } from "./unitParser.js";

/**
 * The unit of a quantity taken apart, once it is known and measures what is wanted.
 *
 * @param text the whole text, as a fault quotes it
 */
export function checkedUnit(
  split: SplitQuantity,
  text: string,
  wanted: Kind,
): { readonly unit: ParsedUnit } | { readonly fault: QuantityFault } {
  if (split.unit === "") {
    return fault("no unit", `${shown(text)} has no unit; write it as "${split.digits} ${unitOf(wanted)}"`);
  }
  const unit = readUnit(split.unit);
  if ("unknown" in unit) {
    const hint = unit.meant === undefined ? `write ${wanted.words} such as ${like(wanted)}` : `write "${unit.meant}"`;
    return fault("unknown unit", `${shown(text)}: "${unit.unknown}" is not a unit known here; ${hint}`);
  }
  if (!unit.equalBase(parseUnit(wanted.si))) {
    const found = measureOf(unit);
    return fault("wrong measure", `${shown(text)} is ${found}; ${wanted.measure} is wanted, such as ${like(wanted)}`);
  }
  return { unit };
}
