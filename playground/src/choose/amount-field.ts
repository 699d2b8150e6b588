import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import { ValueEvent } from "../model/events.js";

/**
 * Box for an amount of money in the catalogue's own currency; empty for none.
 * @fires value-changed - after a good entry; null when it was emptied
 */
@customElement("amount-field")
export class AmountField extends LitElement {
  static override styles = css`
    :host { display: block; }
    label { display: block; font-size: 0.86rem; color: var(--soft); }
    input { font: inherit; font-size: 1rem; color: var(--ink); background: var(--raised); border: 1px solid var(--edge); border-radius: 4px;
      padding: 0 10px; height: 44px; width: 100%; box-sizing: border-box; font-variant-numeric: tabular-nums; }
    input:focus-visible { outline: 3px solid var(--cold); outline-offset: 1px; }
    input[aria-invalid="true"] { border-color: var(--limit); border-width: 2px; }
    p { color: var(--limit); font-size: 0.86rem; line-height: 1.35; margin: 4px 0 0; }
  `;
  @property() label = "";
  @property({ attribute: false }) value: number | null = null;
  @state() private error = "";

  override render() {
    const { error, value } = this;
    return html`<label>${this.label}<input type="text" inputmode="decimal" autocomplete="off" .value=${live(value === null ? "" : String(value))}
        aria-invalid=${error === "" ? "false" : "true"} aria-describedby=${error === "" ? nothing : "fault"} @change=${this.onChange} /></label>
      ${error === "" ? nothing : html`<p id="fault" role="alert">${error}</p>`}`;
  }

  private onChange(event: Event): void {
    const text = (event.target as HTMLInputElement).value.trim();
    const good = text === "" || /^\d{1,9}(\.\d+)?$/.test(text);
    this.error = good ? "" : `"${text}" is not an amount; write a number without its currency, such as 60`;
    if (!good) return;
    this.value = text === "" ? null : Number(text);
    this.dispatchEvent(new ValueEvent(this.value));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "amount-field": AmountField;
  }
}
