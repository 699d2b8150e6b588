import { exactQuantity, type QuantityKind, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import { ValueEvent } from "../model/events.js";
import { type Reads, readQuantity } from "../model/readQuantity.js";

/**
 * Box for an exact quantity, typed with any unit of its measure: "12 inHg", "30 gal/h".
 * @fires value-changed - after a good entry; its `value` is SI, null when an optional box was emptied
 */
@customElement("quantity-field")
export class QuantityField extends LitElement {
  static override styles = css`
    :host { display: block; }
    label { display: block; font-size: 0.86rem; color: var(--soft); }
    .quiet { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
    input { font: inherit; font-size: 1rem; color: var(--ink); background: var(--raised); border: 1px solid var(--edge);
      border-radius: 4px; padding: 0 10px; height: 44px; width: 100%; box-sizing: border-box; font-variant-numeric: tabular-nums; }
    input:focus-visible { outline: 3px solid var(--cold); outline-offset: 1px; }
    input[aria-invalid="true"] { border-color: var(--limit); border-width: 2px; }
    [role="alert"] { color: var(--limit); font-size: 0.86rem; line-height: 1.35; margin: 4px 0 0; }
  `;
  @property() label = "";
  /** SI; null for an optional quantity that is not stated. */
  @property({ attribute: false }) value: number | null = null;
  /** How it is shown. */
  @property({ attribute: false }) kind: QuantityKind = "plain";
  /** How it is read: fixes the range that makes sense. */
  @property({ attribute: false }) reads: Reads = "length";
  @property() units: UnitSystem = "metric";
  @property({ type: Boolean }) optional = false;
  /** Whether the label is for screen readers only, where it stands beside the box already. */
  @property({ type: Boolean }) quiet = false;
  @state() private error = "";

  override render() {
    const text = this.value === null ? "" : exactQuantity(this.value, this.kind, this.units);
    return html`<label><span class=${this.quiet ? "quiet" : ""}>${this.label}</span><input type="text" autocomplete="off" spellcheck="false" .value=${live(text)}
        aria-invalid=${this.error === "" ? "false" : "true"} aria-describedby=${this.error === "" ? nothing : "fault"}
        @change=${this.onChange} /></label>
      ${this.error === "" ? nothing : html`<p id="fault" role="alert">${this.error}</p>`}`;
  }

  /** The box shows the value again when it was changed from outside. */
  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has("value") || changed.has("units")) this.error = "";
  }

  /** Reads what stands in the box now, also before it was left; null when that is no quantity, which the box then says. */
  async read(): Promise<number | null> {
    const read = await readQuantity(this.renderRoot.querySelector("input")?.value.trim() ?? "", this.reads);
    if ("value" in read) return read.value;
    this.error = read.fault.message;
    return null;
  }

  private async onChange(event: Event): Promise<void> {
    const text = (event.target as HTMLInputElement).value.trim();
    if (text === "" && this.optional) {
      this.take(null);
      return;
    }
    const read = await readQuantity(text, this.reads);
    if ("fault" in read) this.error = read.fault.message;
    else this.take(read.value);
  }

  private take(value: number | null): void {
    this.error = "";
    this.dispatchEvent(new ValueEvent(value));
    // Shows the value as it stands after the entry, also where it was refused.
    this.requestUpdate();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "quantity-field": QuantityField;
  }
}
