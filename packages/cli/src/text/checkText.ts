import {
  type CheckAnswer,
  type CheckPoint,
  type CheckSpread,
  checkSpreadWords,
  plain,
  quantity,
  type UnitSystem,
  verdictSentence,
} from "@thirstline/study";
import type { Spread } from "../commands/Answered.js";
import type { Paint } from "../io/paint.js";
import { cautionLines } from "./cautionLines.js";
import { entryLines } from "./entries.js";
import { figureEntries } from "./figures.js";
import { heading } from "./heading.js";
import { pathTables } from "./pathTable.js";
import { separated } from "./separated.js";
import { SIDE_BY_SIDE, severalPaths } from "./severalPaths.js";
import { temperatureTable } from "./temperatureTable.js";
import { wrap } from "./wrap.js";

/** An answer to `check` as lines for people: the verdict in words first, then the figures, the path and the cautions. */
export function checkText(
  { answer, fileCautions, spreads = [] }: Spread<CheckAnswer, CheckSpread>,
  units: UnitSystem,
  paint: Paint,
): string[] {
  const { points } = answer;
  const blocks = points.length === 1 ? oneTemperature(answer, units, paint) : severalTemperatures(answer, units, paint);
  const drawn = spreads.flatMap((spread, at) => {
    const point = points[at];
    return point === undefined ? [] : wrap(plain(checkSpreadWords(answer, point, spread, units)));
  });
  const cautions = cautionLines(fileCautions, points, units);
  return [...heading(answer, units, paint), ...separated([...blocks, drawn, cautions])];
}

function oneTemperature(answer: CheckAnswer, units: UnitSystem, paint: Paint): string[][] {
  return answer.points.flatMap((point) => [
    sentence(answer, point, units),
    entryLines(figureEntries(answer, point, units)),
    ...parts(answer, point, units, paint),
  ]);
}

/** A table first, since several sentences are not read at a glance; then what every part costs at each temperature. */
function severalTemperatures(answer: CheckAnswer, units: UnitSystem, paint: Paint): string[][] {
  const { points } = answer;
  const before = [temperatureTable(answer, units, paint), ...points.map((point) => sentence(answer, point, units))];
  if (points.some(isShut)) return before;
  if (points.length <= SIDE_BY_SIDE) {
    return [...before, ["What each part costs, with clean elements:"], ...severalPaths(answer, units, paint)];
  }
  const least = points.reduce((worst, point) => (point.inHand.low < worst.inHand.low ? point : worst));
  return [...before, ...parts(answer, least, units, paint)];
}

function parts(answer: CheckAnswer, point: CheckPoint, units: UnitSystem, paint: Paint): string[][] {
  if (isShut(point)) return [];
  const { temperature, demand } = point;
  const at = `${quantity(temperature, "temperature", units)} and ${quantity(demand.total, "flow", units)}`;
  return [[`What each part costs at ${at}, with clean elements:`], ...pathTables(answer, point, units, paint)];
}

/** Where nothing can pass, no part costs anything worth showing. */
function isShut({ reasons }: CheckPoint): boolean {
  return reasons.some(({ code }) => code === "shut");
}

function sentence(answer: CheckAnswer, point: CheckPoint, units: UnitSystem): string[] {
  return wrap(plain(verdictSentence(answer, point, units)));
}
