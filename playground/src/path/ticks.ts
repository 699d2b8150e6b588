/** Round figures between two ends, some four of them, rising. */
export function ticks(low: number, high: number, wanted = 4): number[] {
  const rough = (high - low) / wanted;
  if (!(rough > 0 && rough < Infinity)) return [];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= rough) ?? 10 * power;
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) =>
    Number(((first + at) * step).toPrecision(12)),
  );
}
