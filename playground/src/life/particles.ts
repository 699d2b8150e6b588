import { type LifeAnswer, parseCode, scaleLimits } from "@thirstline/study";
import type { Columns } from "../chart/Columns.js";
import type { Reading } from "../chart/Reading.js";

/** The three sizes that are counted, um(c) and up. */
const sizes = ["4", "6", "14"] as const;

/** Particles of one size and up on the fuel's way. */
export interface SizeLine {
  readonly size: (typeof sizes)[number];
  /** per mL, at each place in order */
  readonly counts: readonly number[];
  /** the most that the injection pump asks for; null where nothing is asked of that size */
  readonly asked: number | null;
}

/** The counts of a life's fuel, size by size, from the smallest. */
export function sizeLines({ cleanliness, protection }: LifeAnswer): SizeLine[] {
  const code = protection === null ? null : parseCode(protection.code);
  return sizes.map((size, at) => {
    const scale = code?.[`at${size}`].scale;
    return {
      size,
      counts: cleanliness.map(({ counts }) => counts[at as 0 | 1 | 2]),
      asked: typeof scale === "number" ? (scaleLimits[scale] ?? null) : null,
    };
  });
}

/** Two digits: counters are not better than that. */
export function countText(count: number): string {
  if (count < 0.0095) return "0";
  return count >= 9.95 ? String(Number(count.toPrecision(2))) : count.toFixed(count < 0.95 ? 2 : 1);
}

/** What is read at one place; `shown` makes a figure live. */
export function particleReadings(
  answer: LifeAnswer,
  at: number,
  shown: (text: string, figure: string) => Reading["value"] = (text) => text,
): Reading[] {
  const place = answer.cleanliness[at];
  if (place === undefined) return [];
  const counted = sizes.map((size, line) => ({
    look: null,
    label: `${size} µm(c) and up`,
    value: shown(`${countText(place.counts[line as 0 | 1 | 2])} per mL`, `particles from ${size} µm ${place.place}`),
  }));
  return [{ look: null, label: "code, ISO 4406", value: place.code }, ...counted];
}

/** The figures of the picture. */
export function particleColumns({ cleanliness, protection }: LifeAnswer): Columns {
  const head = ["place", "code (ISO 4406)", "solids (mg/L)", ...sizes.map((size) => `${size} µm(c) and up (per mL)`)];
  const rows = cleanliness.map(({ place, code, solids, counts }) => [place, code, solids * 1000, ...counts]);
  const asked = protection === null ? [] : [["asked for", protection.code, null, null, null, null]];
  return { head, rows: [...rows, ...asked] };
}
