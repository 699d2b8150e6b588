import { quantity, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import "../../elements/fuel-path.js";
import "../../elements/range-control.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { OpenEvent } from "../../model/events.js";
import type { Control, Shows } from "../Lesson.js";
import { lessonStyles } from "../lessonStyles.js";
import { wordsOf } from "../words.js";
import { pointOf } from "../yard/answers.js";
import "./lesson-curve.js";
import "./lesson-particles.js";

type Range = Extract<Control, { by: "range" }>;
/** The slider's own ends lie on round figures of the shown unit, up to so much of its length beyond. */
const BEYOND = 0.02;

/**
 * The live model of a lesson: one control, the drawing, and the figures read off it.
 * @fires sheet-open - to put the system, as it is drawn, on the bench sheet
 */
@customElement("lesson-model")
export class LessonModel extends LitElement {
  static override styles = [
    controlStyles,
    lessonStyles,
    css`
    .side { display: grid; grid-template-columns: minmax(0, 1fr); gap: 18px 44px; align-items: start; margin-top: 14px; }
    @media (min-width: 860px) { .side { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); } }
    .choice { max-width: 100%; }
    @media (max-width: 859px) {
      .side { display: contents; }
      .control { position: sticky; top: 0; z-index: 1; background: var(--paper); border-bottom: 1px solid var(--rule); padding: 10px 0; margin-bottom: 10px; }
    }
    @media (max-width: 600px) {
      .choice.long { flex-direction: column; align-items: stretch; width: 100%; box-sizing: border-box; }
      .choice.long label + label span { border-left: 0; border-top: 1px solid var(--edge); }
      .control:has(.long) { position: static; }
    }
    legend { font-size: 0.95rem; font-weight: 600; color: var(--ink); margin-bottom: 6px; }
    dl { margin: 0; border-top: 1px solid var(--rule); }
    dl div { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 16px; border-bottom: 1px solid var(--rule); padding: 5px 0; }
    dt { color: var(--soft); }
    dd { margin: 0; font-weight: 650; text-align: right; }
    .drawing { margin-top: 26px; }
    .row { margin-top: 14px; }
    .fault { color: var(--limit); font-weight: 600; margin-top: 8px; }
  `,
  ];
  @property({ attribute: false }) shows!: Shows;
  @property() units: UnitSystem = "metric";
  /** What the page says of the system when it is on the sheet. */
  @property() from = "";
  @state() private value = 0;
  @state() private fault = "";

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has("shows")) return;
    this.value = this.shows.control.start;
    this.fault = "";
  }

  override render() {
    const { shows, units, value } = this;
    return html`<p class="column">${wordsOf(shows.caption, units)}</p>
      <div class="side"><div class="control">${this.control(shows.control)}</div>
        <dl aria-live="polite">${shows
          .reads(value)
          .map(({ label, words }) => html`<div><dt>${label}</dt><dd>${wordsOf(words, units)}</dd></div>`)}</dl></div>
      ${this.fault === "" ? nothing : html`<p class="fault" role="alert">${this.fault}</p>`}
      <div class="drawing">${this.drawing()}</div>
      <p class="row"><button type="button" @click=${this.onOpen}>Open this on the sheet</button></p>`;
  }

  private control(control: Control): TemplateResult {
    const { units, value } = this;
    if (control.by === "range") {
      const { label, min, max, kind, reads, cold = false } = control;
      return html`<range-control ?cold=${cold} .label=${label} .value=${value} .min=${min} .max=${max} .kind=${kind} .reads=${reads}
        .units=${units} @value-changed=${(event: HTMLElementEventMap["value-changed"]) => this.onValue(event.value, control)}></range-control>`;
    }
    const { label, options } = control;
    return html`<fieldset><legend>${label}</legend><div class=${options.length > 5 ? "choice long" : "choice"}>${options.map(
      (option) => html`<label><input type="radio" name="value" .checked=${option.value === value}
        @change=${() => {
          this.value = option.value;
        }} /><span>${wordsOf(option.label, units)}</span></label>`,
    )}</div></fieldset>`;
  }

  private drawing(): TemplateResult {
    const { shows, units, value } = this;
    const figure = shows.figure(value);
    switch (figure.draws) {
      case "path":
        return html`<fuel-path still .system=${figure.system} .point=${pointOf(figure.system)} .units=${units}></fuel-path>`;
      case "curve":
        return html`<lesson-curve .figure=${figure} .units=${units}></lesson-curve>`;
      case "particles":
        return html`<lesson-particles .figure=${figure}></lesson-particles>`;
    }
  }

  /** The exact box takes any figure; the drawing is made for those between the ends. */
  private onValue(value: number | null, { min, max, kind }: Range): void {
    const room = BEYOND * (max - min);
    const inside = value !== null && value >= min - room && value <= max + room;
    const ends = [min, max].map((one) => quantity(one, kind, this.units));
    this.fault = inside ? "" : `This drawing goes from ${ends[0]} to ${ends[1]}.`;
    if (inside) this.value = value;
  }

  private onOpen(): void {
    this.dispatchEvent(new OpenEvent(this.shows.system(this.value), this.from));
    location.hash = "sheet";
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "lesson-model": LessonModel;
  }
}
