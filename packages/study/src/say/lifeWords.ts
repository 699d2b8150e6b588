import type { ChangeRule, LifeAnswer } from "../life/LifeAnswer.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** Rules by which a change is due, as a clause names them. */
export const ruleWords: Readonly<Record<ChangeRule["by"], string>> = {
  "manual's interval": "the manual's usual interval",
  "manual's longest interval": "the longest the manual allows",
  distance: "the manual's distance",
  calendar: "the manual's calendar time",
  restriction: "restriction",
};

/** When to change and by which rule; null where nothing says. */
export function changeWords(answer: LifeAnswer, units: UnitSystem): Words | null {
  const { change, interval, end } = answer;
  if (!change) return null;
  if (change.time === 0) return null;
  const when = fig("change", quantity(change.time, "running time", units));
  const first = say`Change at ${when}: of interval, distance, calendar and restriction, whichever comes first, it is ${ruleWords[change.by]}.`;
  if (!interval) return say`${first} The manual's interval is not in the file, and it decides.`;
  const most = fig("at most", quantity(interval.atMost, "running time", units));
  const source = interval.source === null ? "" : ` (${interval.source})`;
  if (change.by === "restriction") {
    return say`${first} Do not wait for ${most}${source}: the engine would starve before.`;
  }
  if (end === null || end.time >= interval.atMost) {
    return say`${first} Never go past ${most}, the longest the manual allows${source}, however clean the elements still are.`;
  }
  return say`${first} The longest the manual allows, ${most}${source}, is more than these elements last.`;
}

/** The spread of a life in words; null without draws. */
export function spreadWords(answer: LifeAnswer, units: UnitSystem): Words | null {
  const { spread, interval } = answer;
  if (!spread || spread.draws === 0) return null;
  const draws = `${spread.draws} draws of what is uncertain`;
  const chance = (one: { readonly chance: number; readonly chanceError: number }) =>
    fig("chance", chanceText(one, spread.draws));
  if (!interval) return say`From ${draws}.`;
  const usual = say`Chance of starving before ${quantity(interval.time, "running time", units)}: ${chance(spread)}`;
  if (!spread.atMost) return say`${usual} (${draws}).`;
  return say`${usual}; before the ${quantity(interval.atMost, "running time", units)} allowed at most: ${chance(spread.atMost)} (${draws}).`;
}

/** A chance with its standard error, in percent; of none or all it says that no draw did otherwise. */
export function chanceText(
  { chance, chanceError }: { readonly chance: number; readonly chanceError: number },
  draws: number,
): string {
  if (chance === 0) return `under ${least(draws)} %, no draw`;
  if (chance === 1) return `over ${100 - least(draws)} %, every draw`;
  const percent = (share: number) => (100 * share).toFixed(share < 0.1 ? 1 : 0);
  return `${percent(chance)} %, give or take ${percent(chanceError)} %`;
}

/** A chance without how well it is known, as a table has it. */
export function chanceShort(spread: {
  readonly chance: number;
  readonly chanceError: number;
  readonly draws: number;
}): string {
  return chanceText(spread, spread.draws).split(",")[0] ?? "";
}

/** What one draw more or less would be, in percent. */
function least(draws: number): number {
  return Number((100 / Math.max(1, draws)).toPrecision(1));
}

/** A running time of a spread; beyond the horizon it is only known to be longer. */
export function spreadTime(time: number, answer: LifeAnswer, units: UnitSystem): string {
  return Number.isFinite(time)
    ? quantity(time, "running time", units)
    : `over ${quantity(answer.horizon, "running time", units)}`;
}
