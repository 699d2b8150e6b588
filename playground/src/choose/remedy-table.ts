import {
  figure,
  moneyText,
  plain,
  quantity,
  type RemedyAnswer,
  type RemedyResult,
  remediesWords,
  type UnitSystem,
  unitOf,
} from "@thirstline/study";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { verdictWord } from "../words/verdictWord.js";
import { wordsHtml } from "../words/wordsHtml.js";
import { figureCell } from "../working/figureButton.js";
import type { Subject } from "../working/Question.js";
import { whyStyles } from "../working/whyStyles.js";
import { choiceFigures } from "./choiceFigures.js";
import { chooseStyles } from "./chooseStyles.js";

/** Asks for changes to be tried on the sheet. */
class TryEvent extends Event {
  readonly result: RemedyResult;

  constructor(result: RemedyResult) {
    super("remedy-try");
    this.result = result;
  }
}

/**
 * Changes with what each comes to, and how much of it is in hand as a bar.
 * @fires remedy-try
 */
@customElement("remedy-table")
export class RemedyTable extends LitElement {
  static override styles = [
    controlStyles,
    whyStyles,
    chooseStyles,
    css`
    tbody th { color: var(--ink); min-width: 11rem; }
    .asis th, .asis td { color: var(--soft); }
    .bar { display: inline-block; width: 6.5rem; height: 10px; background: linear-gradient(var(--rule), var(--rule)) 0 100% / 100% 1px no-repeat; vertical-align: middle; margin-left: 10px; position: relative; }
    .bar i { position: absolute; inset: 0 auto 0 0; background: var(--fuel); }
    .bar u { position: absolute; top: -3px; bottom: -3px; width: 2px; background: var(--limit); }
    .starves { color: var(--limit); font-weight: 650; }
    table { max-width: 74rem; }
    .short { display: none; }
    @media print { table { max-width: none; } .bar { print-color-adjust: exact; } }
    @media screen and (max-width: 640px) {
      .bar, .ceiling, .long { display: none; }
      .short { display: inline; }
      td, th { padding-right: 8px; font-size: 0.9rem; }
      td:last-child, th:last-child { padding-right: 0; }
      tbody th { min-width: 7rem; }
    }
  `,
  ];
  @property({ attribute: false }) results: readonly RemedyResult[] = [];
  /** What the figures are of, and how workings name each result. */
  @property({ attribute: false }) subject!: Subject;
  @property({ attribute: false }) nameOf: (result: RemedyResult) => string = () => "now";
  @property({ attribute: false }) pump: RemedyAnswer["pump"] = "fixed";
  @property({ attribute: false }) units: UnitSystem = "metric";
  @property() label = "";

  override render() {
    const { results, units } = this;
    const priced = results.some(({ changes, cost }) => changes.length > 0 && cost !== null);
    const most = Math.max(0.4, ...results.map(({ inHand }) => (Number.isFinite(inHand) ? inHand : 0)));
    return html`<div class="scroll" tabindex="0" role="region" aria-label=${this.label}><table>
      <thead><tr><th scope="col">change</th><th scope="col">then it</th><th scope="col" class="number">in hand</th>
        <th scope="col" class="number ceiling">ceiling <span class="unit">${unitOf("flow", units).symbol}</span></th>
        ${priced ? html`<th scope="col" class="number">costs</th>` : nothing}<th scope="col" class="no-print"><span class="unseen">try it</span></th></tr></thead>
      <tbody>${results.map((one) => this.row(one, most, priced))}</tbody></table></div>`;
  }

  private row(one: RemedyResult, most: number, priced: boolean) {
    const { units, subject } = this;
    const { changes, verdict, inHand, ceiling, cost } = one;
    const asIs = changes.length === 0;
    const of = this.nameOf(one);
    const words = remediesWords(changes, units, of);
    const live = (text: string, own: string) => figureCell(text, { figure: own, of, asked: {} }, subject);
    return html`<tr class=${asIs ? "asis" : ""}><th scope="row">${asIs ? "as it is" : wordsHtml(words, choiceFigures(subject))}</th>
      <td class=${verdict === "starves" ? "starves" : ""}>${verdictWord(verdict)}</td>
      <td class="number">${live(quantity(inHand, "ratio", units), "in hand, low end")}${this.bar(inHand, most)}</td>
      <td class="number ceiling">${ceiling === 0 ? "none" : live(figure(ceiling, "flow", units), "ceiling at change, low end")}</td>
      ${priced ? html`<td class="number">${asIs || cost === null ? "" : live(moneyText(cost), "cost")}</td>` : nothing}
      <td class="number no-print">${asIs ? nothing : html`<button type="button" aria-label=${`Try this: ${plain(words)}`} @click=${() => this.dispatchEvent(new TryEvent(one))}><span class="long">Try this</span><span class="short">Try</span></button>`}</td></tr>`;
  }

  /** In hand, with a mark at the 20 % from which on it holds. */
  private bar(inHand: number, most: number) {
    const share = Math.min(1, Math.max(0, inHand) / most);
    return html`<span class="bar" aria-hidden="true"><i .style=${`width:${(100 * share).toFixed(1)}%`}></i><u .style=${`left:${((100 * 0.2) / most).toFixed(1)}%`}></u></span>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "remedy-table": RemedyTable;
  }
  interface HTMLElementEventMap {
    "remedy-try": TryEvent;
  }
}
