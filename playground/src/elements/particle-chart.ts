import { type LifeAnswer, protectionWords, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import { inksOf } from "../chart/inksOf.js";
import { copyOf } from "../drawing/copyOf.js";
import { drawingText, tag } from "../drawing/tag.js";
import { drawParticles, PARTICLE_HEIGHT, ParticleFrame } from "../life/drawParticles.js";
import { particleColumns, particleReadings, sizeLines } from "../life/particles.js";
import { fileNameOf } from "../model/saveFile.js";
import { stepByKey } from "../model/stepByKey.js";
import { WidthController } from "../model/WidthController.js";
import { wordsHtml } from "../words/wordsHtml.js";
import { ownFigure } from "../working/figureButton.js";
import { lifeFigures } from "../working/lifeFigures.js";
import { whyStyles } from "../working/whyStyles.js";
import "./chart-frame.js";

/** How clean the fuel is on its way: particles of three sizes at each place, and what the injection pump asks for. */
@customElement("particle-chart")
export class ParticleChart extends LitElement {
  static override styles = css`
    ${whyStyles}
    :host { display: block; }
    svg { display: block; width: 100%; touch-action: pan-y; }
    svg:focus-visible { outline: 3px solid var(--cold); outline-offset: 2px; border-radius: 4px; }
    text { font: 13px var(--face); fill: var(--soft); font-variant-numeric: tabular-nums; }
    .narrow .place, .narrow .code { font-size: 12px; }
    .narrow .code { letter-spacing: -0.02em; }
    .rule { stroke: var(--rule); fill: none; }
    .counts { fill: none; stroke: var(--ink); stroke-width: 3; stroke-linejoin: round; }
    .size-1 { stroke-width: 2.25; stroke-dasharray: 9 5; }
    .size-2 { stroke-width: 2; stroke-dasharray: 2.5 4; }
    .spot { fill: var(--fuel-bright); stroke: var(--ink); stroke-width: 1.75; }
    .asked { fill: none; stroke: var(--limit); stroke-width: 3; }
    .asked-text { fill: var(--limit); font-weight: 600; paint-order: stroke; stroke: var(--paper); stroke-width: 4; stroke-linejoin: round; }
    .end { fill: var(--ink); font-weight: 600; }
    .code { fill: var(--ink); font-weight: 650; }
    .cross { stroke: var(--ink); stroke-width: 1; stroke-dasharray: 3 3; }
    p { margin: 0 0 8px; font-size: 0.95rem; }
    .quiet { font-size: 0.86rem; color: var(--soft); margin: 0 0 6px; }
    .figure { font-weight: 650; }
  `;
  @property({ attribute: false }) answer!: LifeAnswer;
  @property() units: UnitSystem = "metric";
  /** Place that was pointed at last, or gone to with the keys; null for the last on the way. */
  @state() private place: number | null = null;
  @query("svg") private readonly drawn!: SVGSVGElement | null;
  private readonly room = new WidthController(this);

  override render() {
    const { answer } = this;
    const last = answer.cleanliness.length - 1;
    // Another system may have fewer places.
    const place = this.place === null ? null : Math.min(this.place, last);
    const words = protectionWords(answer);
    return html`<chart-frame heading="How clean the fuel is on its way" .file=${`${fileNameOf(answer.system)}-particles`}
        .at=${answer.cleanliness[place ?? last]?.place ?? ""} .readings=${particleReadings(answer, place ?? last, ownFigure)}
        .columns=${() => particleColumns(answer)} .drawing=${() => this.drawing()}>
      <p class="quiet">Particles per mL of 4, 6 and 14 µm(c) and up; each step up is ten times as many.</p>
      ${this.room.ruler()}
      ${this.room.width < 120 ? nothing : this.picture()}
      ${words === null ? nothing : html`<p slot="said">${wordsHtml(words, lifeFigures(answer))}</p>`}
    </chart-frame>`;
  }

  private picture() {
    const { answer } = this;
    const last = answer.cleanliness.length - 1;
    const at = Math.min(this.place ?? last, last);
    const frame = this.frame();
    const said = [
      answer.cleanliness[at]?.place ?? "",
      ...particleReadings(answer, at).map(({ label, value }) => `${label} ${value}`),
    ];
    return html`<svg class=${frame.narrow ? "narrow" : ""} height=${PARTICLE_HEIGHT} role="slider" tabindex="0" aria-label="Particles per mL at each place of the fuel's way; the keys go along it"
        aria-valuemin="0" aria-valuemax=${last} aria-valuenow=${at} aria-valuetext=${said.join(", ")} @keydown=${this.onKey}
        @pointermove=${(event: PointerEvent) => this.onPoint(event, frame)} @pointerdown=${(event: PointerEvent) => this.onPoint(event, frame)}>${drawParticles(frame, this.answer, this.place)}</svg>`;
  }

  private frame(): ParticleFrame {
    return new ParticleFrame(this.room.width, sizeLines(this.answer));
  }

  private onPoint(event: PointerEvent, frame: ParticleFrame): void {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    this.place = frame.nearest(event.clientX - box.left);
  }

  private onKey(event: KeyboardEvent): void {
    const last = this.answer.cleanliness.length - 1;
    const next = stepByKey(event.key, Math.min(this.place ?? last, last), last);
    if (next === null) return;
    event.preventDefault();
    this.place = next;
  }

  private drawing(): string | null {
    if (!this.drawn) return null;
    const inks = inksOf(this);
    const inside = [...this.drawn.children].map((one) => copyOf(one as SVGElement)).join("");
    const size = { width: this.room.width, height: PARTICLE_HEIGHT };
    return drawingText(size, inks.paper, tag("g", { "font-family": inks.face }, inside));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "particle-chart": ParticleChart;
  }
}
