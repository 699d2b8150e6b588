import type { System } from "@thirstline/spec/system";
import {
  capital,
  quantity,
  type SizeAnswer,
  sizeFailureText,
  sizeReasonWords,
  sizeSentence,
  stagesText,
  type UnitSystem,
} from "@thirstline/study";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { fileNameOf, saveFile } from "../model/saveFile.js";
import { wordsHtml } from "../words/wordsHtml.js";
import { figureButton } from "../working/figureButton.js";
import type { Subject } from "../working/Question.js";
import { whyStyles } from "../working/whyStyles.js";
import { choiceFigures } from "./choiceFigures.js";
import { chooseStyles } from "./chooseStyles.js";
import type { FiguresOf } from "./messages.js";
import "./size-chart.js";
import { rowsOf, type SizeRow } from "./SizeRow.js";
import "./size-table.js";
import { sizeCsv } from "./sizeCsv.js";
import { unbroken } from "./unbroken.js";

const looks = { yes: "", no: "bad", "cannot say": "unknown" } as const;

/**
 * What a search found: the sentence, cost against vacuum, the list, and what the others fail by.
 * @fires size-use - when one is to go on the sheet
 */
@customElement("size-answer")
export class SizeAnswerElement extends LitElement {
  static override styles = [
    controlStyles,
    whyStyles,
    chooseStyles,
    css`
    h2 { margin-top: 32px; }
    .failed { list-style: none; padding: 0; margin: 8px 0 0; }
    .failed li { display: grid; grid-template-columns: 5.5rem minmax(0, 1fr); gap: 0 16px; padding: 8px 0; border-top: 1px solid var(--rule); }
    .failed b { text-align: right; font-weight: 650; }
    .failed small { display: block; font-size: 0.86rem; color: var(--soft); }
    .share { height: 6px; background: var(--edge); margin-top: 6px; max-width: 100%; }
    .basis { margin-top: 12px; max-width: 62em; }
    ul.why { margin: 0 0 16px; padding-left: 1.2em; max-width: 46em; }
    @media print { .share { print-color-adjust: exact; } h2 { margin-top: 14px; break-after: avoid; } .failed li { padding: 3px 0; break-inside: avoid; } .basis { max-width: none; } }
  `,
  ];
  @property({ attribute: false }) answer!: SizeAnswer;
  @property({ attribute: false }) figures!: FiguresOf;
  /** What its figures are of. */
  @property({ attribute: false }) subject!: Subject;
  /** The one that was searched for. */
  @property({ attribute: false }) system!: System;
  @property({ attribute: false }) units: UnitSystem = "metric";
  /** The row the chart stands at. */
  @state() private shown: string | null = null;

  override render() {
    const { answer, units, subject } = this;
    const shown = choiceFigures(subject);
    const rows = rowsOf(answer, this.figures);
    const word =
      answer.verdict === "yes" ? `${answer.passing.toLocaleString("en")} meet every limit` : capital(answer.verdict);
    return html`<p class=${`verdict ${looks[answer.verdict]}`}>${word}</p>
      <p class="sentence" role="status">${wordsHtml(unbroken(sizeSentence(answer, units)), shown)}</p>
      ${answer.reasons.length === 0 ? nothing : html`<ul class="why">${answer.reasons.map((reason) => html`<li>${wordsHtml(sizeReasonWords(reason, units), shown)}</li>`)}</ul>`}
      ${rows.length === 0 ? nothing : this.list(rows)}
      ${this.failed()}`;
  }

  private list(rows: readonly SizeRow[]) {
    const { answer, units, shown } = this;
    const left = answer.passing - rows.length;
    return html`<size-chart .rows=${rows} .limit=${this.limit()} .pump=${this.system.pump.kind} .subject=${this.subject} .units=${units} .shown=${shown}
        @size-show=${(event: HTMLElementEventMap["size-show"]) => {
          this.shown = event.key;
        }}></size-chart>
      <h2>The list</h2>
      <size-table .rows=${rows} .subject=${this.subject} .units=${units} .shown=${shown}></size-table>
      <div class="row gap no-print"><button type="button" @click=${this.save}>Save the list (CSV)</button></div>
      <p class="quiet basis">${left > 0 ? `${left.toLocaleString("en")} more meet every limit and are beaten by these. ` : ""}In hand is the least over the temperatures with clean elements; life and vacuum are
        at the likely figures. A cost holds elements of this side, their stated work and, where a chance is shown, stoppages at it; neither bodies nor hoses. The element the
        machine's manual names comes before any of these; to go finer or coarser, ask its maker.</p>`;
  }

  private failed() {
    const { failed, candidates, passing } = this.answer;
    if (failed.length === 0) return nothing;
    const most = Math.max(...failed.map(({ count }) => count));
    return html`<h2>What the other ${(candidates - passing).toLocaleString("en")} fail by</h2>
      <p class="quiet">Each counted by what it meets first from the tank on.</p>
      <ul class="failed">${failed.map(
        (
          { by, count, example },
          at,
        ) => html`<li><b>${figureButton(count.toLocaleString("en"), { figure: "arrangements that fail by this", of: `failed ${at}`, asked: {} }, this.subject)}</b><span>${sizeFailureText(by)}
          <small>such as ${stagesText(example.stages)}${example.bore === null ? "" : `, with ${quantity(example.bore, "bore", this.units)} lines`}</small>
          <div class="share" .style=${`width:${Math.max(0.5, (100 * count) / most).toFixed(1)}%`}></div></span></li>`,
      )}</ul>`;
  }

  /** What clean elements may draw at most, Pa; null where nothing says, or gravity feeds. */
  private limit(): number | null {
    const { limits, pump } = this.system;
    return pump.kind === "none" ? null : (limits?.vacuumClean ?? null);
  }

  private save(): void {
    const csv = sizeCsv(this.answer, this.figures);
    saveFile(`${fileNameOf(this.answer.system)}-arrangements.csv`, new Blob([csv], { type: "text/csv" }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "size-answer": SizeAnswerElement;
  }
}
