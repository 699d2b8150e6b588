import type { ElementRow } from "./LifeAnswer.js";

/**
 * The element that goes first, the one that makes up most of the rise, with those that share it alike.
 *
 * @returns empty where no drop has risen
 */
export function firstToGo<One extends Pick<ElementRow, "share">>(elements: readonly One[]): One[] {
  const [first, ...rest] = [...elements].sort((one, other) => other.share - one.share);
  if (!first || first.share === 0) return [];
  return [first, ...rest.filter(({ share }) => Math.abs(share - first.share) < 1e-6 * first.share)];
}
