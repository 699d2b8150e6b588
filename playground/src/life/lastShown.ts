import type { LifeAnswer } from "@thirstline/study";

/** Last running time shown, s: all that counts, with room for its names; not ten years where an interval is weeks. */
export function lastShown({ end, interval, change, spread, horizon }: LifeAnswer): number {
  const marks = [end?.time, interval?.atMost, change?.time].filter((one) => one !== undefined);
  const most = Math.max(0, ...marks);
  const spreadEnd = spread && Number.isFinite(spread.high) ? spread.high : 0;
  const wanted = Math.max(most, Math.min(spreadEnd, 1.6 * most));
  return wanted > 0 ? Math.min(1.12 * wanted, Math.max(horizon, 1.12 * most)) : horizon;
}
