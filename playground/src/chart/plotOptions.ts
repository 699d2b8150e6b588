import type uPlot from "uplot";
import { annotate } from "./annotate.js";
import type { ChartData } from "./ChartData.js";
import type { Inks } from "./inksOf.js";
import { lineStrokes } from "./lineLooks.js";

/** Narrower than this, px, a chart gives its figures more of its room. */
export const NARROW = 480;

/** The figures as the chart's columns; x rises, gaps are null, a band is two columns before its line's. */
export function plotColumns(data: ChartData): uPlot.AlignedData {
  const lines = data.lines.flatMap(({ values, band }) => (band ? [band.high, band.low, values] : [values]));
  return [data.x.values, ...lines] as unknown as uPlot.AlignedData;
}

/**
 * The options of a chart. Lines and bands are fixed by the figures it is made with; ends of the scales, marks and labels
 * follow `current`. A band is two unseen lines with a wash between.
 */
export function plotOptions(
  current: () => ChartData,
  inks: Inks,
  size: { width: number; height: number },
): uPlot.Options {
  const data = current();
  const narrow = size.width < NARROW;
  const series: uPlot.Series[] = [{ label: data.x.label }];
  const bands: uPlot.Band[] = [];
  for (const { look, label, band } of data.lines) {
    const { width, dash } = lineStrokes[look];
    if (band) {
      bands.push({
        series: [series.length, series.length + 1],
        fill: `color-mix(in srgb, ${inks.ink} 14%, transparent)`,
      });
      series.push(unseen, unseen);
    }
    series.push({
      label,
      stroke: look === "pinned" ? inks.soft : inks.ink,
      width,
      dash: [...dash],
      points: { show: false },
    });
  }
  return {
    ...size,
    padding: [14, narrow ? 64 : 84, 0, 0],
    series,
    bands,
    legend: { show: false },
    cursor: { points: { size: 9, fill: inks.ink }, drag: { x: false, y: false } },
    scales: {
      x: { time: false, range: () => [current().x.from, current().x.to] },
      y: { range: () => [current().y.from, current().y.to] },
    },
    axes: [
      axis(inks, `${data.x.label}, ${data.x.symbol}`, { size: 34, space: narrow ? 56 : 84, gap: 8 }),
      axis(inks, narrow ? "" : `${data.y.label}, ${data.y.symbol}`, { size: 40, space: 46, gap: 4 }),
    ],
    hooks: { drawClear: [(plot) => wash(plot, current(), inks)], draw: [(plot) => annotate(plot, current(), inks)] },
  };
}

const unseen: uPlot.Series = { stroke: "transparent", width: 0, points: { show: false } };

function axis(inks: Inks, label: string, room: { size: number; space: number; gap: number }): uPlot.Axis {
  const font = `14px ${inks.face}`;
  return {
    ...(label === "" ? {} : { label, labelSize: 24, labelGap: 2 }),
    ...room,
    font,
    labelFont: font,
    stroke: inks.soft,
    grid: { stroke: inks.rule, width: 1 },
    ticks: { stroke: inks.rule, width: 1, size: 6 },
  };
}

/** The stretch of x over which something is spread, under everything else. */
function wash(plot: uPlot, { stretch, x }: ChartData, inks: Inks): void {
  if (stretch === null) return;
  const { ctx, bbox } = plot;
  const left = plot.valToPos(Math.max(stretch.from, x.from), "x", true);
  const right = plot.valToPos(Math.min(stretch.to, x.to), "x", true);
  ctx.save();
  ctx.fillStyle = inks.limit;
  ctx.globalAlpha = 0.13;
  ctx.fillRect(left, bbox.top, right - left, bbox.height);
  ctx.restore();
}
