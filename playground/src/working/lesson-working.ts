import type { System } from "@thirstline/spec/system";
import type { UnitSystem } from "@thirstline/study";
import { css, html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { proofWords } from "./proofWords.js";
import "./step-working.js";
import { WorkingDesk } from "./WorkingDesk.js";

/** The working of what a lesson explains, in its text: one figure at a time. */
@customElement("lesson-working")
export class LessonWorking extends LitElement {
  static override styles = [
    controlStyles,
    css`
    :host { display: block; margin-top: 16px; }
    .box { border: 1px solid var(--rule); border-radius: 4px; background: var(--raised); padding: 14px 16px 18px; margin-top: 10px; min-height: 12rem; }
    .quiet { margin-top: 8px; }
    @media print { .choice { display: none; } }
  `,
  ];
  @property({ attribute: false }) system!: System;
  /** Figures of the system, as workings name them. */
  @property({ attribute: false }) figures: readonly string[] = [];
  @property() units: UnitSystem = "metric";
  @state() private shown = "";
  private readonly desk = new WorkingDesk(this);

  protected override willUpdate(changed: PropertyValues): void {
    if (!this.figures.includes(this.shown)) this.shown = this.figures[0] ?? "";
    if (changed.has("system") || changed.has("shown") || changed.has("figures"))
      this.desk.ask(this.system, { figure: this.shown, asked: {} });
  }

  override render() {
    return html`${this.choice()}<div class="box">${this.content()}</div>`;
  }

  private choice(): TemplateResult {
    return html`<fieldset class="choice" aria-label="Which figure is worked out">${this.figures.map(
      (figure) =>
        html`<label><input type="radio" name="figure" .checked=${figure === this.shown} @change=${() => {
          this.shown = figure;
        }} /><span>${figure}</span></label>`,
    )}</fieldset>`;
  }

  private content(): TemplateResult {
    const { working, proof, trouble } = this.desk;
    if (trouble !== "") return html`<p role="alert">${trouble}</p>`;
    if (working === null) return html`<p class="quiet">Working it out…</p>`;
    return html`<step-working .working=${working} .units=${this.units}></step-working>
      ${proof === null ? "" : html`<p class="quiet">${proofWords(proof)}</p>`}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "lesson-working": LessonWorking;
  }
}
