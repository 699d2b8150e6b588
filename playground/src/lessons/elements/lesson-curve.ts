import { figure as figureOf, quantity, type UnitSystem, unitOf } from "@thirstline/study";
import { html, nothing, svg, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { ticks } from "../../path/ticks.js";
import type { Axis, CurveFigure, Point } from "../Figure.js";
import { along } from "../yard/readingsOver.js";
import { LessonDrawing } from "./lesson-drawing.js";

const ROOM = { left: 54, right: 14, top: 34, bottom: 50 };
const HEIGHT = 340;
const PAPER_HEIGHT = 210;
/** Room for the name of the second line, px. */
const WORDS = 110;

/** One line over one quantity, its limits, and a point that the control moves. */
@customElement("lesson-curve")
export class LessonCurve extends LessonDrawing {
  @property({ attribute: false }) figure!: CurveFigure;
  @property() units: UnitSystem = "metric";

  protected override drawn(width: number, paper: boolean): TemplateResult {
    const { figure, units } = this;
    const height = paper ? PAPER_HEIGHT : HEIGHT;
    const [right, bottom] = [width - ROOM.right, height - ROOM.bottom];
    const most = {
      x: greatest(figure, 0),
      y: Math.max(greatest(figure, 1), ...figure.levels.map(({ value }) => value)) * 1.06,
    };
    const x = (value: number) => ROOM.left + (value / most.x) * (right - ROOM.left);
    const y = (value: number) => bottom - (value / most.y) * (bottom - ROOM.top);
    const path = (line: readonly Point[]) =>
      `M${line.map(([px, py]) => `${x(px).toFixed(1)} ${y(py).toFixed(1)}`).join("L")}`;
    const [atX, atY] = figure.at;
    const { other } = figure;
    const [endX] = other?.line.at(-1) ?? [0, 0];
    // Under the line also where the words begin, where a rising line is lower.
    const under = (line: readonly Point[]) => y(along(line, endX - (WORDS / (right - ROOM.left)) * most.x)) + 18;
    const [firstX] = figure.line[0] ?? [0];
    return html`<svg width=${width} height=${height} role="img" aria-label=${this.inWords()}>
      <path class="wash" d=${`${path(figure.line)}L${x(greatest(figure, 0))} ${bottom}H${x(firstX)}Z`} />
      ${marks(figure.x, most.x, units).map(
        ({ value, text }) =>
          svg`<path class="tick" d="M${x(value)} ${ROOM.top}V${bottom}" /><text x=${x(value)} y=${bottom + 19} text-anchor="middle">${text}</text>`,
      )}
      ${marks(figure.y, most.y, units).map(
        ({ value, text }) =>
          svg`<path class="tick" d="M${ROOM.left} ${y(value)}H${right}" /><text x=${ROOM.left - 8} y=${y(value) + 4} text-anchor="end">${text}</text>`,
      )}
      <text x=${(ROOM.left + right) / 2} y=${height - 8} text-anchor="middle">${named(figure.x, units)}</text>
      <text x=${ROOM.left - 46} y="14">${named(figure.y, units)}</text>
      ${figure.levels.map(
        ({ value, tone }) =>
          svg`<path class=${tone === "limit" ? "limit" : "clean-limit"} d="M${ROOM.left} ${y(value)}H${right}" />`,
      )}
      ${other ? svg`<path class="other" d=${path(other.line)} /><text x=${x(endX) - 4} y=${under(other.line)} text-anchor="end">${other.label}</text>` : nothing}
      <path class="line" d=${path(figure.line)} />
      <path class="drop" d="M${x(atX)} ${y(atY)}V${bottom}M${x(atX)} ${y(atY)}H${ROOM.left}" />
      ${figure.levels.map(
        ({ label, value }) =>
          svg`<text class="limits" x=${ROOM.left + 8} y=${y(value) - 7}>${label}, ${quantity(value, figure.y.kind, units)}</text>`,
      )}
      <circle class="point" cx=${x(atX)} cy=${y(atY)} r="7" />
    </svg>`;
  }

  private inWords(): string {
    const { title, at, x, y } = this.figure;
    return `${title}. At ${quantity(at[0], x.kind, this.units)} it is ${quantity(at[1], y.kind, this.units)}.`;
  }
}

function greatest({ line }: CurveFigure, of: 0 | 1): number {
  return Math.max(...line.map((point) => point[of]));
}

function named({ label, kind }: Axis, units: UnitSystem): string {
  return `${label}, ${unitOf(kind, units).symbol}`;
}

/** Round figures of the shown unit, from 0. */
function marks({ kind }: Axis, most: number, units: UnitSystem): { value: number; text: string }[] {
  const { size } = unitOf(kind, units);
  return ticks(0, most / size).map((shown) => ({
    value: shown * size,
    text: figureOf(shown * size, kind, units).replace(/\.0$/, ""),
  }));
}

declare global {
  interface HTMLElementTagNameMap {
    "lesson-curve": LessonCurve;
  }
}
