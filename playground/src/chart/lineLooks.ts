import type { LineLook, MarkLook } from "./ChartData.js";

/** Width, px, and dashes of what is drawn. */
export interface Stroke {
  readonly width: number;
  readonly dash: readonly number[];
}

/** Widths and dashes that tell lines apart without colour. */
export const lineStrokes: Readonly<Record<LineLook, Stroke>> = {
  clean: { width: 3, dash: [] },
  now: { width: 2.5, dash: [9, 5] },
  "at change": { width: 2, dash: [2.5, 4] },
  pinned: { width: 1.5, dash: [14, 4, 2, 4] },
};

/** Of marks across a chart, and whether one is a limit, which has a colour of its own. */
export const markStrokes: Readonly<Record<MarkLook, Stroke & { readonly limit: boolean }>> = {
  limit: { width: 2.5, dash: [], limit: true },
  "clean limit": { width: 1.5, dash: [8, 5], limit: true },
  ceiling: { width: 1.5, dash: [2, 4], limit: true },
  due: { width: 1.5, dash: [6, 4], limit: false },
};
