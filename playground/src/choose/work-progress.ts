import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";

/**
 * How far some work is, with a way to put an end to it; nothing while there is none.
 * @fires work-stop - when it is not wanted any more
 */
@customElement("work-progress")
export class WorkProgress extends LitElement {
  static override styles = [
    controlStyles,
    css`
    :host { display: block; }
    div { display: flex; flex-wrap: wrap; gap: 4px 16px; align-items: center; min-height: 48px; }
    progress { width: min(18rem, 100%); height: 10px; accent-color: var(--fuel); }
    span { font-size: 0.95rem; color: var(--soft); }
    @media print { :host { display: none; } }
  `,
  ];
  @property({ attribute: false }) progress: { words: string; done: number; of: number } | null = null;

  override render() {
    if (this.progress === null || this.progress.words === "") return nothing;
    const { words, done, of } = this.progress;
    return html`<div><progress max=${of} .value=${done} aria-label=${words}></progress>
      <span>${words}: ${Math.floor((100 * done) / of)} %</span>
      <button type="button" @click=${() => this.dispatchEvent(new Event("work-stop"))}>Stop</button></div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "work-progress": WorkProgress;
  }
  interface HTMLElementEventMap {
    "work-stop": Event;
  }
}
