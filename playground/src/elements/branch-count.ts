import type { System } from "@thirstline/spec/system";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import { branchedIn, MOST_BRANCHES, setBranches } from "../edit/setBranches.js";
import { controlStyles } from "../look/sheetStyles.js";
import { EditEvent } from "../model/events.js";
import type { Chosen } from "../model/Place.js";

/**
 * How many branches stand side by side: in the bank that is chosen, else in the first.
 * @fires sheet-edit
 */
@customElement("branch-count")
export class BranchCount extends LitElement {
  static override styles = [
    controlStyles,
    css`
    :host { display: block; border-top: 1px solid var(--rule); padding-top: 10px; min-width: 0; }
    h2 { margin: 0; font-size: 0.95rem; font-weight: 450; color: var(--soft); overflow-wrap: anywhere; }
    label { display: block; font-size: 0.95rem; font-weight: 600; }
    .row { display: flex; margin-top: 2px; }
    button { width: 48px; padding: 0; font-size: 1.2rem; }
    button:first-child { border-radius: 4px 0 0 4px; }
    button:last-child { border-radius: 0 4px 4px 0; }
    input { font: inherit; font-size: 1.05rem; font-weight: 650; color: var(--ink); background: var(--raised); border: 1px solid var(--edge); border-width: 1px 0;
      width: 3.2rem; min-height: 44px; box-sizing: border-box; text-align: center; border-radius: 0; -moz-appearance: textfield; appearance: textfield; }
    input::-webkit-inner-spin-button { display: none; }
    input:focus-visible { outline: 3px solid var(--cold); outline-offset: 1px; z-index: 1; }
  `,
  ];
  @property({ attribute: false }) system!: System;
  @property({ attribute: false }) chosen: Chosen | null = null;

  override render() {
    const found = branchedIn(this.system, this.chosen);
    if (found === null) return nothing;
    const { part, count } = found;
    const inside =
      part.part === "bank" ? part.branches.map((branch) => branch.map(({ name }) => name).join(", ")) : [part.name];
    return html`<h2>${inside.slice(0, 3).join(" · ")}${inside.length > 3 ? " …" : ""}</h2>
      <label for="count">Number of branches</label>
      <div class="row"><button type="button" aria-label="One branch fewer" ?disabled=${count <= 1} @click=${() => this.set(count - 1)}>−</button>
        <input id="count" type="number" min="1" max=${MOST_BRANCHES} step="1" required .value=${live(String(count))} @change=${this.onCount} />
        <button type="button" aria-label="One branch more" ?disabled=${count >= MOST_BRANCHES} @click=${() => this.set(count + 1)}>+</button></div>`;
  }

  private onCount(event: Event): void {
    const input = event.target as HTMLInputElement;
    if (input.reportValidity()) this.set(input.valueAsNumber);
  }

  private set(count: number): void {
    const found = branchedIn(this.system, this.chosen);
    if (found === null) return;
    this.dispatchEvent(new EditEvent((system) => setBranches(system, found.place, count)));
    this.requestUpdate();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "branch-count": BranchCount;
  }
}
