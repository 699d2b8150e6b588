import type { Band } from "@thirstline/core";
import { figure, quantity } from "./quantity.js";
import type { QuantityKind, UnitSystem } from "./units.js";

/** A spread of less than this share of a figure is finer than anything in a system file is known. */
const FINE = 0.01;

/**
 * A figure with what is known of it: "2.9 kPa", or where its ends differ as shown, by more than 1 %, "2.1 to 4.0 kPa,
 * likely 2.9".
 *
 * @param band SI
 */
export function bandText(band: Band, kind: QuantityKind, system: UnitSystem): string {
  if (!isShownSpread(band, kind, system)) return quantity(band.middle, kind, system);
  const shown = (value: number) => figure(value, kind, system);
  return `${shown(band.low)} to ${quantity(band.high, kind, system)}, likely ${shown(band.middle)}`;
}

/** The same without the unit and the likely figure, for a table: "2.9" or "2.1 to 4.0". */
export function bandFigure(band: Band, kind: QuantityKind, system: UnitSystem): string {
  const shown = (value: number) => figure(value, kind, system);
  return isShownSpread(band, kind, system) ? `${shown(band.low)} to ${shown(band.high)}` : shown(band.middle);
}

function isShownSpread({ low, middle, high }: Band, kind: QuantityKind, system: UnitSystem): boolean {
  return high - low >= FINE * Math.abs(middle) && figure(low, kind, system) !== figure(high, kind, system);
}
