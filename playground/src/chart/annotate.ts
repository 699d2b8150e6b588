import type uPlot from "uplot";
import type { ChartData, Mark } from "./ChartData.js";
import { endLabels } from "./endLabels.js";
import type { Inks } from "./inksOf.js";
import { markStrokes } from "./lineLooks.js";
import { rowsOfMarks } from "./rowsOfMarks.js";

/** Marks, the point that is now, and a name at the end of every line. */
export function annotate(plot: uPlot, data: ChartData, inks: Inks): void {
  const { ctx, bbox } = plot;
  const ratio = devicePixelRatio;
  const [right, bottom] = [bbox.left + bbox.width, bbox.top + bbox.height];
  const x = (value: number) => plot.valToPos(value, "x", true);
  const y = (value: number) => plot.valToPos(value, "y", true);
  const write = writer(ctx, inks.paper);
  ctx.save();
  ctx.font = `600 ${13 * ratio}px ${inks.face}`;
  ctx.textBaseline = "middle";
  for (const mark of data.horizontals) {
    if (mark.value < data.y.from || mark.value > data.y.to) continue;
    const at = y(mark.value);
    stroke(ctx, [bbox.left, at, right, at], mark, inks);
    write(mark.label, bbox.left + 8 * ratio, at - 10 * ratio, inks.limit);
  }
  const width = (text: string) => ctx.measureText(text).width;
  const marks = data.uprights.map((mark) => ({ ...mark, at: x(mark.value) }));
  for (const { mark, row, from } of rowsOfMarks(marks, { left: bbox.left, right, width, gap: 6 * ratio })) {
    stroke(ctx, [mark.at, bbox.top, mark.at, bottom], mark, inks);
    const colour = markStrokes[mark.look].limit ? inks.limit : inks.soft;
    write(mark.label, from, bottom - (12 + 17 * row) * ratio, colour);
  }
  for (const { text, x: at, y: up } of endLabels(data, {
    x,
    y,
    top: bbox.top,
    bottom,
    right,
    apart: 16 * ratio,
  })) {
    write(text, at, up, inks.ink);
  }
  if (data.dot) {
    ctx.beginPath();
    ctx.arc(x(data.dot.x), y(data.dot.y), 7 * ratio, 0, 2 * Math.PI);
    ctx.fillStyle = inks.fuel;
    ctx.strokeStyle = inks.ink;
    ctx.lineWidth = 2 * ratio;
    ctx.fill();
    ctx.stroke();
  }
  ctx.restore();
}

function stroke(
  ctx: CanvasRenderingContext2D,
  [x0, y0, x1, y1]: [number, number, number, number],
  { look }: Mark,
  inks: Inks,
): void {
  const { width, dash, limit } = markStrokes[look];
  ctx.beginPath();
  ctx.strokeStyle = limit ? inks.limit : inks.soft;
  ctx.lineWidth = width * devicePixelRatio;
  ctx.setLineDash(dash.map((one) => one * devicePixelRatio));
  ctx.moveTo(x0, y0);
  ctx.lineTo(x1, y1);
  ctx.stroke();
  ctx.setLineDash([]);
}

/** Text that stays legible over lines. */
function writer(ctx: CanvasRenderingContext2D, halo: string) {
  return (text: string, x: number, y: number, colour: string): void => {
    ctx.textAlign = "left";
    ctx.strokeStyle = halo;
    ctx.lineWidth = 4 * devicePixelRatio;
    ctx.lineJoin = "round";
    ctx.strokeText(text, x, y);
    ctx.fillStyle = colour;
    ctx.fillText(text, x, y);
  };
}
