import { fileBlock } from "../../schema/file.js";
import { toSystem } from "../../schema/toSystem.js";
import type { System } from "../../system/index.js";
import { buildFaults } from "../buildFaults.js";
import type { Path, RawFault } from "../RawFault.js";
import { schemaFaults } from "../schemaFaults.js";
import type { WrittenSpread } from "./writtenSpreads.js";

/** Which of a file's spreads stand at their high end, by their place among them; the others stand at the low one. */
export type Corner = (spread: number) => boolean;

/** Up to so many spreads stand at their ends in every way; of more, every two of them do. */
const IN_EVERY_WAY = 4;

/**
 * Corners that tell `count` spreads apart: all low, all high, then two for each binary digit of the spreads' places: those
 * whose digit is 1 stand high, and after that those whose digit is 0. Every two spreads meet in all four ways there.
 */
export function cornersOf(count: number): Corner[] {
  const digits = Array.from({ length: digitsOf(count) }, (_, digit) => digit);
  const telling: Corner[] = [
    () => false,
    () => true,
    ...digits.flatMap((digit): Corner[] => [(spread) => isSet(spread, digit), (spread) => !isSet(spread, digit)]),
  ];
  if (count > IN_EVERY_WAY) return telling;
  const all = Array.from(
    { length: 2 ** count },
    (_, high): Corner =>
      (spread) =>
        isSet(high, spread),
  );
  const told = new Set(telling.map((corner) => shape(corner, count)));
  return [...telling, ...all.filter((corner) => !told.has(shape(corner, count)))];
}

/** Binary digits of the places of so many spreads. */
export function digitsOf(count: number): number {
  return Math.ceil(Math.log2(count));
}

function isSet(number: number, digit: number): boolean {
  return ((number >> digit) & 1) === 1;
}

function shape(corner: Corner, count: number): string {
  return Array.from({ length: count }, (_, spread) => corner(spread)).join();
}

/** Reads a file's data with its spreads in a corner; it must be as faultless there as in the middle. */
export function readCorner(
  data: unknown,
  written: readonly WrittenSpread[],
  corner: Corner,
): { readonly system: System } | { readonly faults: readonly RawFault[] } {
  const cornered = written.reduce(
    (all, { paths, low, high }, place) => paths.reduce((one, path) => put(one, path, corner(place) ? high : low), all),
    data,
  );
  const checked = fileBlock.safeParse(cornered);
  if (!checked.success) return { faults: schemaFaults(checked.error.issues) };
  const system = toSystem(checked.data);
  const faults = buildFaults(system);
  return faults.length > 0 ? { faults } : { system };
}

function put(data: unknown, path: Path, value: string): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  const copy = (Array.isArray(data) ? [...data] : { ...(data as object) }) as Record<string | number, unknown>;
  copy[step] = put(copy[step], rest, value);
  return copy;
}
