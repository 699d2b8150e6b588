import type { CheckAnswer, CheckPoint } from "../check/CheckAnswer.js";
import type { CheckSpread, Quantiles } from "../spread/checkSpread.js";
import { bandFigure } from "./bandText.js";
import { chanceText } from "./lifeWords.js";
import { quantity } from "./quantity.js";
import { sideWords } from "./sideWords.js";
import { type QuantityKind, type UnitSystem, unitOf } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** What the file's spreads make of one temperature's answer, in words. */
export function checkSpreadWords(
  { pump, points }: CheckAnswer,
  { temperature }: CheckPoint,
  { vacuum, feedPressure, inHand, broken, draws }: CheckSpread,
  units: UnitSystem,
): Words {
  const shown = (name: string, band: Quantiles, kind: QuantityKind) =>
    fig(name, `${bandFigure(band, kind, units)} ${unitOf(kind, units).symbol}`);
  // A single temperature may itself be drawn, and is said above.
  const at = points.length > 1 ? say` at ${fig("temperature", quantity(temperature, "temperature", units))}` : [];
  const gauge =
    pump === "none"
      ? feedPressure === null
        ? say`no known pressure at the engine`
        : say`${shown("feed pressure", feedPressure, "pressure")} ${sideWords(pump).feed}`
      : say`${shown("vacuum", vacuum, "vacuum")} of vacuum ${sideWords(pump).inlet}`;
  const chance =
    broken === null ? [] : say` Chance that a limit is broken: ${fig("chance", chanceText(broken, draws))}.`;
  return say`With the file's spreads 8 draws of 10${at} give ${gauge} and ${shown("in hand", inHand, "ratio")} in hand (${String(draws)} draws).${chance}`;
}
