import type { ChartData } from "../chart/ChartData.js";
import { endLabels } from "../chart/endLabels.js";
import type { Inks } from "../chart/inksOf.js";
import { ChartPen } from "./ChartPen.js";
import { drawingText, tag } from "./tag.js";

const SIZE = { width: 960, height: 540 };
const ROOM = { left: 84, right: 130, top: 56, bottom: 64 };

/** A chart as a vector drawing of its own, from the same figures as on the screen. */
export function chartDrawing(data: ChartData, inks: Inks): string {
  const [left, right] = [ROOM.left, SIZE.width - ROOM.right];
  const [top, bottom] = [ROOM.top, SIZE.height - ROOM.bottom];
  const x = (value: number) => left + ((value - data.x.from) / (data.x.to - data.x.from)) * (right - left);
  const y = (value: number) => bottom - ((value - data.y.from) / (data.y.to - data.y.from)) * (bottom - top);
  const pen = new ChartPen(inks, { left, right, top, bottom }, x, y);
  const inside = [
    pen.heading(`${data.title}, ${data.y.symbol}`),
    pen.axes(data),
    pen.wash(data),
    ...data.lines.map((line) => pen.line(data.x.values, line)),
    ...data.horizontals.filter(({ value }) => value >= data.y.from && value <= data.y.to).map((one) => pen.across(one)),
    pen.uprights(data),
    ...endLabels(data, { x, y, top, bottom, right, apart: 18 }).map((one) => pen.end(one)),
    data.dot === null
      ? ""
      : tag("circle", {
          cx: x(data.dot.x),
          cy: y(data.dot.y),
          r: 7,
          fill: inks.fuel,
          stroke: inks.ink,
          "stroke-width": 2,
        }),
  ].join("");
  const face = { "font-family": inks.face, "font-size": 14, fill: inks.soft };
  return drawingText(SIZE, inks.paper, tag("g", face, inside));
}
