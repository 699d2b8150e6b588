import type { UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import "../../elements/quantity-field.js";
import type { QuantityField } from "../../elements/quantity-field.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { type Judged, judged } from "../judged.js";
import type { ChoiceQuestion, NumberQuestion, Question } from "../Lesson.js";
import { PredictEvent } from "../lessonEvents.js";
import { lessonStyles } from "../lessonStyles.js";
import { of, wordsOf } from "../words.js";

/**
 * A question, the learner's prediction, and the answer to it once it is committed.
 * @fires lesson-predict - when a prediction is committed
 */
@customElement("lesson-question")
export class LessonQuestion extends LitElement {
  static override styles = [
    controlStyles,
    lessonStyles,
    css`
    form { display: grid; gap: 12px; justify-items: start; margin-top: 10px; }
    quantity-field { width: min(18rem, 100%); }
    fieldset { display: grid; gap: 8px; width: 100%; }
    .pick { display: grid; grid-template-columns: 26px minmax(0, 1fr); gap: 12px; align-items: center; min-height: 44px; box-sizing: border-box; padding: 7px 14px;
      border: 1px solid var(--edge); border-radius: 4px; background: var(--raised); cursor: pointer; line-height: 1.35; }
    .pick input { width: 22px; height: 22px; margin: 0; accent-color: var(--ink); cursor: pointer; }
    .pick:has(:checked) { border-color: var(--ink); box-shadow: inset 0 0 0 1px var(--ink); }
    .pick:has(:focus-visible) { outline: 3px solid var(--cold); outline-offset: 1px; }
    .pick input:focus-visible { outline: none; }
    .answer { margin-top: 18px; border-left: 5px solid var(--edge); padding: 2px 0 2px 16px; }
    .answer.right { border-left-color: var(--fuel); }
    .answer:focus { outline: none; }
    .answer:focus-visible { outline: 3px solid var(--cold); outline-offset: 4px; }
    .lead { font-weight: 700; }
    .asked { font-size: 1.06rem; font-weight: 600; line-height: 1.4; }
    .fault { color: var(--limit); font-weight: 600; font-size: 0.95rem; }
  `,
  ];
  @property({ attribute: false }) question!: Question;
  @property() units: UnitSystem = "metric";
  /** A number that was typed, SI, or the place of the choice that was picked; null for none yet. */
  @state() private picked: number | null = null;
  @state() private committed: number | null = null;
  @state() private fault = "";
  @query(".answer") private readonly answer!: HTMLElement | null;
  @query("quantity-field") private readonly field!: QuantityField | null;

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has("question")) return;
    this.picked = null;
    this.committed = null;
    this.fault = "";
  }

  override render() {
    const { question, units, committed, fault } = this;
    const found = committed === null ? null : judged(question, committed);
    return html`<div class="column">
      <p class="asked" id="asked">${wordsOf(question.ask, units)}</p>
      <form @submit=${this.onSubmit} @keydown=${this.onKey}>
        ${question.form === "number" ? this.box(question) : this.choices(question)}
        <button type="submit" class=${committed === null ? "main" : ""}>${committed === null ? "That is my prediction" : "Predict again"}</button>
      </form>
      ${fault === "" ? nothing : html`<p class="fault" role="alert">${fault}</p>`}
      <div role="status">${found === null ? nothing : this.said(found)}</div></div>`;
  }

  private box({ label, kind, reads, near }: NumberQuestion) {
    const { units } = this;
    return html`<quantity-field .label=${`${label}, with a unit`} .kind=${kind} .reads=${reads} .units=${units} .value=${this.picked} optional
        @value-changed=${(event: HTMLElementEventMap["value-changed"]) => {
          this.picked = event.value;
        }}></quantity-field>
      <p class="quiet">Any unit will do. Within ${wordsOf([of(near, "ratio")], units)} counts as near.</p>`;
  }

  private choices({ choices }: ChoiceQuestion) {
    return html`<fieldset aria-labelledby="asked">${choices.map(
      (
        { label },
        at,
      ) => html`<label class="pick"><input type="radio" name="choice" value=${at} .checked=${this.picked === at}
        @change=${() => {
          this.picked = at;
          this.fault = "";
        }} /><span>${wordsOf(label, this.units)}</span></label>`,
    )}</fieldset>`;
  }

  private said({ right, words }: Judged) {
    const lead = right ? "Yes." : "Not this time.";
    return html`<div class=${right ? "answer right" : "answer"} tabindex="-1"><p><span class="lead">${lead}</span> ${wordsOf(words, this.units)}</p></div>`;
  }

  private onSubmit(event: Event): void {
    event.preventDefault();
    void this.commit();
  }

  /** Enter in the box commits: it stands in a root of its own, from which no form is sent. */
  private onKey(event: KeyboardEvent): void {
    const [target] = event.composedPath();
    if (event.key === "Enter" && target instanceof HTMLInputElement && target.type === "text") {
      event.preventDefault();
      void this.commit();
    }
  }

  private async commit(): Promise<void> {
    if (this.question.form === "number") {
      const read = await this.field?.read();
      if (read === null || read === undefined) return;
      this.picked = read;
    }
    if (this.picked === null) {
      this.fault = "Choose one first: a prediction that is wrong teaches more than none.";
      return;
    }
    this.committed = this.picked;
    this.dispatchEvent(new PredictEvent(this.picked));
    await this.updateComplete;
    this.answer?.focus();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "lesson-question": LessonQuestion;
  }
}
