import type { Band } from "@thirstline/core";
import { figure } from "./quantity.js";
import type { QuantityKind, UnitSystem } from "./units.js";

/** A spread of less than this share of a figure is finer than anything in a system file is known. */
const FINE = 0.01;

/** Whether what is known of a figure shows: its ends differ as shown, and by more than is ever known. */
export function isShownSpread({ low, middle, high }: Band, kind: QuantityKind, system: UnitSystem): boolean {
  return high - low >= FINE * Math.abs(middle) && figure(low, kind, system) !== figure(high, kind, system);
}
