import type { System } from "@thirstline/spec/system";
import {
  isWorthTheWork,
  plain,
  type RemedyAnswer,
  type RemedyKind,
  type RemedyResult,
  remediesWords,
  remedyNamed,
  remedySentence,
  type UnitSystem,
} from "@thirstline/study";
import { css, html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { EditEvent } from "../model/events.js";
import { wordsHtml } from "../words/wordsHtml.js";
import type { Subject } from "../working/Question.js";
import { whyStyles } from "../working/whyStyles.js";
import type { Asked } from "./messages.js";
import { remedied } from "./remedied.js";
import "./amount-field.js";
import { ChooseController } from "./ChooseController.js";
import { choiceFigures } from "./choiceFigures.js";
import { chooseStyles } from "./chooseStyles.js";
import "./remedy-table.js";
import { UsedEvent } from "./UsedEvent.js";
import { unbroken } from "./unbroken.js";

/**
 * What would help most? Single changes by what they buy, and the best pairs.
 * @fires sheet-edit - to try one
 * @fires choose-used - when that was done
 */
@customElement("remedy-panel")
export class RemedyPanel extends LitElement {
  static override styles = [
    controlStyles,
    whyStyles,
    chooseStyles,
    css`
    details { margin-top: 20px; max-width: 46rem; }
    h2 { margin-top: 28px; }
    .quiet { margin-top: 12px; max-width: 60em; }
    ul.quiet { padding-left: 1.2em; columns: 22em 2; column-gap: 2em; }
    li { break-inside: avoid; }
    @media print { h2 { margin-top: 14px; } .quiet { max-width: none; margin-top: 6px; } }
  `,
  ];
  @property({ attribute: false }) system!: System;
  @property({ attribute: false }) units: UnitSystem = "metric";
  @state() private costs: Partial<Record<RemedyKind, number>> = {};
  @state() private answer: RemedyAnswer | null = null;
  private subject: Subject | null = null;
  private readonly work = new ChooseController(this, (told, asked) => {
    if (told.kind !== "remedy" || asked.kind !== "remedy") return;
    this.answer = told.answer;
    this.subject = subjectOf(asked, told.answer, this.units);
  });

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has("system") && !changed.has("costs")) return;
    this.work.ask({ kind: "remedy", system: this.system, options: { costs: this.costs } });
  }

  override render() {
    const { answer, units, work, subject } = this;
    if (work.refusal !== "") return html`<p class="fault" role="alert">There is no answer: ${work.refusal}.</p>`;
    if (answer === null || subject === null)
      return html`<p class="quiet" role="status">Trying every single change.</p>`;
    const { now, single, pairs } = answer;
    const useful = single.filter((one) => isWorthTheWork(one, now));
    const rest = single.filter((one) => !useful.includes(one));
    const nameOf = (one: RemedyResult) => nameIn(answer, one);
    const shown = choiceFigures(subject);
    const table = (results: readonly RemedyResult[], label: string) => html`<remedy-table .results=${results}
      .subject=${subject} .nameOf=${nameOf} .pump=${answer.pump} .units=${units} label=${label} @remedy-try=${this.onTry}></remedy-table>`;
    const tried = rest.map((one) => html`${wordsHtml(remediesWords(one.changes, units, nameOf(one)), shown)}`);
    return html`<p class="sentence" role="status">${wordsHtml(unbroken(remedySentence(answer, units)), shown)}</p>
      ${
        useful.length === 0
          ? nothing
          : html`${table([now, ...useful], "Each change alone")}
        <p class="quiet">Each alone, at the temperature where it leaves least in hand.</p>`
      }
      ${pairs.length === 0 ? nothing : html`<h2>The best pairs</h2>${table(pairs, "The best pairs")}`}
      ${rest.length === 0 ? nothing : html`<h2>What buys nothing worth the work</h2><ul class="quiet">${tried.map((one) => html`<li>${one}</li>`)}</ul>`}
      ${this.costBoxes(single)}`;
  }

  /** A box for what each kind of change costs that there is. */
  private costBoxes(single: readonly RemedyResult[]) {
    const kinds = [...new Set(single.flatMap(({ changes }) => changes.map(({ kind }) => kind)))].sort();
    return html`<details class="no-print"><summary>What a change costs</summary>
      <div class="boxes">${kinds.map(
        (kind) =>
          html`<amount-field .label=${kind} .value=${this.costs[kind] ?? null} @value-changed=${(
            event: HTMLElementEventMap["value-changed"],
          ) => {
            const { [kind]: _, ...others } = this.costs;
            this.costs = event.value === null ? others : { ...others, [kind]: event.value };
          }}></amount-field>`,
      )}</div></details>`;
  }

  private onTry({ result: { changes } }: HTMLElementEventMap["remedy-try"]): void {
    const edit = new EditEvent((system) => remedied(system, changes));
    if (this.dispatchEvent(edit))
      this.dispatchEvent(new UsedEvent(`On the sheet now: ${plain(remediesWords(changes, this.units))}.`));
  }
}

/** How workings name a result of the answer. */
function nameIn({ single, pairs }: RemedyAnswer, one: RemedyResult): string {
  if (single.includes(one)) return `single ${single.indexOf(one)}`;
  return pairs.includes(one) ? `pairs ${pairs.indexOf(one)}` : "now";
}

/** What the figures of the answer are of. */
function subjectOf(
  { system, options }: Extract<Asked, { kind: "remedy" }>,
  answer: RemedyAnswer,
  units: UnitSystem,
): Subject {
  return {
    source: { kind: "remedy", system, answer, options },
    about: (of) => {
      const one = remedyNamed(answer, of);
      return one ? `With ${plain(remediesWords(one.changes, units))}.` : "As it is.";
    },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    "remedy-panel": RemedyPanel;
  }
}
