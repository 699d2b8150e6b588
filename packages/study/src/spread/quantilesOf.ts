/** The values that 10, 50 and 90 % of draws stay below; draws that are NaN are left out, and with none left all are NaN. */
export function quantilesOf(draws: Float64Array): {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
} {
  const known = draws.filter((draw) => !Number.isNaN(draw)).sort();
  const at = (share: number) => known[Math.min(known.length - 1, Math.floor(share * known.length))] ?? Number.NaN;
  return { low: at(0.1), middle: at(0.5), high: at(0.9) };
}
