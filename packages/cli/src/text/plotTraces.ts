import { plot } from "simple-ascii-chart";
import type { Trace } from "./tracesOf.js";

/** The span of the values, the ticks on both axes, and the width of the plot in characters. */
export interface Axes {
  readonly low: number;
  readonly high: number;
  readonly rows: number[];
  readonly columns: number[];
  readonly width: number;
}

/** Height of the plot inside its axes, in characters. */
export const HEIGHT = 17;

/** Traces between axes, as lines of characters; a later trace is drawn over an earlier one. */
export function plotTraces(traces: readonly Trace[], axes: Axes): string[] {
  // The library does not say which trace a point belongs to; where two share a point, the later is drawn on top.
  const letters = new Map(traces.flatMap(({ points, letter }) => points.map(([x, y]) => [`${x} ${y}`, letter])));
  const shown = traces.map(({ points }) =>
    points.filter(([, y]) => y >= axes.low && y <= axes.high).map(([x, y]): [number, number] => [x, y]),
  );
  const picture = plot(
    shown.filter((points) => points.length > 0),
    {
      width: axes.width,
      height: HEIGHT,
      yRange: [axes.low, axes.high],
      customYAxisTicks: axes.rows,
      customXAxisTicks: axes.columns,
      formatter: (value) => value,
      lineFormatter: ({ x, y, plotX, plotY }) => ({ x: plotX, y: plotY, symbol: letters.get(`${x} ${y}`) ?? "?" }),
    },
  );
  return picture
    .split("\n")
    .map((line) => line.trimEnd())
    .filter((line) => line !== "");
}
