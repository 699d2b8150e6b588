import type { SystemSpread } from "@thirstline/spec/system";

/** A spread at its place, and which unknown it is of: those of one unknown move together. */
export interface SpreadOf {
  readonly spread: SystemSpread;
  readonly unknown: string;
}

/** Spreads with their groups as a system has them: the place, among them, of the first of each unknown. */
export function groupedSpreads(all: readonly SpreadOf[]): SystemSpread[] {
  return all.map(({ spread: { group: _, ...spread }, unknown }): SystemSpread => {
    const alike = all.filter((other) => other.unknown === unknown);
    return alike.length === 1 ? spread : { ...spread, group: all.findIndex((other) => other.unknown === unknown) };
  });
}
