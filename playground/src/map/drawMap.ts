import { type CheckPoint, type UnitSystem, unitOf } from "@thirstline/study";
import { nothing, type SVGTemplateResult, svg } from "lit";
import { ticks } from "../path/ticks.js";
import type { MapFrame } from "./MapFrame.js";
import type { MapPoint } from "./MapPoint.js";
import { type UnsureRange, unsureRanges } from "./unsureRanges.js";

/** What a map is drawn from. */
export interface MapShown {
  readonly points: readonly MapPoint[];
  readonly point: CheckPoint;
  readonly units: UnitSystem;
  /** temperature the pointer is at, K; null while it is elsewhere */
  readonly pointer: number | null;
}

/** Areas, edges, names, axes and the point that is now. */
export function drawMap(frame: MapFrame, { points, point, units, pointer }: MapShown): SVGTemplateResult {
  const { left, right, ceiling, floor } = frame;
  const line = (of: (point: MapPoint) => number): string =>
    points.map((one) => frame.xy(one.temperature, of(one))).join("L");
  const under = (d: string): string => `M${left} ${floor}L${d}L${right} ${floor}Z`;
  const [low, high, clean] = [
    line((one) => one.atChange.low),
    line((one) => one.atChange.high),
    line((one) => one.clean),
  ];
  return svg`<defs>
      <pattern id="hatching" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch" d="M0 0V9" /></pattern>
      <pattern id="dots" width="9" height="9" patternUnits="userSpaceOnUse"><circle class="drop" cx="2" cy="2" r="1.2" /></pattern>
    </defs>
    <rect class="starves" x=${left} y=${ceiling} width=${right - left} height=${floor - ceiling} />
    <rect fill="url(#hatching)" x=${left} y=${ceiling} width=${right - left} height=${floor - ceiling} />
    <path class="holds" d=${under(high)} /><path class="perhaps" d=${under(high)} />
    <path class="holds" d=${under(low)} /><path class="tight" d=${under(low)} /><path class="holds" d=${under(clean)} />
    ${unsureRanges(points, point.fuel.cloudPoint).map((one) => unsure(frame, one))}
    <path class="clean" d=${`M${clean}`} /><path class="edge" d=${`M${low}`} />
    ${words(frame, points)}${axes(frame, units)}
    ${pointer === null ? nothing : svg`<path class="cross" d="M${frame.x(pointer)} ${ceiling}V${floor}" />`}
    <circle class="duty" r="7" cx=${frame.x(point.temperature)} cy=${frame.y(point.demand.total)} />`;
}

function unsure(frame: MapFrame, { from, to, wax }: UnsureRange): SVGTemplateResult {
  const [left, right] = [frame.x(from), frame.x(to)];
  const { ceiling, floor } = frame;
  return svg`<rect fill="url(#dots)" x=${left} y=${ceiling} width=${right - left} height=${floor - ceiling} />
    ${wax ? svg`<path class="cold" d="M${right} ${ceiling}V${floor}" />` : nothing}
    ${right - left < 50 ? nothing : svg`<text class="said cold-text" x=${(left + right) / 2} y=${floor - 12} text-anchor="middle">${wax ? "wax" : "no data"}</text>`}`;
}

/** Names for the areas, each where its area is tall enough to hold it. */
function words(frame: MapFrame, points: readonly MapPoint[]) {
  const at = points[Math.floor(points.length * 0.72)];
  if (at === undefined) return nothing;
  const { top } = frame;
  const areas = [
    { words: "gets its fuel", from: 0, to: Math.min(at.clean, top) },
    { words: "no room for soil", from: at.clean, to: Math.min(at.atChange.low, top) },
    { words: "a flow test would settle it", from: at.atChange.low, to: Math.min(at.atChange.high, top) },
    { words: "starves", from: at.atChange.high, to: top },
  ];
  return areas
    .filter(({ from, to }) => frame.y(from) - frame.y(to) > 26)
    .map(
      ({ words, from, to }) =>
        svg`<text class="said" x=${frame.x(at.temperature)} y=${frame.y((from + to) / 2) + 5} text-anchor="middle">${words}</text>`,
    );
}

function axes(frame: MapFrame, units: UnitSystem) {
  const [temperature, flow] = [unitOf("temperature", units), unitOf("flow", units)];
  const zero = temperature.zero ?? 0;
  const { left, right, ceiling, floor } = frame;
  const shown = (kelvin: number) => (kelvin - zero) / temperature.size;
  const across = ticks(shown(frame.coldest), shown(frame.warmest), frame.width < 420 ? 4 : 8);
  const up = ticks(0, frame.top / flow.size, 4);
  return svg`<path class="axis" d="M${left} ${ceiling}V${floor}H${right}" fill="none" />
    ${across.map((one) => svg`<text x=${frame.x(one * temperature.size + zero)} y=${floor + 18} text-anchor="middle">${one}</text>`)}
    <text x=${right} y=${floor + 38} text-anchor="end">Temperature of the fuel, ${temperature.symbol}</text>
    ${up.map((one) => svg`<text x=${left - 8} y=${frame.y(one * flow.size) + 5} text-anchor="end">${one}</text>`)}
    <text x="0" y=${floor + 38}>Demand, ${flow.symbol}</text>`;
}
