/** Which of values is nearest to one; 0 where there are none. */
export function nearest(values: readonly number[], value: number): number {
  const away = (at: number) => Math.abs((values[at] ?? Number.POSITIVE_INFINITY) - value);
  return values.reduce((best, _, at) => (away(at) < away(best) ? at : best), 0);
}
