import type { System } from "@thirstline/spec/system";
import type { UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { judged } from "../judged.js";
import type { Lesson, Told } from "../Lesson.js";
import { StageEvent } from "../lessonEvents.js";
import { lessonStyles } from "../lessonStyles.js";
import { type Words, wordsOf } from "../words.js";
import { pointOf } from "../yard/answers.js";
import "./lesson-model.js";
import "./lesson-question.js";

/** Where the machine as it is fits under the question without pushing it away. */
const ROOM_TO_LOOK = "(min-width: 1000px)";

/**
 * One lesson, step by step: the situation and a prediction; once that is committed the live model, the reasons and a
 * second case.
 * @fires lesson-stage - when the lesson is begun, and when it is done
 */
@customElement("lesson-view")
export class LessonView extends LitElement {
  static override styles = [
    controlStyles,
    lessonStyles,
    css`
    @media (min-width: 1000px) { .pair { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); gap: 0 56px; align-items: start; } }
    .look { margin-top: 14px; }
    .machine fuel-path { margin-top: 24px; }
    .where { display: flex; flex-wrap: wrap; gap: 0 20px; align-items: center; font-size: 0.95rem; margin-top: 14px; }
    .where a { display: inline-flex; align-items: center; min-height: 44px; }
    .after { color: var(--soft); }
    .working { border-left: 5px solid var(--rule); padding: 4px 0 4px 16px; margin: 16px 0 0; }
    h4 { font-size: 0.95rem; margin: 22px 0 0; }
    .safety { border: 2px solid var(--limit); border-radius: 4px; padding: 10px 16px; margin-top: 20px; }
    .safety h3 { font-size: 0.95rem; color: var(--limit); margin: 0 0 2px; }
    .sources { margin-top: 14px; }
    .end { border-top: 2px solid var(--ink); padding-top: 16px; margin-top: 44px; }
    .end p { margin-bottom: 10px; }
  `,
  ];
  @property({ attribute: false }) lesson!: Lesson;
  @property({ attribute: false }) told!: Told;
  @property() units: UnitSystem = "metric";
  /** Where it stands among the lessons: "Lesson 3 of 9". */
  @property() where = "";
  /** The one after it; null for the last. */
  @property({ attribute: false }) next: Lesson | null = null;
  /** The system of the live model before it is changed. */
  private asShown!: System;
  @state() private looking = false;
  @state() private step: "predict" | "shown" | "done" = "predict";

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("told")) this.asShown = this.told.shows.system(this.told.shows.control.start);
    if (!changed.has("lesson")) return;
    this.step = "predict";
    this.looking = matchMedia(ROOM_TO_LOOK).matches;
  }

  override render() {
    const { lesson, told, where } = this;
    return html`<article>
      <p class="where"><a href="#lessons">All lessons</a><span class="quiet">${where}</span></p>
      <h2 class="title" tabindex="-1">${lesson.title}</h2>
      <p class="column after">After it you can ${lesson.after}.</p>
      <div class="pair">
      <section aria-labelledby="situation"><h3 id="situation">The situation</h3><div class="column">${this.paragraphs(told.situation)}</div>
        <button type="button" class="look" aria-expanded=${this.looking} aria-controls="machine" @click=${() => {
          this.looking = !this.looking;
        }}>${this.looking ? "Put the drawing away" : "Look at the machine as it is now"}</button></section>
      <section aria-labelledby="predict"><h3 id="predict">Predict first</h3>
        <lesson-question .question=${told.first} .units=${this.units} @lesson-predict=${this.onFirst}></lesson-question></section></div>
      ${this.machine()}
      ${this.step === "predict" ? nothing : this.rest()}</article>`;
  }

  /** Puts the keyboard on the lesson's name. */
  toTitle(): void {
    this.renderRoot.querySelector<HTMLElement>("h2")?.focus();
  }

  private rest() {
    const { lesson, told, units } = this;
    const { safety = [], sources = [] } = told;
    return html`
      <section aria-labelledby="model"><h3 id="model">The machine, drawn and reckoned</h3>
        <lesson-model .shows=${told.shows} .units=${units} .from=${`From the lesson: ${lesson.title}.`}></lesson-model></section>
      <div class="pair"><section aria-labelledby="why"><h3 id="why">Why</h3><div class="column">${this.paragraphs(told.explanation)}</div></section>
      <section aria-labelledby="figures"><h3 id="figures">In figures</h3><div class="working">${this.paragraphs(told.working)}</div>
      ${this.stepByStep()}
      ${
        safety.length === 0
          ? nothing
          : html`<div class="safety column"><h3>Before you touch it</h3>${this.paragraphs(safety)}</div>`
      }
      ${sources.map((words) => html`<p class="quiet column sources">${wordsOf(words, units)}</p>`)}</section></div>
      <section aria-labelledby="second"><h3 id="second">Another case</h3>
        <lesson-question .question=${told.second} .units=${units} @lesson-predict=${this.onSecond}></lesson-question></section>
      ${this.end()}`;
  }

  /** How the calculation reaches the figures that explain it, fetched when the reasons are shown. */
  private stepByStep() {
    const { explains } = this.told;
    if (explains.length === 0) return nothing;
    void import("../../working/lesson-working.js");
    return html`<h4>How the calculation reaches it</h4>
      <lesson-working .system=${this.asShown} .figures=${explains} .units=${this.units}></lesson-working>`;
  }

  private end() {
    const { next, step } = this;
    const words =
      step === "done"
        ? "Done: you had the second case right."
        : "The lesson counts as done once the second case is right.";
    return html`<div class="end"><p>${words}</p><div class="row">
      ${next ? html`<a class=${step === "done" ? "button main" : "button"} href=${`#lessons/${next.id}`}>Next: ${next.title}</a>` : html`<a class="button" href="#lessons">All lessons</a>`}
      <button type="button" @click=${() => this.dispatchEvent(new Event("lesson-print", { bubbles: true, composed: true }))}>Print this lesson</button></div></div>`;
  }

  /** The machine before anything is changed, for who wants to look before predicting. */
  private machine() {
    const { machine } = this.told;
    return html`<div id="machine" class="machine">${
      this.looking
        ? html`<fuel-path still .system=${machine} .point=${pointOf(machine)} .units=${this.units}></fuel-path>`
        : nothing
    }</div>`;
  }

  private paragraphs(all: readonly Words[]) {
    return all.map((words) => html`<p>${wordsOf(words, this.units)}</p>`);
  }

  private onFirst(): void {
    if (this.step === "predict") {
      this.step = "shown";
      this.looking = false;
    }
    this.dispatchEvent(new StageEvent("begun"));
  }

  private onSecond({ prediction }: HTMLElementEventMap["lesson-predict"]): void {
    if (!judged(this.told.second, prediction).right) return;
    this.step = "done";
    this.dispatchEvent(new StageEvent("done"));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "lesson-view": LessonView;
  }
}
