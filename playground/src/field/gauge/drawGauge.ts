import { plain } from "@thirstline/study";
import { nothing, type SVGTemplateResult, svg } from "lit";
import { scaleOf, ticksBetween } from "../../choose/plotScale.js";
import type { GaugePlot } from "./PlotData.js";

const ROOM = { top: 26, right: 12, bottom: 46, left: 40 };

/** Draws a gauge's course: axes, band, course, limit, readings, and the moment the limit is met with how far that is known. */
export function drawGauge(plot: GaugePlot, width: number, height: number): SVGTemplateResult {
  const x = scaleOf(plot.x.from, plot.x.to, ROOM.left + 8, width - ROOM.right);
  const y = scaleOf(plot.y.from, plot.y.to, height - ROOM.bottom, ROOM.top);
  const [left, right, bottom] = [ROOM.left, width - ROOM.right, height - ROOM.bottom];
  // What runs off the top is held at it, so that nothing is drawn over the words above.
  const spot = (one: { x: number; y: number }) =>
    `${x(one.x).toFixed(1)},${Math.max(ROOM.top - 6, Math.min(bottom, y(one.y))).toFixed(1)}`;
  const { line, limit } = plot;
  const few = width < 480 ? 2 : 1;
  return svg`
    ${ticksBetween(plot.y.from, plot.y.to, 5).map((tick) => svg`<line class="axis" x1=${left} x2=${right} y1=${y(tick)} y2=${y(tick)} /><text x=${left - 8} y=${y(tick) + 5} text-anchor="end">${tick}</text>`)}
    <text x="0" y="12">${plot.y.symbol}</text>
    ${plot.x.ticks.filter((_, at) => at % few === 0).map(({ at, text }) => svg`<line class="base" x1=${x(at)} x2=${x(at)} y1=${bottom} y2=${bottom + 5} /><text x=${Math.min(x(at), right - 18)} y=${bottom + 21} text-anchor="middle">${text}</text>`)}
    <text x=${right} y=${height - 4} text-anchor="end">${plot.x.label}</text>
    <line class="base" x1=${left} x2=${right} y1=${bottom} y2=${bottom} />
    ${line === null ? nothing : svg`<polygon class="band" points=${[...line.low, ...[...line.high].reverse()].map(spot).join(" ")} />`}
    ${limit === null ? nothing : svg`<line class="limit" x1=${left} x2=${right} y1=${y(limit.at)} y2=${y(limit.at)} /><text class="limit-name" x=${left + 10} y=${y(limit.at) - 8}>${limit.name}</text>`}
    ${line === null ? nothing : courses(plot, spot)}
    ${plot.expected.map((one) => svg`<line class="fitted" x1=${x(one.x) - 6} x2=${x(one.x) + 6} y1=${y(one.y)} y2=${y(one.y)} />`)}
    ${plot.earlier.map((one) => svg`<circle class="earlier" cx=${x(one.x)} cy=${y(one.y)} r="4.5"><title>${plain(one.words)}</title></circle>`)}
    ${plot.points.map((one) => svg`<circle class="point" cx=${x(one.x)} cy=${y(one.y)} r="5"><title>${plain(one.words)}</title></circle>${one.off ? svg`<circle class="ring" cx=${x(one.x)} cy=${y(one.y)} r="10" />` : nothing}`)}
    ${met(plot, x, y, { left, right, bottom })}`;
}

/** As far as readings go in a whole line, beyond them broken. */
function courses({ line, points }: GaugePlot, spot: (one: { x: number; y: number }) => string): SVGTemplateResult {
  const last = points.at(-1)?.x ?? Infinity;
  const middle = line?.middle ?? [];
  const until = middle.findIndex(({ x }) => x > last);
  const turn = until < 0 ? middle.length : until;
  const path = (spots: typeof middle) => spots.map(spot).join(" ");
  return svg`<polyline class="course" points=${path(middle.slice(0, turn + 1))} /><polyline class="course ahead" points=${path(middle.slice(turn))} />`;
}

function met(
  { crossing, limit, x: axis }: GaugePlot,
  x: (value: number) => number,
  y: (value: number) => number,
  { left, right, bottom }: { left: number; right: number; bottom: number },
): SVGTemplateResult | typeof nothing {
  if (crossing === null) return nothing;
  const high = Math.min(right, x(crossing.high ?? axis.to));
  const at = x(crossing.middle);
  const words = axis.label.startsWith("hour") ? `${Math.round(crossing.middle)} h` : dayText(crossing.middle);
  const near = at > right - 60;
  return svg`<line class="met" x1=${at} x2=${at} y1=${limit === null ? 26 : y(limit.at)} y2=${bottom} />
    <line class="spread" x1=${Math.max(left, x(crossing.low))} x2=${high} y1=${bottom} y2=${bottom} />
    <text class="name" x=${near ? at - 6 : at + 6} y=${bottom - 12} text-anchor=${near ? "end" : "start"}>${words}</text>`;
}

function dayText(day: number): string {
  return new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric", timeZone: "UTC" }).format(
    day * 864e5,
  );
}
