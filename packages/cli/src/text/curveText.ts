import { type CurveAnswer, type CurvePoint, curveSentence, dueWords, plain, type UnitSystem } from "@thirstline/study";
import type { Answered } from "../commands/Answered.js";
import type { Paint } from "../io/paint.js";
import { cautionLines } from "./cautionLines.js";
import { curveChart } from "./curveChart.js";
import { rule } from "./heading.js";
import { cut, WIDTH, wrap } from "./wrap.js";

/** How an answer is shown; the chart is as wide as the terminal, within reason. */
export interface Look {
  readonly units: UnitSystem;
  readonly paint: Paint;
  readonly width: number;
}

/** An answer to `curve` as lines for people: for each temperature a sentence and a chart, then the cautions. */
export function curveText({ answer, fileCautions }: Answered<CurveAnswer>, look: Look): string[] {
  const { units, paint } = look;
  const { system, points } = answer;
  const blocks = points.flatMap((point) => pointBlocks(answer, point, look));
  const due = wrap(dueWords(answer, units) ?? "");
  const cautions = cautionLines(fileCautions, points, units);
  const lines = [...blocks, due, cautions].filter((block) => block.length > 0).flatMap((block) => ["", ...block]);
  return [paint("strong", cut(system, WIDTH)), rule(paint), ...lines.slice(1)];
}

function pointBlocks(answer: CurveAnswer, point: CurvePoint, look: Look): string[][] {
  const sentence = wrap(plain(curveSentence(answer, point, look.units)));
  return [sentence, ...(point.clean === null ? [] : [curveChart(answer, point, look)])];
}
