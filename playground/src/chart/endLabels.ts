import type { ChartData } from "./ChartData.js";

/** A name at a line's end, px. */
export interface EndLabel {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/** Where a chart's figures stand, px. */
export interface Places {
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  readonly top: number;
  readonly bottom: number;
  readonly right: number;
  /** least room between two names, px */
  readonly apart: number;
}

/** Names at the lines' ends, moved apart where they would stand on each other. */
export function endLabels({ lines, x }: ChartData, places: Places): EndLabel[] {
  const half = places.apart / 2;
  const ends = lines.flatMap(({ label, named, values }) => {
    const last = values.findLastIndex((one) => one !== null);
    const value = values[last];
    if (!named || value === null || value === undefined) return [];
    const y = Math.max(places.top + half, Math.min(places.bottom - half, places.y(value)));
    return [{ text: shortened(label), x: Math.min(places.right, places.x(x.values[last] ?? 0)) + half, y }];
  });
  ends.sort((a, b) => a.y - b.y);
  let free = 0;
  return ends.map((end) => {
    const y = Math.max(end.y, free);
    free = y + places.apart;
    return { ...end, y };
  });
}

function shortened(label: string): string {
  return label.length > 13 ? `${label.slice(0, 12)}…` : label;
}
