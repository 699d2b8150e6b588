import {
  type Band,
  bandText,
  type CheckAnswer,
  type CheckPoint,
  quantity,
  sideWords,
  type UnitSystem,
} from "@thirstline/study";
import type { Entry } from "./entries.js";
import { strip } from "./scale.js";

/** Width of the strip, in characters. */
const STRIP = 41;

/** The vacuum with its limits, and what is left of it for soil. */
export function vacuumEntries({ pump }: CheckAnswer, point: CheckPoint, units: UnitSystem): Entry[] {
  // With no pump the pressure at the engine says it; a vacuum there would be the same with its sign turned.
  if (pump === "none") return [];
  const { vacuum, vacuumNow, vacuumLimits, riseFree } = point;
  const shown = (band: Band) => bandText(band, "vacuum", units);
  const drawn = strip({ vacuum: vacuumNow ?? vacuum, limits: vacuumLimits }, STRIP);
  const against = { note: limitsNote(point, units), ...(drawn === null ? {} : { strip: drawn }) };
  const gauges: Entry[] =
    vacuumNow === null
      ? [{ name: `Vacuum ${sideWords(pump).inlet}`, value: shown(vacuum), ...against }]
      : [
          { name: "Vacuum, clean", value: shown(vacuum), note: "" },
          { name: "Vacuum, now", value: shown(vacuumNow), ...against },
        ];
  if (riseFree === null) return gauges;
  return [...gauges, { name: "Free for soil", value: shown(riseFree), note: freeNote(riseFree) }];
}

function freeNote({ low, high }: Band): string {
  if (high < 0) return "clean elements are over the limit at change";
  if (low < 0) return "at the bad end clean elements are over the limit at change";
  return "from clean elements to the limit at change";
}

function limitsNote({ vacuumLimits: { clean, atChange } }: CheckPoint, units: UnitSystem): string {
  const shown = (value: number) => quantity(value, "vacuum", units);
  if (clean === null && atChange === null) return "no limit given";
  if (clean === null) return `┃ ${shown(atChange ?? 0)} at change`;
  if (atChange === null || clean === atChange) return `┃ ${shown(clean)} at most`;
  return `┆ ${shown(clean)} clean, ┃ ${shown(atChange)} at change`;
}
