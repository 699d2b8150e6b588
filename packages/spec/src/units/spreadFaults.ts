import { shown } from "../shown.js";
import type { Kind } from "./kinds.js";
import { fault, type QuantityFault, unitOf } from "./quantityFault.js";
import { inRange, rangeOf } from "./range.js";
import { splitQuantity } from "./splitQuantity.js";
import type { Between, SplitSpread } from "./splitSpread.js";
import { tidyUnit } from "./tidyUnit.js";

type Found = { readonly fault: QuantityFault } | undefined;

/** Faults two numbers with a dash between, which may be a spread or a slip: it is written with "to". */
export function dashFault(text: string): Found {
  if (!/\d\s?[-\u2013\u2212]/.test(text)) return undefined;
  const [, first, second = ""] = /^(\d[\d.]*) ?- ?(\d.*)$/.exec(tidyUnit(text)) ?? [];
  if (first === undefined || splitQuantity(text) !== undefined || splitQuantity(second) === undefined) return undefined;
  return fault("not a spread", `${shown(text)} may be a spread; write it as "${first} to ${second}"`);
}

/** Faults a spread that its words alone show to be none. */
export function formFault(text: string, split: SplitSpread, wanted: Kind): Found {
  const [left, right] = split.form === "between" ? [split.low, split.high] : [split.centre, split.by];
  const percent = right.unit === "%";
  if (left.unit === "" || right.unit === "") {
    const unit = left.unit || (percent ? "" : right.unit) || unitOf(wanted);
    const pair = percent ? `${left.digits} ${unit} ± ${right.digits} %` : together(split, unit);
    return fault("no unit", `${shown(text)} lacks a unit; write it as "${pair}"`);
  }
  if (!percent) return undefined;
  if (wanted.si === "K") {
    const right = 'write the spread in degrees, such as "15 degC ± 5 K"';
    return fault("not a spread", `${shown(text)}: per cent of a temperature depends on its scale; ${right}`);
  }
  if (right.value < 100) return undefined;
  const ends = `${left.value / 2} ${left.unit} to ${left.value * 2} ${left.unit}`;
  return fault("not a spread", `${shown(text)} reaches down to zero; write less than 100 %, or both ends: "${ends}"`);
}

/** Faults ends that are no ends, or that make no sense for the kind. */
export function endFault(
  text: string,
  split: SplitSpread,
  { low, high }: { readonly low: number; readonly high: number },
  wanted: Kind,
): Found {
  if (low === high) {
    const { digits, unit } = split.form === "between" ? split.low : split.centre;
    return fault("not a spread", `${shown(text)} has no width; write one figure: "${digits} ${unit}"`);
  }
  if (low > high && split.form === "between") {
    const turned = turnedRound(split);
    return fault("not a spread", `${shown(text)} runs backwards; write it as "${turned}"`);
  }
  if (low < 0 && rangeOf(wanted).least >= 0 && high > 0) {
    return fault("not a spread", `${shown(text)} crosses zero, and ${wanted.words} is never negative; write both ends`);
  }
  for (const end of [low, high]) {
    const found = inRange(text, end, wanted);
    if ("fault" in found) return found;
  }
  return undefined;
}

function together(split: SplitSpread, unit: string): string {
  if (split.form === "between") return `${split.low.digits} to ${split.high.digits} ${unit}`;
  return `${split.centre.digits} ± ${split.by.digits} ${unit}`;
}

function turnedRound({ low, high }: Between): string {
  if (low.unit === high.unit) return `${high.digits} to ${low.digits} ${low.unit}`;
  return `${high.digits} ${high.unit} to ${low.digits} ${low.unit}`;
}
