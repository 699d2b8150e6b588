import {
  type LifeAnswer,
  type LifeSpread,
  type Measures,
  quantity,
  spreadTime,
  type UnitSystem,
} from "@thirstline/study";
import type { Entry } from "./entries.js";

/** When the first limit is met and when to change, in every measure people go by. */
export function lifeEntries(answer: LifeAnswer, units: UnitSystem): Entry[] {
  const { end, change, range, spread } = answer;
  if (end?.time === 0) return [];
  const hours = (time: number) => quantity(time, "running time", units);
  const likely = end ? [{ name: "First limit met", value: hours(end.time), note: measureWords(end, units) }] : [];
  const estimates =
    range && (range.early !== null || range.late !== null)
      ? [
          {
            name: "As far as estimated",
            value: "",
            note: `${between(range, answer, units)}, the ends of what is only estimated`,
          },
        ]
      : [];
  const drawn =
    spread && spread.draws > 0 ? [{ name: "8 draws of 10", value: "", note: drawnWords(spread, answer, units) }] : [];
  const due = change ? [{ name: "Change at", value: hours(change.time), note: measureWords(change, units) }] : [];
  return [...likely, ...estimates, ...drawn, ...due];
}

function drawnWords({ low, middle, high }: LifeSpread, answer: LifeAnswer, units: UnitSystem): string {
  if (low === Infinity) return "meet no limit within ten years of duty";
  const half =
    middle === Infinity ? "half of all meet none" : `half of all before ${spreadTime(middle, answer, units)}`;
  return `meet it ${between({ early: low, late: high }, answer, units)}, ${half}`;
}

function between(
  { early, late }: { readonly early: number | null; readonly late: number | null },
  answer: LifeAnswer,
  units: UnitSystem,
): string {
  const shown = (time: number | null) => spreadTime(time ?? Infinity, answer, units);
  if (late === null || late === Infinity) return `after ${shown(early)} or beyond ten years of duty`;
  return `between ${shown(early)} and ${shown(late)}`;
}

function measureWords({ burnt, distance, years, date, hourMeter, distanceMeter }: Measures, units: UnitSystem): string {
  const shown = [
    `${quantity(burnt, "volume", units)} burnt`,
    ...(distance === null ? [] : [quantity(distance, "distance", units)]),
    date ?? `${years < 9.95 ? years.toFixed(years < 0.995 ? 2 : 1) : years.toFixed(0)} years of duty`,
    ...(hourMeter === null ? [] : [`hour meter ${quantity(hourMeter, "running time", units)}`]),
    ...(distanceMeter === null ? [] : [`distance meter ${quantity(distanceMeter, "distance", units)}`]),
  ];
  return shown.join(", ");
}
