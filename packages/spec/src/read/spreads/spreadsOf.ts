import type { System, SystemSpread } from "../../system/index.js";
import { bounds } from "../bounds.js";
import type { Parsed } from "../parse.js";
import { pathText } from "../placing.js";
import type { RawFault } from "../RawFault.js";
import { type Corner, cornersOf, digitsOf, readCorner } from "./Corner.js";
import { type Figure, figuresOf } from "./figuresOf.js";
import { type WrittenSpread, writtenSpreads } from "./writtenSpreads.js";

type Figures = ReadonlyMap<string, Figure>;

/**
 * The spreads of a faultless file, on the system's own figures: the file is read again with its spreads at their ends, and
 * the figures that move tell whose they are, whatever was reckoned on the way. A file that could not be read with its
 * spreads at their ends is at fault, so that draws can be built; `cornersOf` says which ends meet.
 */
export function spreadsOf(
  parsed: Parsed,
  system: System,
): { readonly spreads: readonly SystemSpread[] } | { readonly faults: readonly RawFault[] } {
  const written = writtenSpreads(parsed);
  if (written.length === 0) return { spreads: [] };
  if (written.length > bounds.spreads) {
    const message = `${written.length} figures with a spread; at most ${bounds.spreads} are taken`;
    return { faults: [{ code: "too many spreads", path: [], message }] };
  }
  const readings = cornersOf(written.length).map((corner) => readCorner(parsed.data, written, corner));
  const faults = readings.flatMap((reading) => ("faults" in reading ? reading.faults : []));
  if (faults.length > 0) return { faults: onceAPlace(faults) };
  const corners = readings.map((reading) => figuresOf("system" in reading ? reading.system : null));
  const moved: Moved[] = [];
  for (const [key, figure] of figuresOf(system)) {
    const values = corners.map((figures) => figures.get(key)?.value);
    if (values.every((value) => value === figure.value)) continue;
    const by = moverOf(values, digitsOf(written.length));
    if (by === undefined) return { faults: [unclear(key, parsed, written)] };
    moved.push({ figure, by, low: values[0] ?? Number.NaN, high: values[1] ?? Number.NaN });
  }
  return { spreads: moved.map((one) => grouped(one, moved)) };
}

/** Faults at the ends of spreads, the first of each place: the same one comes in several corners with other figures. */
function onceAPlace(faults: readonly RawFault[]): RawFault[] {
  const firsts = new Map<string, RawFault>();
  for (const fault of faults) {
    const place = pathText(fault.path);
    if (!firsts.has(place)) firsts.set(place, { ...fault, message: `${fault.message} (at an end of a spread)` });
  }
  return [...firsts.values()];
}

/** A figure that moves, and the place of the written spread that moves it. */
interface Moved {
  readonly figure: Figure;
  readonly by: number;
  readonly low: number;
  readonly high: number;
}

/** The only spread that moves a figure, from its values in the corners; undefined when several do, or when it comes and goes. */
function moverOf(values: readonly (number | undefined)[], digits: number): number | undefined {
  const [low, high, ...rest] = values;
  if (low === undefined || high === undefined || low === high) return undefined;
  let mover = 0;
  for (let digit = 0; digit < digits; digit++) {
    const [set, clear] = [rest[2 * digit], rest[2 * digit + 1]];
    if (set === high && clear === low) mover += 2 ** digit;
    else if (!(set === low && clear === high)) return undefined;
  }
  return mover;
}

function grouped({ figure, by, low, high }: Moved, all: readonly Moved[]): SystemSpread {
  const alike = all.filter((other) => other.by === by);
  const spread = { path: figure.path, low, high };
  return alike.length === 1 ? spread : { ...spread, group: all.findIndex((other) => other.by === by) };
}

/** The fault of a figure that more than one spread moves, or that one moves out of being; found one spread at a time. */
function unclear(key: string, parsed: Parsed, written: readonly WrittenSpread[]): RawFault {
  const figuresAt = (corner: Corner): Figures => {
    const reading = readCorner(parsed.data, written, corner);
    return figuresOf("system" in reading ? reading.system : null);
  };
  const rest = figuresAt(() => false).get(key)?.value;
  const movers = written.filter((_, place) => figuresAt((spread) => spread === place).get(key)?.value !== rest);
  const [first, second] = movers.map(({ paths }) => paths[0] ?? []);
  if (first === undefined || second === undefined) {
    const message = "its ends do not mean the same, as zero means there is none; keep both ends above zero";
    return { code: "ends differ", path: first ?? [], message };
  }
  const message = `this spread and that of ${pathText(first)} meet in one figure; keep it on one of the two`;
  return { code: "spreads meet", path: second, message };
}
