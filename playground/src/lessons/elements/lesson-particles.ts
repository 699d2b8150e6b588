import { css, html, svg, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { ParticleChart } from "../../elements/particle-chart.js";
import { drawParticles, PARTICLE_HEIGHT, ParticleFrame } from "../../life/drawParticles.js";
import { countText, particleReadings, type SizeLine, sizeLines } from "../../life/particles.js";
import type { ParticlesFigure } from "../Figure.js";
import { LessonDrawing } from "./lesson-drawing.js";

/** The sheet's drawing of the particles left in the fuel, place by place, with every count written beside its mark. */
@customElement("lesson-particles")
export class LessonParticles extends LessonDrawing {
  static override styles = [
    ParticleChart.styles,
    css`
    p { font-size: 0.86rem; color: var(--soft); }
    svg { overflow: visible; }
    .count { paint-order: stroke; stroke: var(--paper); stroke-width: 4; stroke-linejoin: round; }
  `,
  ];
  @property({ attribute: false }) figure!: ParticlesFigure;

  protected override drawn(width: number): TemplateResult {
    const { answer } = this.figure;
    const lines = sizeLines(answer);
    const frame = new ParticleFrame(width, lines);
    return html`<p>Particles in a millilitre of fuel, of 4, 6 and 14 µm(c) and up; each step up is ten times as many.</p>
      <svg class=${frame.narrow ? "narrow" : ""} .style=${`width:${width}px`} height=${PARTICLE_HEIGHT} role="img" aria-label=${this.inWords()}>
        ${drawParticles(frame, answer, null)}${lines.map((line, at) => written(frame, line, at))}</svg>`;
  }

  private inWords(): string {
    const { title, answer } = this.figure;
    const each = answer.cleanliness.map(({ place }, at) => {
      const read = particleReadings(answer, at).map(({ label, value }) => `${label} ${value}`);
      return `${place}: ${read.join(", ")}`;
    });
    return `${title}. ${each.join(". ")}.`;
  }
}

/**
 * The counts of one size on the way: those of the smallest stand over their marks, the rest under, so that lines stay
 * apart. The last place, where names and what is asked for stand, has its counts among the figures read off.
 */
function written(frame: ParticleFrame, { counts }: SizeLine, line: number) {
  const beside = line === 0 ? -11 : 20;
  // Where room is short they keep away from what is asked for at the next place.
  const aside = frame.narrow ? 8 : 0;
  return counts
    .slice(0, -1)
    .map(
      (count, place) =>
        svg`<text class="count" x=${frame.x(place) + aside} y=${frame.y(count) + beside} text-anchor=${frame.narrow ? "end" : "middle"}>${countText(count)}</text>`,
    );
}

declare global {
  interface HTMLElementTagNameMap {
    "lesson-particles": LessonParticles;
  }
}
