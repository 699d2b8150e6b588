import type { System } from "@thirstline/spec/system";
import {
  type SwapAnswer,
  type SwapVerdict,
  swapReasonText,
  swapRows,
  swapSentence,
  type UnitSystem,
  type Weight,
} from "@thirstline/study";
import { css, html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { chooseStyles } from "./chooseStyles.js";
import "./pair-chart.js";

const chips: Readonly<Record<SwapVerdict, readonly [words: string, look: string]>> = {
  yes: ["yes", ""],
  "with care": ["with care", "care"],
  no: ["no", "no"],
  "cannot say": ["cannot say", "unknown"],
};

import { unbroken } from "./unbroken.js";

/** What stands before a reason of each weight. */
const weights: Readonly<Record<Weight, string>> = { no: "No", "cannot say": "Not known", care: "Care", note: "Note" };

/**
 * The answer to a swap: a sentence, why, and both beside each other.
 * @fires swap-use - when it is to be fitted
 */
@customElement("swap-answer")
export class SwapAnswerElement extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    css`
    ul { list-style: none; padding: 0; margin: 0 0 20px; max-width: 46em; }
    li { display: grid; grid-template-columns: 5.4rem minmax(0, 1fr); gap: 0 8px; padding: 6px 0; border-top: 1px solid var(--rule); }
    li b { font-weight: 650; }
    li.no b, li.no span { color: var(--limit); }
    li.note b { color: var(--soft); font-weight: 400; }
    table { max-width: 46rem; }
    thead th { vertical-align: bottom; }
    td.number { white-space: normal; }
    .differs { font-weight: 650; }
    pair-chart { margin-top: 28px; max-width: 46rem; }
    .row { margin: 4px 0 24px; }
    @media (max-width: 560px) {
      li { grid-template-columns: minmax(0, 1fr); }
      td, th { padding-right: 8px; font-size: 0.86rem; }
      tbody th { width: 40%; }
      td:last-child, th:last-child { padding-right: 0; }
    }
  `,
  ];
  @property({ attribute: false }) answer!: SwapAnswer;
  @property({ attribute: false }) system!: System;
  /** The system with it fitted. */
  @property({ attribute: false }) changed!: System;
  @property({ attribute: false }) units: UnitSystem = "metric";

  override render() {
    const { answer, units } = this;
    const [words, look] = chips[answer.verdict];
    const rows = swapRows(answer, units).filter(({ name }) => name !== "element");
    return html`<p class=${`chip ${look}`}>${words}</p>
      <p class="sentence" role="status">${unbroken(swapSentence(answer, units))}</p>
      <ul aria-label="Why">${answer.reasons.map(
        (reason) =>
          html`<li class=${reason.weight === "cannot say" ? "unknown" : reason.weight}><b>${weights[reason.weight]}</b><span>${unbroken(swapReasonText(reason, answer, units))}</span></li>`,
      )}</ul>
      <div class="row"><button type="button" class="main" @click=${() => this.dispatchEvent(new Event("swap-use"))}>Use this</button>
        <span class="quiet">${useWords(answer.verdict)}</span></div>
      <table><caption class="unseen">What is fitted now beside ${answer.with}</caption>
        <thead><tr><td></td><th scope="col" class="number">${answer.now.element} <span class="unit">now</span></th><th scope="col" class="number">${answer.changed.element}</th></tr></thead>
        <tbody>${rows.map(
          ({ name, now, changed }) =>
            html`<tr><th scope="row">${name}</th><td class="number">${now || "–"}</td><td class=${now === changed ? "number" : "number differs"}>${changed || "–"}</td></tr>`,
        )}</tbody></table>
      <pair-chart .fitted=${this.system} .other=${this.changed} .temperature=${answer.changed.cold.temperature}
        .names=${[answer.now.element, answer.changed.element]} .units=${units}></pair-chart>`;
  }
}

/** What to know before it is put on the sheet. */
function useWords(verdict: SwapVerdict): string {
  if (verdict === "no") return "Puts it on the sheet to look at; do not fit it.";
  if (verdict === "cannot say") return "Puts it on the sheet to look at; ask the maker before you fit it.";
  return "Puts it on the sheet; one Undo takes it back.";
}

declare global {
  interface HTMLElementTagNameMap {
    "swap-answer": SwapAnswerElement;
  }
  interface HTMLElementEventMap {
    "swap-use": Event;
  }
}
