/** A value and how much it counts. */
export interface Counted {
  readonly value: number;
  readonly weight: number;
}

/**
 * The value a share of the weight lies below; the weights need not add up to 1. Straight between the middles of the weights.
 *
 * @param share 0 to 1
 * @returns NaN without any weight
 */
export function quantileOf(values: readonly Counted[], share: number): number {
  const ordered = values.filter(({ weight }) => weight > 0).sort((one, other) => one.value - other.value);
  const total = ordered.reduce((sum, { weight }) => sum + weight, 0);
  let below = 0;
  let before: { readonly value: number; readonly at: number } | null = null;
  for (const { value, weight } of ordered) {
    const at = (below + weight / 2) / total;
    if (at >= share) {
      if (before === null || !Number.isFinite(value)) return value;
      return before.value + ((value - before.value) * (share - before.at)) / (at - before.at);
    }
    before = { value, at };
    below += weight;
  }
  return before?.value ?? Number.NaN;
}
