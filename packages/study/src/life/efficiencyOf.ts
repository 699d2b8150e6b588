import type { Efficiency, KnownCapture } from "@thirstline/core";

/** What an element catches by size somewhere between the least, 0, and the most, 1, of what its one beta leaves open. */
export function efficiencyOf({ efficiency: { low, middle, high } }: KnownCapture, at: number): Efficiency {
  if (at === 0.5 || low === high) return middle;
  const [from, to, share] = at < 0.5 ? [low, middle, 2 * at] : [middle, high, 2 * at - 1];
  return from.map((value, bin) => value * (1 - share) + (to[bin] ?? value) * share);
}
