/** Three figures at most, as charts and their tables read; a dash for a gap. */
export function figureOf(value: number | null | undefined): string {
  if (value === null || value === undefined || !Number.isFinite(value)) return "–";
  const size = Math.abs(value);
  return value.toFixed(size >= 99.95 ? 0 : size >= 9.995 ? 1 : 2);
}

/** The same with its unit; "none" for a gap. */
export function figureWith(value: number | null | undefined, symbol: string): string {
  return value === null || value === undefined || !Number.isFinite(value) ? "none" : `${figureOf(value)} ${symbol}`;
}
