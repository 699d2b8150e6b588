import type { Fault } from "@thirstline/spec";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property, query } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";

/** Asks to read a text again that was put right on the page. */
class AgainEvent extends Event {
  readonly text: string;

  constructor(text: string) {
    super("file-again");
    this.text = text;
  }
}

/**
 * A file that could not be opened: every fault by its line, and the text to put it right in.
 * @fires file-again - with the text as it stands
 * @fires file-leave - when it is given up
 */
@customElement("file-faults")
export class FileFaults extends LitElement {
  static override styles = [
    controlStyles,
    css`
    :host { display: block; border: 2px solid var(--limit); border-radius: 6px; padding: 14px 18px 18px; margin-top: 16px; background: var(--raised); }
    ol { list-style: none; padding: 0; margin: 8px 0 14px; }
    li { padding: 6px 0; border-top: 1px solid var(--rule); }
    code { font-family: var(--mono); font-size: 0.86rem; white-space: pre-wrap; overflow-wrap: anywhere; display: block; color: var(--soft); }
    .fault { color: var(--limit); }
    textarea { width: 100%; min-height: 16rem; box-sizing: border-box; font: 0.86rem/1.5 var(--mono); color: var(--ink); background: var(--paper);
      border: 1px solid var(--edge); border-radius: 4px; padding: 10px; tab-size: 2; white-space: pre; overflow-x: auto; }
    textarea:focus-visible { outline: 3px solid var(--cold); }
    .buttons { display: flex; gap: 8px; margin-top: 8px; flex-wrap: wrap; }
    @media print { :host { display: none; } }
  `,
  ];
  @property({ attribute: false }) file = "";
  @property({ attribute: false }) text = "";
  @property({ attribute: false }) faults: readonly Fault[] = [];
  /** What stays as it was. */
  @property({ attribute: false }) kept = "What was on the sheet is still there.";
  /** Whether the text is shown, to be put right. */
  @property({ attribute: false }) editable = true;
  @query("textarea") private box!: HTMLTextAreaElement;

  override render() {
    const lines = this.text.split(/\r\n?|\n/);
    const count = this.faults.length === 1 ? "one fault" : `${this.faults.length} faults`;
    return html`<div role="alert"><h2>${this.file} was not opened: ${count}</h2>
        <p>${this.kept}</p></div>
      <ol>${this.faults.map(
        ({ line, path, message }) => html`<li><code>${line}  ${(lines[line - 1] ?? "").slice(0, 200)}</code>
        <span class="fault">${path === "" ? "" : `${path}: `}${message}.</span></li>`,
      )}</ol>
      ${
        this.editable
          ? html`<label for="text" class="quiet">The text, to put it right here</label>
      <textarea id="text" spellcheck="false" .value=${this.text}></textarea>`
          : nothing
      }
      <div class="buttons">${this.editable ? html`<button type="button" @click=${() => this.dispatchEvent(new AgainEvent(this.box.value))}>Read it again</button>` : nothing}
        <button type="button" @click=${() => this.dispatchEvent(new Event("file-leave"))}>Leave it</button></div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "file-faults": FileFaults;
  }
  interface HTMLElementEventMap {
    "file-again": AgainEvent;
    "file-leave": Event;
  }
}
