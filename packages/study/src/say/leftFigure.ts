import type { HoursLeft } from "../gauge/GaugeAnswer.js";
import { figOf } from "./figOf.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import type { Figure } from "./words.js";

/** Running time left, at one end of it; `of` is with all readings, or without those that stand off. */
export function leftFigure(
  left: HoursLeft,
  end: "low" | "middle" | "high",
  units: UnitSystem,
  of: "left" | "left without" = "left",
): Figure {
  const name = end === "middle" ? "running time left" : `running time left, ${end} end`;
  return figOf(of, name, quantity(left[end], "running time", units));
}
