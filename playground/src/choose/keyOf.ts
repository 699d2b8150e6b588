import type { Arrangement } from "@thirstline/study";

/** A text that is the same for the same arrangement, whatever its place in a list. */
export function keyOf({ stages, bore }: Pick<Arrangement, "stages" | "bore">): string {
  return JSON.stringify([stages.map(({ element, count }) => [element, count]), bore]);
}
