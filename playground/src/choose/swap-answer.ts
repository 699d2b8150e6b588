import type { System } from "@thirstline/spec/system";
import {
  capital,
  plain,
  type SwapAnswer,
  type SwapVerdict,
  swapReasonWords,
  swapRows,
  swapSentence,
  type UnitSystem,
  type Weight,
  type Words,
} from "@thirstline/study";
import { css, html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { wordsHtml } from "../words/wordsHtml.js";
import type { Subject } from "../working/Question.js";
import { whyStyles } from "../working/whyStyles.js";
import { choiceFigures } from "./choiceFigures.js";
import { chooseStyles } from "./chooseStyles.js";
import "./pair-chart.js";
import { reasonFigures } from "./reasonFigures.js";
import { unbroken } from "./unbroken.js";

const looks: Readonly<Record<SwapVerdict, string>> = {
  yes: "",
  "with care": "care",
  no: "bad",
  "cannot say": "unknown",
};

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
    whyStyles,
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
    @media print { ul, table, pair-chart { max-width: none; } ul { margin-bottom: 12px; } li { padding: 3px 0; } pair-chart { margin-top: 14px; } }
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
  /** What its figures are of. */
  @property({ attribute: false }) subject!: Subject;
  /** The system with it fitted. */
  @property({ attribute: false }) changed!: System;
  @property({ attribute: false }) units: UnitSystem = "metric";

  override render() {
    const { answer, units, subject } = this;
    const rows = swapRows(answer, units).filter(({ name }) => name !== "element");
    return html`<p class=${`verdict ${looks[answer.verdict]}`}>${capital(answer.verdict)}</p>
      <p class="sentence" role="status">${wordsHtml(unbroken(swapSentence(answer, units)), choiceFigures(subject))}</p>
      <ul aria-label="Why">${answer.reasons.map(
        (reason) =>
          html`<li class=${reason.weight === "cannot say" ? "unknown" : reason.weight}><b>${weights[reason.weight]}</b><span>${wordsHtml(unbroken(swapReasonWords(reason, answer, units)), reasonFigures(reason, subject, units))}</span></li>`,
      )}</ul>
      <div class="row no-print"><button type="button" class="main" @click=${() => this.dispatchEvent(new Event("swap-use"))}>Use this</button>
        <span class="quiet">${useWords(answer.verdict)}</span></div>
      <table><caption class="unseen">What is fitted now beside ${answer.with}</caption>
        <thead><tr><td></td><th scope="col" class="number">${answer.now.element} <span class="unit">now</span></th><th scope="col" class="number">${answer.changed.element}</th></tr></thead>
        <tbody>${rows.map(({ name, now, changed, temperature }) => {
          const shown = choiceFigures(subject, temperature === null ? {} : { temperature });
          const cell = (words: Words) => (words.length === 0 ? "–" : wordsHtml(words, shown));
          const differs = plain(now) === plain(changed) ? "number" : "number differs";
          return html`<tr><th scope="row">${wordsHtml(unbroken([name]))}</th><td class="number">${cell(now)}</td><td class=${differs}>${cell(changed)}</td></tr>`;
        })}</tbody></table>
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
