import { type CheckAnswer, type CheckPoint, quantity, type UnitSystem } from "@thirstline/study";
import type { Paint, Tone } from "../io/paint.js";
import { cut, WIDTH, widthOf } from "./wrap.js";

/** Tone of a verdict. */
const verdictTone: Readonly<Record<CheckPoint["verdict"], Tone>> = {
  holds: "good",
  tight: "care",
  starves: "bad",
  "cannot say": "care",
};

/** The machine's name with its verdict at the far end, over a rule. */
export function heading(answer: CheckAnswer, units: UnitSystem, paint: Paint): string[] {
  return headingOf(answer.system, verdictWord(answer, units), verdictTone[answer.verdict], paint);
}

/** A name with a word at the far end, over a rule. */
export function headingOf(system: string, word: string, tone: Tone, paint: Paint): string[] {
  const name = cut(system, WIDTH - widthOf(word) - 2);
  const gap = " ".repeat(WIDTH - widthOf(name) - widthOf(word));
  return [`${paint("strong", name)}${gap}${paint(tone, word)}`, rule(paint)];
}

/** A line across the page. */
export function rule(paint: Paint): string {
  return paint("quiet", "─".repeat(WIDTH));
}

/** The worst verdict; where it is not everywhere, the temperature it is found at. */
function verdictWord({ verdict, points }: CheckAnswer, units: UnitSystem): string {
  const found = points.filter((point) => point.verdict === verdict);
  const [only] = found;
  const word = verdict.toUpperCase();
  if (only === undefined || found.length !== 1 || points.length === 1) return word;
  return `${word} at ${quantity(only.temperature, "temperature", units)}`;
}
