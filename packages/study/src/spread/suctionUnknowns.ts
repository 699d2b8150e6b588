import type { System, SystemSpread } from "@thirstline/spec/system";

/** Blocks of a file, and keys of a filter, that neither vacuum nor pressure depends on while elements are clean. */
const ELSEWHERE: ReadonlySet<string | number> = new Set([
  "deliveredFuel",
  "duty",
  "service",
  "protection",
  "capacityTest",
  "lighterCapacityTest",
  "betas",
  "statedRating",
  "leak",
  "bowl",
  "separation",
  "absorbs",
]);

/** The spreads of a file that bear on pressures; the others stand still. */
export function suctionUnknowns(system: System): {
  /** how many numbers a draw takes */
  readonly count: number;
  /** a draw's numbers as `withDraw` takes them */
  readonly places: (draw: readonly number[]) => number[];
} {
  const spreads = system.spreads ?? [];
  const group = (spread: SystemSpread, at: number) => spread.group ?? at;
  const groups = [...new Set(spreads.flatMap((one, at) => (bears(one) ? [group(one, at)] : [])))];
  return {
    count: groups.length,
    places: (draw) => spreads.map((spread, at) => draw[groups.indexOf(group(spread, at))] ?? 0.5),
  };
}

function bears({ path }: SystemSpread): boolean {
  return !path.some((step) => ELSEWHERE.has(step));
}
