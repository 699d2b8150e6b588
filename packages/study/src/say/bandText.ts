import type { Band } from "@thirstline/core";
import { isShownSpread } from "./isShownSpread.js";
import { figure, quantity } from "./quantity.js";
import type { QuantityKind, UnitSystem } from "./units.js";

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
