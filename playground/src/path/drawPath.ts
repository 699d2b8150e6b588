import { nothing, type SVGTemplateResult, svg } from "lit";
import { keyOf } from "../model/Place.js";
import type { Laid, Layout, Spot } from "./layout.js";
import type { Shape } from "./Station.js";
import { engineSymbol, partSymbol, pumpSymbol, REACH, tankSymbol } from "./symbols.js";

/** The path in ink about its own middle line: the pipe with its fuel, a symbol and a flow arrow for each part. */
export function drawPath({ laid, upright }: Layout, level: (tank: number) => number): SVGTemplateResult {
  const turn = upright ? "rotate(90)" : "";
  const spots = laid.flatMap(({ lanes }) => lanes.flat());
  const pipes = laid.flatMap((one, at) => pipesOf(one, { first: at === 0, last: at === laid.length - 1 }));
  return svg`<g transform=${turn}>
    ${pipes.map((d) => svg`<path class="pipe" d=${d} />`)}${pipes.map((d) => svg`<path class="fuel" d=${d} />`)}
    ${spots.map((spot) => symbolAt(spot, upright, level))}
    ${spots.map(arrowBehind)}
  </g>`;
}

/** Pipes between symbols: straight on the main path, fanning out and in again at a bank. */
function pipesOf({ from, to, middle, lanes, station }: Laid, ends: { first: boolean; last: boolean }): string[] {
  if (station.branches.length === 0) {
    const left = ends.first ? middle + REACH : from;
    const right = ends.last ? middle - REACH : to;
    if (ends.first) return [`M${left} 0H${to}`];
    return ends.last ? [`M${from} 0H${right}`] : [`M${from} 0H${middle - REACH + 4}M${middle + REACH - 4} 0H${to}`];
  }
  return lanes.map((lane) => {
    const beside = lane[0]?.beside ?? 0;
    // A tank begins its lane: its own symbol draws the pick-up.
    const spots = lane
      .slice(ends.first ? 1 : 0)
      .map(({ along, size }) => `H${along - (REACH - 4) * size}M${along + (REACH - 4) * size} ${beside}`)
      .join("");
    const bend = 16;
    const start = ends.first
      ? `M${(lane[0]?.along ?? from) + REACH * (lane[0]?.size ?? 1)} ${beside}`
      : `M${from} 0C${from + bend} 0 ${from} ${beside} ${from + bend} ${beside}`;
    const end = ends.last ? "" : `H${to - bend}C${to} ${beside} ${to - bend} 0 ${to} 0`;
    return `${start}${spots}${end}`;
  });
}

function symbolAt({ item, along, beside, size }: Spot, upright: boolean, level: (tank: number) => number) {
  // A tank stands upright whichever way the path runs.
  const standing = upright && (item.shape.kind === "tank" || item.shape.kind === "engine") ? "rotate(-90)" : "";
  const symbol = symbolOf(item.shape, upright, level);
  const at = `translate(${along} ${beside}) ${standing} scale(${size})`;
  // What can be pressed and dragged is larger than what is drawn.
  return svg`<g transform=${at} data-key=${keyOf(item.chosen)}>${symbol}<rect class="grip" x="-26" y="-26" width="52" height="52" /></g>`;
}

function symbolOf(shape: Shape, upright: boolean, level: (tank: number) => number) {
  switch (shape.kind) {
    case "tank":
      return tankSymbol(level(shape.index), upright);
    case "pump":
      return pumpSymbol(shape.pump);
    case "engine":
      return engineSymbol(shape.injection);
    case "part":
      return partSymbol(shape.part);
  }
}

/** A small arrow on the pipe behind a part, the way its fuel runs; none where nothing flows. */
function arrowBehind({ item, along, beside, size }: Spot) {
  const flow = item.row?.flow ?? (item.shape.kind === "engine" ? 0 : 1);
  if (flow === 0) return nothing;
  const way = flow < 0 ? "rotate(180)" : "";
  return svg`<path class="arrow" transform="translate(${along + (REACH + 6) * size} ${beside}) ${way} scale(${size})" d="M8 0L-5 -7.5V7.5Z" />`;
}
