import {
  type FleetAnswer,
  fleetCalendar,
  fleetCsv,
  fleetLimitWords,
  namesWords,
  type UnitSystem,
} from "@thirstline/study";
import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { chooseStyles } from "../../choose/chooseStyles.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { saveFile } from "../../model/saveFile.js";
import { figureCell } from "../../working/figureButton.js";
import type { Subject } from "../../working/Question.js";
import { whyStyles } from "../../working/whyStyles.js";
import { fieldStyles } from "../fieldStyles.js";
import { type DueDay, dueDays, monthWords, partRows } from "./dueDays.js";

/** Rows shown at first. */
const SHOWN = 40;

/** What lies ahead: the days on which something falls due, and the parts to have by then. */
@customElement("fleet-ahead")
export class FleetAhead extends LitElement {
  static override styles = [
    controlStyles,
    whyStyles,
    chooseStyles,
    fieldStyles,
    css`
    .halves { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(26rem, 100%), 1fr)); gap: 28px 56px; align-items: start; }
    .halves > * { min-width: 0; }
    h3 { margin: 14px 0 2px; color: var(--soft); font-weight: 500; }
    li { display: grid; grid-template-columns: 4.5rem minmax(0, 1fr); gap: 12px; padding: 5px 0; border-bottom: 1px solid var(--rule); font-size: 0.95rem; }
    li b { font-weight: 650; }
    td, th { white-space: nowrap; }
    tbody th { white-space: normal; min-width: 8rem; }
    .short { color: var(--limit); font-weight: 650; }
    .row { margin-top: 16px; }
  `,
  ];
  @property({ attribute: false }) answer!: FleetAnswer;
  /** What its figures are of. */
  @property({ attribute: false }) subject!: Subject;
  @property() units: UnitSystem = "metric";
  @state() private all = false;

  override render() {
    const { answer } = this;
    return html`<div class="halves">
      <section><h2>The next ${answer.within} days</h2>${this.days()}</section>
      <section><h2>Parts for ${answer.within} days</h2>${this.parts()}</section></div>
      <div class="row no-print"><button type="button" @click=${this.saveCalendar}>Save as a calendar</button>
        <button type="button" @click=${this.saveList}>Save the list as a table</button></div>`;
  }

  private days(): TemplateResult {
    const days = dueDays(this.answer);
    if (days.length === 0) return html`<p class="lead">Nothing falls due in them.</p>`;
    const shown = this.all ? days : days.slice(0, SHOWN);
    const months = [...new Set(shown.map(({ day }) => monthWords(day)))];
    return html`${months.map(
      (month) =>
        html`<h3>${month}</h3><ul class="plain">${shown.filter(({ day }) => monthWords(day) === month).map(dayRow)}</ul>`,
    )}${
      shown.length === days.length
        ? nothing
        : html`<button type="button" @click=${() => {
            this.all = true;
          }}>Show all ${days.length}</button>`
    }`;
  }

  private parts(): TemplateResult {
    const { parts, on, entries } = this.answer;
    const unknown = entries.filter(({ group }) => group === "cannot say").length;
    const left =
      unknown === 0 ? nothing : html`<p class="quiet">Not counted: ${unknown} of which nothing can be said.</p>`;
    if (parts.length === 0) return html`<p class="lead">None is needed in them.</p>${left}`;
    const live = (text: string, figure: string, at: number) =>
      figureCell(text, { figure, of: `part ${at}`, asked: {} }, this.subject);
    return html`<div class="scroll" tabindex="0" role="region" aria-label="Parts"><table>
      <thead><tr><th scope="col">part</th><th scope="col" class="number">need</th><th scope="col" class="number">on hand</th><th scope="col" class="number">short</th><th scope="col">first</th><th scope="col">order by</th></tr></thead>
      <tbody>${partRows(parts, on)
        .slice(0, this.all ? undefined : SHOWN)
        .map(
          (
            row,
            at,
          ) => html`<tr><th scope="row">${row.part}${row.style === "" ? nothing : html` <span class="unit">${row.style}</span>`}</th><td class="number">${live(row.need, "parts due", at)}</td><td class="number">${live(row.onHand, "parts on hand", at)}</td>
        <td class=${row.short === "0" ? "number" : "number short"}>${live(row.short, "parts to order", at)}</td><td>${row.first}</td><td>${row.orderBy}</td></tr>`,
        )}</tbody></table></div>${left}`;
  }

  private async saveCalendar(): Promise<void> {
    saveFile(`due-${this.answer.on}.ics`, new Blob([await fleetCalendar(this.answer)], { type: "text/calendar" }));
  }

  private saveList(): void {
    saveFile(`due-${this.answer.on}.csv`, new Blob([fleetCsv(this.answer, this.units)], { type: "text/csv" }));
  }
}

function dayRow({ day, entry, past }: DueDay): TemplateResult {
  const { due, machine, change } = entry;
  const by = due === null ? "" : `, by ${fleetLimitWords(due.by)}${past ? ` since ${due.date}` : ""}`;
  return html`<li><span>${past ? "today" : Number(day.slice(8))}</span><span><b>${machine}</b>: ${namesWords(change)}<span class="quiet">${by}</span></span></li>`;
}

declare global {
  interface HTMLElementTagNameMap {
    "fleet-ahead": FleetAhead;
  }
}
