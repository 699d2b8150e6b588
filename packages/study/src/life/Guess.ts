import type { MediumMake } from "@thirstline/core";
import type { SystemFilter } from "@thirstline/spec/system";

/**
 * Where to stand within what is only estimated of elements: handbook capacities from the least, 0, to the most, 1; a capture
 * known at one beta from the least it may catch, 0, to the most, 1. Half-way is the likely figure of both.
 */
export interface Guess {
  readonly capacity: (make: MediumMake) => number;
  readonly capture: (oneBeta: string) => number;
}

/** The likely figure of everything. */
export const likely: Guess = { capacity: () => 0.5, capture: () => 0.5 };

/** What the capture of a filter is known by, where that is one beta only; elements alike in it are one unknown. */
export function oneBetaOf({ betas, statedRating, medium }: SystemFilter): string | null {
  const rating = statedRating ?? (medium.by === "rating" ? medium : undefined);
  if (betas) return betas.length === 1 && betas[0] ? `${betas[0].beta} at ${betas[0].size}` : null;
  return rating && rating.kind !== "nominal" ? `${rating.kind} at ${rating.size}` : null;
}

/** What handbook capacity a filter is followed by, where none was tested and its area is known. */
export function assumedMakeOf(filter: SystemFilter): MediumMake | null {
  if (filter.capacityTest || filter.lighterCapacityTest || areaOf(filter) === undefined) return null;
  return filter.make ?? "cellulose";
}

/** Area of a filter's medium, m2, where the file has it. */
export function areaOf({ area, medium }: SystemFilter): number | undefined {
  return area ?? ("area" in medium ? medium.area : undefined);
}
