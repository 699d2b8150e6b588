import { capital } from "@thirstline/study";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { lessons } from "../index.js";
import { lessonStyles } from "../lessonStyles.js";
import type { Progress } from "../progress.js";

/**
 * What there is to learn, in order, and how far the learner has come.
 * @fires lesson-print-all - to print every lesson's sheets
 * @fires lesson-forget - to forget the progress
 */
@customElement("lesson-contents")
export class LessonContents extends LitElement {
  static override styles = [
    controlStyles,
    lessonStyles,
    css`
    ol { list-style: none; margin: 26px 0 0; padding: 0; max-width: 58em; border-top: 1px solid var(--rule); counter-reset: lesson; }
    li { border-bottom: 1px solid var(--rule); counter-increment: lesson; }
    li a { display: grid; grid-template-columns: 2.2rem minmax(0, 1fr) auto; gap: 0 12px; align-items: baseline; padding: 11px 0; min-height: 44px; box-sizing: border-box; text-decoration: none; }
    li a::before { content: counter(lesson); font-size: 1.5rem; font-weight: 300; color: var(--soft); line-height: 1.2; }
    li a:hover .name { text-decoration: underline; text-decoration-color: var(--fuel); text-decoration-thickness: 2px; text-underline-offset: 4px; }
    .name { font-size: 1.12rem; font-weight: 650; }
    .can { grid-column: 2; color: var(--soft); }
    .stage { grid-row: 1; grid-column: 3; font-size: 0.95rem; white-space: nowrap; }
    .stage.done { font-weight: 650; }
    .row { margin-top: 26px; }
    .column { margin-top: 4px; }
  `,
  ];
  @property({ attribute: false }) progress: Progress = {};

  override render() {
    const { progress } = this;
    const begun = Object.keys(progress).length > 0;
    return html`<h2 class="title" tabindex="-1">Lessons</h2>
      <p class="column">Each puts a machine of the yard before you and asks what will happen. Say so first; then see what the calculation says, and why. Take them in order or as you need them; under each stands what you will be able to do after it.</p>
      <ol>${lessons.map(({ id, title, after }) => {
        const stage = progress[id];
        return html`<li><a href=${`#lessons/${id}`}><span class="name">${title}</span>
          ${stage ? html`<span class=${`stage ${stage}`}>${stage === "done" ? "Done" : "Begun"}</span>` : nothing}
          <span class="can">${capital(after)}.</span></a></li>`;
      })}</ol>
      <div class="row"><button type="button" @click=${() => this.say("lesson-print-all")}>Print all lessons</button>
        ${begun ? html`<button type="button" @click=${() => this.say("lesson-forget")}>Forget how far I have come</button>` : nothing}</div>
      <p class="quiet column">${
        begun
          ? "How far you have come is kept in this browser only."
          : "For a class: one sheet a lesson to fill in, and one with the answers. Print on one side of the paper."
      }</p>`;
  }

  /** Puts the keyboard on the name of the page. */
  toTitle(): void {
    this.renderRoot.querySelector<HTMLElement>("h2")?.focus();
  }

  private say(what: "lesson-print-all" | "lesson-forget"): void {
    this.dispatchEvent(new Event(what));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "lesson-contents": LessonContents;
  }
}
