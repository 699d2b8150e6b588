/** Round figures between two bounds, some so many of them. */
export function ticksBetween(low: number, high: number, about: number): number[] {
  const span = high - low;
  if (!(span > 0)) return [low];
  const rough = span / about;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((one) => one * power >= rough) ?? 10) * power;
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, at) => Number(((first + at) * step).toPrecision(12)));
}

/** Puts a figure between two bounds to its place between two places, px. */
export function scaleOf(low: number, high: number, from: number, to: number): (value: number) => number {
  const span = high - low || 1;
  return (value) => from + ((value - low) / span) * (to - from);
}
