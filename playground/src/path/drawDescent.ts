import { type UnitSystem, unitOf } from "@thirstline/study";
import { nothing, type SVGTemplateResult, svg } from "lit";
import type { Fall, Pane } from "./descentOf.js";
import { endNames } from "./endNames.js";
import type { Level, Levels } from "./levelsOf.js";
import { ticks } from "./ticks.js";

/** Where a pane stands and how its pressures are laid out. */
export interface Frame {
  /** whether the path runs down the page, so that pressure runs across it */
  readonly upright: boolean;
  /** stretch along the path, px */
  readonly from: number;
  readonly to: number;
  /** where the lowest and the highest pressure are drawn, px across the path */
  readonly low: number;
  readonly high: number;
  readonly units: UnitSystem;
  /** names the pane's clipping shape */
  readonly id: string;
}

/**
 * One side's pressures: limits, what goes under them, the falling line and the branches of banks.
 *
 * @param now the same with the soil that is stated; then both lines have their names, and what counts is judged by it
 */
export function drawDescent(pane: Pane, levels: Levels, frame: Frame, now: Pane | null): SVGTemplateResult {
  const at = (pressure: number) => place(pressure, levels, frame);
  const xy = ([along, pressure]: Fall): string => pair(along, at(pressure), frame);
  const line = (falls: readonly Fall[]): string =>
    runsOf(falls)
      .map((run) => `M${run.map(xy).join("L")}`)
      .join("");
  const falls = fallsOf(now ?? pane);
  return svg`
    <path class="wash" d=${areaTo(falls, at(levels.low), frame, at)} />
    ${levels.levels.map((level) => shortfall(level, { falls, levels, frame, at }))}
    ${scale(levels, frame, at)}
    ${levels.levels.map((level) => horizontal(level, frame, at))}
    ${pane.branches.map((falls) => svg`<path class="branch" d=${line(falls)} />`)}
    ${now === null ? nothing : now.branches.map((falls) => svg`<path class="branch soiled" d=${line(falls)} />`)}
    <path class="descent" d=${line(pane.main)} />
    ${now === null ? nothing : svg`<path class="descent soiled" d=${line(now.main)} />${endNames(pane, now, frame, at)}`}`;
}

/** The pixel a pressure is drawn at. */
function place(pressure: number, { low, high }: Levels, frame: Frame): number {
  return frame.low + ((pressure - low) / (high - low)) * (frame.high - frame.low);
}

function pair(along: number, across: number, { upright }: Frame): string {
  return upright ? `${round(across)} ${round(along)}` : `${round(along)} ${round(across)}`;
}

function round(px: number): number {
  return Math.round(px * 10) / 10;
}

/** Stretches of a line without gaps. */
function runsOf(falls: readonly Fall[]): Fall[][] {
  const runs: Fall[][] = [[]];
  for (const fall of falls) {
    if (Number.isFinite(fall[1])) runs.at(-1)?.push(fall);
    else runs.push([]);
  }
  return runs.filter((run) => run.length > 1);
}

/**
 * What lies under a level: under the vapour pressure it boils wherever that is, under a limit it starves where the pump
 * or the engine is, so that only what is still under it at the end counts.
 */
function shortfall(level: Level, { falls, levels, frame, at }: Shortfall) {
  if (level.tone !== "limit" && level.tone !== "vapour") return nothing;
  const last = falls.findLastIndex(([, pressure]) => pressure >= level.pressure);
  const short = level.tone === "vapour" ? falls : falls.slice(Math.max(0, last));
  if (!short.some(([, pressure]) => pressure < level.pressure)) return nothing;
  const clip = `${frame.id}-${level.tone}`;
  return svg`<clipPath id=${clip}>${rect(frame, at(level.pressure), at(levels.low))}</clipPath>
    <g clip-path="url(#${clip})"><path class="starved" d=${areaTo(short, at(levels.high), frame, at)} /></g>`;
}

interface Shortfall {
  readonly falls: readonly Fall[];
  readonly levels: Levels;
  readonly frame: Frame;
  readonly at: (pressure: number) => number;
}

/** The known points of the line in order; through a bank it follows the first branch that flows. */
function fallsOf(pane: Pane): Fall[] {
  const known = [...pane.main.filter(([, pressure]) => Number.isFinite(pressure)), ...throughBanks(pane)];
  return known.sort((a, b) => a[0] - b[0]);
}

/** The area between the line and one side of the pane. */
function areaTo(known: readonly Fall[], side: number, frame: Frame, at: (pressure: number) => number): string {
  const [first, last] = [known[0], known.at(-1)];
  if (first === undefined || last === undefined) return "M0 0";
  const along = known.map(([place, pressure]) => pair(place, at(pressure), frame));
  return `M${[pair(first[0], side, frame), ...along, pair(last[0], side, frame)].join("L")}Z`;
}

function throughBanks({ branches }: Pane): Fall[] {
  const whole = branches.filter((falls) => falls.every(([, pressure]) => Number.isFinite(pressure)));
  // Branches of one bank begin at one place.
  return whole.filter((falls, at) => whole.findIndex(([start]) => start?.[0] === falls[0]?.[0]) === at).flat();
}

function rect(frame: Frame, a: number, b: number): SVGTemplateResult {
  const [near, far] = [Math.min(a, b), Math.max(a, b)];
  const [x, y] = frame.upright ? [near, frame.from] : [frame.from, near];
  const [wide, high] = frame.upright ? [far - near, frame.to - frame.from] : [frame.to - frame.from, far - near];
  return svg`<rect x=${x} y=${y} width=${wide} height=${high} />`;
}

function horizontal(
  { pressure, text, tone }: Levels["levels"][number],
  frame: Frame,
  at: (pressure: number) => number,
) {
  const across = at(pressure);
  const kind = tone.replace(" ", "-");
  const d = `M${pair(frame.from, across, frame)}L${pair(frame.to, across, frame)}`;
  const air = tone === "air";
  const label = frame.upright
    ? svg`<text class="level-text ${kind}" transform="translate(${across - 5} ${frame.to - 8}) rotate(-90)">${text}</text>`
    : svg`<text class="level-text ${kind}" x=${air ? frame.to - 6 : frame.from + 8} y=${across - 6} text-anchor=${air ? "end" : "start"}>${text}</text>`;
  return svg`<path class="across ${kind}" d=${d} />${label}`;
}

/** Figures of absolute pressure along the pane's edge. */
function scale(levels: Levels, frame: Frame, at: (pressure: number) => number) {
  const { size, symbol } = unitOf("absolute pressure", frame.units);
  const room = Math.abs(frame.high - frame.low);
  const shown = ticks(levels.low / size, levels.high / size, frame.upright ? 2 : Math.max(2, Math.floor(room / 60)));
  return shown.map((value, index) => {
    const across = at(value * size);
    const words = `${value}${index === shown.length - 1 ? ` ${symbol}` : ""}`;
    return frame.upright
      ? svg`<path class="tick" d="M${across} ${frame.from}v6" /><text class="tick-text" x=${across} y=${frame.from - 6} text-anchor="middle">${words}</text>`
      : svg`<path class="tick" d="M${frame.from} ${across}h6" /><text class="tick-text" x=${frame.from - 6} y=${across + 5} text-anchor="end">${words}</text>`;
  });
}
