import type uPlot from "uplot";
import type { ChartData, ChartLine } from "./columnsOf.js";

/** Colours of the chart, read from the page so that they follow light, dark and paper. */
export interface Inks {
  readonly ink: string;
  readonly soft: string;
  readonly rule: string;
  readonly limit: string;
  readonly fuel: string;
  readonly paper: string;
  readonly face: string;
}

/** Width and dashes that tell the lines apart without colour. */
const strokes: Readonly<Record<ChartLine["name"], { readonly width: number; readonly dash: number[] }>> = {
  clean: { width: 3, dash: [] },
  now: { width: 2.5, dash: [9, 5] },
  "at change": { width: 2, dash: [2.5, 4] },
  pinned: { width: 1.5, dash: [14, 4, 2, 4] },
};

/** The figures as the chart's columns; x rises, gaps are null, a band is two columns before its line's. */
export function plotColumns(data: ChartData): uPlot.AlignedData {
  const lines = data.lines.flatMap(({ values, band }) => (band ? [band.high, band.low, values] : [values]));
  return [data.demand, ...lines] as unknown as uPlot.AlignedData;
}

/**
 * The options of a chart. Lines and bands are fixed by the figures it is made with; ends of the scales, limits and labels
 * follow `current`. A band is two unseen lines with a wash between.
 */
export function plotOptions(
  current: () => ChartData,
  inks: Inks,
  size: { width: number; height: number },
): uPlot.Options {
  const data = current();
  const series: uPlot.Series[] = [{ label: "demand" }];
  const bands: uPlot.Band[] = [];
  for (const { name, label, band } of data.lines) {
    const { width, dash } = strokes[name];
    const stroke = name === "pinned" ? inks.soft : inks.ink;
    if (band) {
      bands.push({
        series: [series.length, series.length + 1],
        fill: `color-mix(in srgb, ${inks.ink} 14%, transparent)`,
      });
      series.push(unseen, unseen);
    }
    series.push({ label, stroke, width, dash, points: { show: false } });
  }
  return {
    ...size,
    padding: [14, 96, 0, 0],
    series,
    bands,
    legend: { show: false },
    cursor: { points: { size: 9, fill: inks.ink }, drag: { x: false, y: false } },
    scales: {
      x: { time: false, range: () => [0, current().demand.at(-1) ?? 1] },
      y: { range: () => rangeOf(current()) },
    },
    axes: [axis(inks, `Demand of the engine, ${data.xSymbol}`, 54), axis(inks, `${data.title}, ${data.ySymbol}`, 62)],
    hooks: { draw: [(plot) => annotate(plot, current(), inks)] },
  };
}

const unseen: uPlot.Series = { stroke: "transparent", width: 0, points: { show: false } };

/** From 0 (or the least figure) to a bit over all lines and limits, but not far beyond twice the highest limit. */
function rangeOf({ lines, limits, limitsAreMost }: ChartData): [number, number] {
  const values = lines.flatMap(({ values }) => values).filter((one) => one !== null);
  const marks = limits.map(({ value }) => value);
  const top = Math.max(...values, ...marks, 0);
  const most = limitsAreMost && marks.length > 0 ? Math.min(top, 2 * Math.max(...marks)) : top;
  return [Math.min(0, ...values), Math.max(most * 1.08, 1e-9)];
}

function axis(inks: Inks, label: string, size: number): uPlot.Axis {
  const font = `14px ${inks.face}`;
  return {
    label,
    size,
    space: size > 58 ? 46 : 84,
    labelSize: 26,
    font,
    labelFont: font,
    stroke: inks.soft,
    grid: { stroke: inks.rule, width: 1 },
    ticks: { stroke: inks.rule, width: 1, size: 6 },
  };
}

/** Limits, ceiling, the point the engine runs at, and a name at the end of every line. */
function annotate(plot: uPlot, data: ChartData, inks: Inks): void {
  const { ctx, bbox } = plot;
  const ratio = devicePixelRatio;
  const [right, bottom] = [bbox.left + bbox.width, bbox.top + bbox.height];
  ctx.save();
  ctx.font = `600 ${13 * ratio}px ${inks.face}`;
  ctx.textBaseline = "middle";
  ctx.textAlign = "left";
  for (const { label, value, dashed } of data.limits) {
    const y = plot.valToPos(value, "y", true);
    stroke(ctx, [bbox.left, y, right, y], {
      colour: inks.limit,
      width: (dashed ? 1.5 : 2.5) * ratio,
      dash: dashed ? [8, 5] : [],
    });
    write(ctx, label, bbox.left + 8 * ratio, y - 10 * ratio, inks.limit, inks.paper);
  }
  if (data.ceiling) {
    const x = plot.valToPos(data.ceiling.value, "x", true);
    stroke(ctx, [x, bbox.top, x, bottom], { colour: inks.limit, width: 1.5 * ratio, dash: [2, 4] });
    ctx.textAlign = "right";
    write(ctx, data.ceiling.label, x - 6 * ratio, bbox.top + 10 * ratio, inks.limit, inks.paper);
    ctx.textAlign = "left";
  }
  endLabels(plot, data, inks, right);
  if (data.duty) {
    const [x, y] = [plot.valToPos(data.duty.demand, "x", true), plot.valToPos(data.duty.value, "y", true)];
    ctx.beginPath();
    ctx.arc(x, y, 7 * ratio, 0, 2 * Math.PI);
    ctx.fillStyle = inks.fuel;
    ctx.strokeStyle = inks.ink;
    ctx.lineWidth = 2 * ratio;
    ctx.fill();
    ctx.stroke();
  }
  ctx.restore();
}

/** Names at the lines' ends, moved apart where they would stand on each other. */
function endLabels(plot: uPlot, { lines, demand }: ChartData, inks: Inks, right: number): void {
  const ratio = devicePixelRatio;
  const { top, height } = plot.bbox;
  const ends = lines.flatMap(({ label, values }) => {
    const last = values.findLastIndex((one) => one !== null);
    const value = values[last];
    if (value === null || value === undefined) return [];
    const y = Math.max(top + 8 * ratio, Math.min(top + height - 8 * ratio, plot.valToPos(value, "y", true)));
    return [{ label, x: Math.min(right, plot.valToPos(demand[last] ?? 0, "x", true)), y }];
  });
  ends.sort((a, b) => a.y - b.y);
  let free = 0;
  for (const { label, x, y } of ends) {
    const placed = Math.max(y, free);
    write(plot.ctx, label.length > 13 ? `${label.slice(0, 12)}…` : label, x + 8 * ratio, placed, inks.ink, inks.paper);
    free = placed + 16 * ratio;
  }
}

function stroke(ctx: CanvasRenderingContext2D, [x0, y0, x1, y1]: [number, number, number, number], look: Look): void {
  ctx.beginPath();
  ctx.strokeStyle = look.colour;
  ctx.lineWidth = look.width;
  ctx.setLineDash(look.dash.map((one) => one * devicePixelRatio));
  ctx.moveTo(x0, y0);
  ctx.lineTo(x1, y1);
  ctx.stroke();
  ctx.setLineDash([]);
}

interface Look {
  readonly colour: string;
  readonly width: number;
  readonly dash: readonly number[];
}

function write(ctx: CanvasRenderingContext2D, text: string, x: number, y: number, colour: string, halo: string): void {
  ctx.strokeStyle = halo;
  ctx.lineWidth = 4 * devicePixelRatio;
  ctx.lineJoin = "round";
  ctx.strokeText(text, x, y);
  ctx.fillStyle = colour;
  ctx.fillText(text, x, y);
}
