import type { MapPoint } from "./MapPoint.js";

/** A stretch of temperatures, K, over which no figure is a promise. */
export interface UnsureRange {
  readonly from: number;
  readonly to: number;
  /** whether it ends at the cloud point: there wax is the reason, not a lack of data */
  readonly wax: boolean;
}

/**
 * The stretches of a map where no figure is a promise, by its points: each reaches half way to the next sure point, and
 * exactly to the cloud point where that lies between.
 */
export function unsureRanges(points: readonly MapPoint[], cloudPoint: number | null): UnsureRange[] {
  const ranges: UnsureRange[] = [];
  let from: number | null = null;
  points.forEach((point, at) => {
    const [before, after] = [points[at - 1], points[at + 1]];
    if (!point.unsure) return;
    if (from === null) from = before === undefined ? point.temperature : (before.temperature + point.temperature) / 2;
    if (after?.unsure) return;
    const end = after?.temperature ?? point.temperature;
    const wax = cloudPoint !== null && cloudPoint >= point.temperature && cloudPoint <= end;
    ranges.push({ from, to: wax ? cloudPoint : (point.temperature + end) / 2, wax });
    from = null;
  });
  return ranges;
}
