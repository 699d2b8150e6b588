import type { WaterAnswer, WaterRow } from "../life/WaterAnswer.js";
import { namesWords } from "./namesWords.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** How much of the water is free in the coldest season, and what becomes of it; one sentence for each stage after that. */
export function waterWords(water: WaterAnswer, units: UnitSystem): Words[] {
  const { season, temperature, total, dissolved, free, carriedOn, stages } = water;
  const solids = (value: number) => quantity(value, "solids", units);
  const at = say`At ${fig("coldest season", quantity(temperature, "temperature", units))} (${season}), the coldest of the duty,`;
  const split =
    dissolved === null
      ? say`${at} nobody knows how much of the ${solids(total)} of water this fuel dissolves; all is taken as free.`
      : free === 0
        ? say`${at} all of the ${solids(total)} of water stays dissolved, and nothing is there to drain.`
        : say`${at} the fuel dissolves ${fig("dissolved", solids(dissolved))} of its ${solids(total)} of water, and ${fig("free", solids(free))} is free.`;
  if (free === 0) return [split];
  const on =
    stages.length === 0
      ? say`No stage is stated to take it out: it goes to the engine.`
      : say`${fig("carried on", solids(carriedOn))} of free water reaches the engine.`;
  const firsts = stages.filter((row, place) => !stages.slice(0, place).some((before) => isAlike(before, row)));
  const names = (row: WaterRow) => stages.filter((other) => isAlike(row, other)).map(({ element }) => element);
  return [say`${split} ${on}`, ...firsts.map((row) => stageWords(row, names(row), units))];
}

/** Elements that do the same are spoken of together. */
function isAlike(a: WaterRow, b: WaterRow): boolean {
  const near = (x: number | null, y: number | null) =>
    x === null || y === null ? x === y : Math.abs(x - y) <= 1e-6 * y;
  const keep = near(a.rate, b.rate) && near(a.efficiency, b.efficiency);
  return a.kind === b.kind && keep && near(a.drainEvery, b.drainEvery) && near(a.shutAfter, b.shutAfter);
}

function stageWords(
  { kind, efficiency, rate, drainEvery, shutAfter }: WaterRow,
  names: readonly string[],
  units: UnitSystem,
): Words {
  const several = names.length > 1;
  // Elements that are spoken of together do the same, so the first stands for all.
  const [first = ""] = names;
  const share = fig(`share of free water kept by ${first}`, quantity(efficiency, "ratio", "metric"));
  const hours = (time: number) => quantity(time, "running time", units);
  const hourly = quantity(rate * 3600, "soil", units);
  const [keep, it, its, swell] = several
    ? ["each keep", "them", "their bowls", "swell"]
    : ["keeps", "it", "its bowl", "swells"];
  const keeps = say`${namesWords(names)} ${keep} ${share} of what comes to ${it}, ${hourly} an hour`;
  if (kind === "absorber") {
    return shutAfter === null
      ? say`${keeps}, and ${swell}.`
      : say`${keeps}, and ${swell} shut after ${fig(`shutting of ${first} by water`, hours(shutAfter))}.`;
  }
  return drainEvery === null
    ? say`${keeps}; the size of ${its} is not stated.`
    : say`${keeps}: drain ${its} every ${fig(`draining of ${first}`, hours(drainEvery))} at the latest.`;
}
