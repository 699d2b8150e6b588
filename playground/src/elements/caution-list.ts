import { type Caution, cautionText, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";

/** Cautions about one thing, by that thing; nothing when there are none. */
@customElement("caution-list")
export class CautionList extends LitElement {
  static override styles = css`
    ul { list-style: none; margin: 6px 0 0; padding: 0; font-size: 0.95rem; line-height: 1.4; }
    li { padding: 2px 0 2px 1.5em; position: relative; max-width: 62ch; }
    li::before { content: "!"; position: absolute; left: 0.3em; font-weight: 800; color: var(--limit); }
    @media print { ul { margin: 0; } li { max-width: none; padding-top: 0; padding-bottom: 0; } }
  `;
  @property({ attribute: false }) cautions: readonly Caution[] = [];
  @property() units: UnitSystem = "metric";

  override render() {
    if (this.cautions.length === 0) return nothing;
    return html`<ul>${this.cautions.map((one) => html`<li>${capital(cautionText(one, this.units))}.</li>`)}</ul>`;
  }
}

/** With its first letter large, unless it begins with a name as the file has it. */
function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

declare global {
  interface HTMLElementTagNameMap {
    "caution-list": CautionList;
  }
}
