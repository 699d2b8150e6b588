import type { System } from "@thirstline/spec/system";
import {
  type RemedyAnswer,
  type RemedyKind,
  type RemedyResult,
  remediesText,
  remedySentence,
  type UnitSystem,
} from "@thirstline/study";
import { css, html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { EditEvent } from "../model/events.js";
import { remedied } from "./remedied.js";
import "./amount-field.js";
import { ChooseController } from "./ChooseController.js";
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
    chooseStyles,
    css`
    details { margin-top: 20px; max-width: 46rem; }
    h2 { margin-top: 28px; }
    .quiet { margin-top: 12px; max-width: 60em; }
  `,
  ];
  @property({ attribute: false }) system!: System;
  @property({ attribute: false }) units: UnitSystem = "metric";
  @state() private costs: Partial<Record<RemedyKind, number>> = {};
  @state() private answer: RemedyAnswer | null = null;
  private readonly work = new ChooseController(this, (told) => {
    if (told.kind === "remedy") this.answer = told.answer;
  });

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has("system") && !changed.has("costs")) return;
    this.work.ask({ kind: "remedy", system: this.system, options: { costs: this.costs } });
  }

  override render() {
    const { answer, units, work } = this;
    if (work.refusal !== "") return html`<p class="fault" role="alert">There is no answer: ${work.refusal}.</p>`;
    if (answer === null) return html`<p class="quiet" role="status">Trying every single change.</p>`;
    const { now, single, pairs } = answer;
    const useful = single.filter((one) => buys(one, now));
    const rest = single.filter((one) => !useful.includes(one));
    return html`<p class="sentence" role="status">${unbroken(remedySentence(answer, units))}</p>
      ${
        useful.length === 0
          ? nothing
          : html`<remedy-table .results=${[now, ...useful]} .pump=${answer.pump} .units=${units} label="Each change alone" @remedy-try=${this.onTry}></remedy-table>
        <p class="quiet">Each alone, at the temperature where it leaves least in hand.</p>`
      }
      ${pairs.length === 0 ? nothing : html`<h2>The best pairs</h2><remedy-table .results=${pairs} .pump=${answer.pump} .units=${units} label="The best pairs" @remedy-try=${this.onTry}></remedy-table>`}
      ${rest.length === 0 ? nothing : html`<p class="quiet">What buys nothing worth the work: ${rest.map(({ changes }) => remediesText(changes, units)).join("; ")}.</p>`}
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
      this.dispatchEvent(new UsedEvent(`On the sheet now: ${remediesText(changes, this.units)}.`));
  }
}

/** Whether a change buys anything worth the work: more in hand, or less over the clean limit. */
function buys(one: RemedyResult, now: RemedyResult): boolean {
  return one.inHand > now.inHand + 5e-4 || (one.overClean ?? 0) < (now.overClean ?? 0) - 50;
}

declare global {
  interface HTMLElementTagNameMap {
    "remedy-panel": RemedyPanel;
  }
}
