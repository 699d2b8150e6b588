/** A value and how much it counts. */
export interface Counted {
  readonly value: number;
  readonly weight: number;
}

/** A value among others, with the share of all weight that lies below its middle. */
export interface Ranked {
  /** its place as given */
  readonly place: number;
  readonly value: number;
  readonly at: number;
}

/** The values on either side of a share of the weight: none before the least, and the last alone beyond the largest. */
export function neighboursOf(
  values: readonly Counted[],
  share: number,
): { readonly before: Ranked | null; readonly after: Ranked | null } {
  const ordered = values
    .map((one, place) => ({ ...one, place }))
    .filter(({ weight }) => weight > 0)
    .sort((one, other) => one.value - other.value);
  const total = ordered.reduce((sum, { weight }) => sum + weight, 0);
  let below = 0;
  let before: Ranked | null = null;
  for (const { value, weight, place } of ordered) {
    const after = { place, value, at: (below + weight / 2) / total };
    if (after.at >= share) return { before, after };
    before = after;
    below += weight;
  }
  return { before, after: null };
}

/**
 * The value a share of the weight lies below; the weights need not add up to 1. Straight between the middles of the weights.
 *
 * @param share 0 to 1
 * @returns NaN without any weight
 */
export function quantileOf(values: readonly Counted[], share: number): number {
  const { before, after } = neighboursOf(values, share);
  if (after === null) return before?.value ?? Number.NaN;
  if (before === null || !Number.isFinite(after.value)) return after.value;
  return before.value + ((after.value - before.value) * (share - before.at)) / (after.at - before.at);
}
