import type { LifeAnswer } from "@thirstline/study";
import { nothing, type SVGTemplateResult, svg } from "lit";
import { type SizeLine, sizeLines } from "./particles.js";

export const PARTICLE_HEIGHT = 320;
const ROOM = { left: 58, top: 16, bottom: 76 };
/** Narrower than this, px, names are written smaller and closer. */
const NARROW = 480;
/** Counts below this are none, and drawn on the floor. */
const LEAST = 0.01;

/** Where places and counts stand, px. */
export class ParticleFrame {
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly top = ROOM.top;
  readonly narrow: boolean;
  readonly floor = PARTICLE_HEIGHT - ROOM.bottom;
  private readonly places: number;
  /** decades shown, from the floor up */
  readonly decades: readonly number[];

  constructor(width: number, lines: readonly SizeLine[]) {
    this.width = width;
    this.narrow = width < NARROW;
    this.left = this.narrow ? 46 : ROOM.left;
    this.right = width - (this.narrow ? 18 : 60);
    this.places = lines[0]?.counts.length ?? 1;
    const counts = lines.flatMap((one) => [...one.counts, one.asked ?? 0]).filter((one) => one >= LEAST);
    const low = Math.floor(Math.log10(Math.min(1, ...counts)));
    const high = Math.ceil(Math.log10(Math.max(10, ...counts)));
    this.decades = Array.from({ length: high - low + 1 }, (_, at) => low + at);
  }

  x(place: number): number {
    const inset = Math.min(60, (this.right - this.left) / (2 * this.places));
    return this.left + inset + (place / Math.max(1, this.places - 1)) * (this.right - this.left - 2 * inset);
  }

  y(count: number): number {
    const [low = 0] = this.decades;
    const high = this.decades.at(-1) ?? 1;
    const up = Math.max(0, (Math.log10(Math.max(count, 1e-9)) - low) / (high - low));
    return this.floor - up * (this.floor - this.top);
  }

  /** The place nearest to a pixel. */
  nearest(px: number): number {
    const apart = Array.from({ length: this.places }, (_, place) => Math.abs(this.x(place) - px));
    return apart.indexOf(Math.min(...apart));
  }
}

/** Particles of three sizes at each place of the fuel's way, and at its end what is asked for. */
export function drawParticles(frame: ParticleFrame, answer: LifeAnswer, chosen: number | null): SVGTemplateResult {
  const lines = sizeLines(answer);
  const names = labelPlaces(lines.map((line) => frame.y(line.counts.at(-1) ?? 0)));
  return svg`${grid(frame)}
    ${answer.cleanliness.map(({ place, code }, at) => stage(frame, at, place, code))}
    ${chosen === null ? nothing : svg`<path class="cross" d=${`M${frame.x(chosen)} ${frame.top}V${frame.floor}`} />`}
    ${lines.map((line, at) => lineOf(frame, line, at))}
    ${askedWords(frame, answer, lines)}
    ${lines.map((line, at) => svg`<text class="end" x=${frame.x(line.counts.length - 1) + (frame.narrow ? 10 : 16)} y=${(names[at] ?? 0) + 5}>${line.size} µm</text>`)}`;
}

function grid(frame: ParticleFrame): SVGTemplateResult {
  const { left, right, decades } = frame;
  return svg`${decades.map((power) => {
    const y = frame.y(10 ** power);
    return svg`<path class="rule" d=${`M${left} ${y}H${right}`} />
      <text x=${left - 8} y=${y + 5} text-anchor="end">${decade(power)}</text>`;
  })}`;
}

function decade(power: number): string {
  return power < 0 ? (10 ** power).toFixed(-power) : (10 ** power).toLocaleString("en").replaceAll(",", "\u202f");
}

function stage(frame: ParticleFrame, at: number, place: string, code: string): SVGTemplateResult {
  const x = frame.x(at);
  return svg`<text class="code" x=${x} y=${frame.floor + 20} text-anchor="middle">${code}</text>
    ${wrapped(place, frame.narrow ? 9 : 14).map(
      (line, row) =>
        svg`<text class="place" x=${x} y=${frame.floor + 37 + 15 * row} text-anchor="middle">${line}</text>`,
    )}`;
}

/** Words in lines of so many letters at most, where they allow. */
function wrapped(text: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && `${last} ${word}`.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** What the marks across the last place mean. */
function askedWords(frame: ParticleFrame, { protection }: LifeAnswer, lines: readonly SizeLine[]) {
  const highest = Math.max(...lines.map(({ asked }) => asked ?? 0));
  if (protection === null || highest <= 0) return nothing;
  const x = frame.x((lines[0]?.counts.length ?? 1) - 1) + 14;
  return svg`<text class="asked-text" x=${x} y=${frame.y(highest) - 8} text-anchor="end">at most, ${protection.code}</text>`;
}

const marks = ["M-5 -5H5V5H-5Z", "M0 -6.5L6.5 0L0 6.5L-6.5 0Z", "M0 -6L6 5H-6Z"];

function lineOf(frame: ParticleFrame, { counts, asked }: SizeLine, at: number): SVGTemplateResult {
  const spots = counts.map((count, place) => [frame.x(place), frame.y(count)] as const);
  const last = frame.x(counts.length - 1);
  return svg`<path class=${`counts size-${at}`} d=${`M${spots.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}`} />
    ${asked === null ? nothing : svg`<path class="asked" d=${`M${last - 20} ${frame.y(asked)}H${last + 12}`} />`}
    ${spots.map(([x, y]) => svg`<path class="spot" d=${marks[at]} transform=${`translate(${x.toFixed(1)} ${y.toFixed(1)})`} />`)}`;
}

/** Names kept apart, from the bottom up. */
function labelPlaces(ys: readonly number[]): number[] {
  const order = ys.map((y, at) => ({ y, at })).sort((a, b) => b.y - a.y);
  let free = Number.POSITIVE_INFINITY;
  const placed = order.map(({ y, at }) => {
    const there = Math.min(y, free);
    free = there - 17;
    return { there, at };
  });
  return placed.sort((a, b) => a.at - b.at).map(({ there }) => there);
}
