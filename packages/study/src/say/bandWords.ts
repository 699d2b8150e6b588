import type { Band } from "@thirstline/core";
import { figOf } from "./figOf.js";
import { isShownSpread } from "./isShownSpread.js";
import { figure } from "./quantity.js";
import type { QuantityKind, UnitSystem } from "./units.js";
import { say, type Words } from "./words.js";

/**
 * What `bandFigure` says with its figures live: each end has its own name, or the one figure that both read alike.
 *
 * @param of which of the systems compared it belongs to
 */
export function bandWords(
  band: Band,
  kind: QuantityKind,
  system: UnitSystem,
  { of, figure: name }: { readonly of: string; readonly figure: string },
): Words {
  const shown = (value: number) => figure(value, kind, system);
  if (!isShownSpread(band, kind, system)) return [figOf(of, name, shown(band.middle))];
  const [low, high] = [shown(band.low), shown(band.high)];
  return say`${figOf(of, `${name}, low end`, low)} to ${figOf(of, `${name}, high end`, high)}`;
}
