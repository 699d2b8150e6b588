import type { CurveAnswer } from "../curve/CurveAnswer.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";

/** What "due for change" means in a curve, as a sentence; null when no terminal drop is stated. */
export function dueWords({ atChange }: CurveAnswer, units: UnitSystem): string | null {
  if (atChange === null) return null;
  const at = quantity(atChange.temperature, "temperature", units);
  return `Due for change: ${atChange.parts.join(", ")}, soiled until the stated terminal drop shows at ${at}.`;
}
