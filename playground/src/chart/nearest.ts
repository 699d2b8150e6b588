/** Which of values is nearest to one; 0 where there are none. */
export function nearest(values: ArrayLike<number>, value: number): number {
  let best = 0;
  const away = (at: number) => Math.abs((values[at] ?? Number.POSITIVE_INFINITY) - value);
  for (let at = 1; at < values.length; at++) if (away(at) < away(best)) best = at;
  return best;
}
