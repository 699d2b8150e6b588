import { type Arrangement, type UnitSystem, unitOf } from "@thirstline/study";
import { css, html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { WidthController } from "../model/WidthController.js";
import { figureCell } from "../working/figureButton.js";
import type { Subject } from "../working/Question.js";
import { whyStyles } from "../working/whyStyles.js";
import { chooseStyles } from "./chooseStyles.js";
import { columnsOf, type SizeColumn, type SizeRow } from "./SizeRow.js";

/** Rows shown at a time. */
const SHOWN = 25;
/** What the table takes at least, px. */
const NARROW = 680;

/** Asks for an arrangement to be put on the sheet. */
class UseEvent extends Event {
  readonly arrangement: Arrangement;

  constructor(arrangement: Arrangement) {
    super("size-use", { bubbles: true, composed: true });
    this.arrangement = arrangement;
  }
}

/**
 * Arrangements in a table, to be sorted by any column and narrowed down by name.
 * @fires size-use
 */
@customElement("size-table")
export class SizeTable extends LitElement {
  static override styles = [
    controlStyles,
    whyStyles,
    chooseStyles,
    css`
    .filters { display: flex; flex-wrap: wrap; gap: 8px 20px; align-items: end; margin-bottom: 8px; }
    .filters label { font-size: 0.86rem; color: var(--soft); }
    .filters select { display: block; }
    .filters .only { display: flex; gap: 10px; align-items: center; min-height: 44px; font-size: 0.95rem; color: var(--ink); cursor: pointer; }
    .only input { accent-color: var(--fuel); width: 18px; height: 18px; margin: 0; }
    thead th { vertical-align: bottom; padding-bottom: 0; }
    thead button { border: 0; background: none; padding: 0; min-height: 44px; font-weight: 650; text-align: inherit; white-space: normal; line-height: 1.2; }
    thead button:hover { text-decoration: underline; }
    th.number { white-space: normal; }
    tbody th { color: var(--ink); min-width: 11rem; }
    tbody th small { display: block; font-weight: 650; font-size: 0.86rem; }
    tr.shown { background: var(--wash); }
    td .use { white-space: nowrap; }
    .mark { display: inline-block; width: 8px; height: 8px; margin: 0 4px 1px; rotate: 45deg; background: var(--fuel); border: 1px solid var(--ink); }
    .way { display: inline-block; border: 5px solid transparent; border-top: 0; border-bottom: 7px solid var(--soft); margin-left: 5px; }
    .way.down { rotate: 180deg; }
    .all { margin-top: 10px; }
    .cards { list-style: none; padding: 0; margin: 8px 0 0; }
    .cards li { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 0 12px; align-items: center; padding: 8px 0; border-top: 1px solid var(--rule); }
    .cards li.shown { background: var(--wash); }
    .cards b { font-weight: 650; }
    .cards small { display: block; font-size: 0.86rem; color: var(--soft); line-height: 1.4; }
    .cards .best { color: var(--ink); font-weight: 650; }
    .cards .shown small { color: var(--ink); }
    @media print { thead button { min-height: 0; } .way { display: none; } tr { break-inside: avoid; } }
  `,
  ];
  @property({ attribute: false }) rows: readonly SizeRow[] = [];
  @property({ attribute: false }) units: UnitSystem = "metric";
  /** What the figures are of. */
  @property({ attribute: false }) subject!: Subject;
  /** Key of the row that stands out. */
  @property({ attribute: false }) shown: string | null = null;
  @state() private sought = "";
  @state() private onlyPareto = false;
  @state() private sorted: { readonly by: string; readonly down: boolean } = { by: "cost", down: false };
  @state() private most = SHOWN;
  private readonly place = new WidthController(this);

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("shown") && this.shown !== null)
      this.most = Math.max(this.most, this.visible().findIndex(({ key }) => key === this.shown) + 1);
  }

  override render() {
    const columns = columnsOf(this.rows, unitOf("vacuum", this.units).symbol, unitOf("bore", this.units).symbol);
    const visible = this.visible(columns);
    return html`<div class="filters no-print">
        <label>Look for an element<input type="search" .value=${this.sought} @input=${(event: Event) => {
          this.sought = (event.target as HTMLInputElement).value;
        }} /></label>
        ${this.isNarrow() ? this.sorting(columns) : nothing}
        <label class="only"><input type="checkbox" .checked=${this.onlyPareto} @change=${() => {
          this.onlyPareto = !this.onlyPareto;
        }} />Only those that no other beats <i class="mark" aria-hidden="true"></i></label>
      </div>
      <p class="unseen" role="status">${visible.length} of ${this.rows.length} shown</p>
      ${this.place.ruler()}
      ${visible.length === 0 ? html`<p class="quiet">None of them is like that.</p>` : this.isNarrow() ? this.cards(columns, visible) : this.table(columns, visible)}
      ${
        visible.length <= this.most
          ? nothing
          : html`<button class="no-print all" type="button" @click=${() => {
              this.most = visible.length;
            }}>Show all ${visible.length}</button>`
      }`;
  }

  private table(columns: readonly SizeColumn[], visible: readonly SizeRow[]) {
    return html`<div class="scroll" tabindex="0" role="region" aria-label="Arrangements"><table>
      <thead><tr><th scope="col">from the tank on</th>${columns.map((one) => this.head(one))}<th scope="col">code</th><th scope="col" class="no-print"><span class="unseen">use it</span></th></tr></thead>
      <tbody>${visible.slice(0, this.most).map((row) => this.row(row, columns))}</tbody></table></div>`;
  }

  /** Where a table would be wider than its place. */
  private isNarrow(): boolean {
    return this.place.width > 0 && this.place.width < NARROW;
  }

  private cards(columns: readonly SizeColumn[], visible: readonly SizeRow[]) {
    return html`<ul class="cards">${visible.slice(0, this.most).map((row) => {
      const { arrangement, words, best } = row;
      const figures = columns.flatMap((column) => {
        const unit = column.unit === undefined ? "" : ` ${column.unit}`;
        return column.cell(row, this.units) === "" ? [] : [html`${column.head} ${this.cell(column, row, unit)} · `];
      });
      return html`<li class=${row.key === this.shown ? "shown" : ""}><span><b>${words}</b>${mark(row)}
          ${best.length === 0 ? nothing : html`<small class="best">${best.join(", ")}</small>`}
          <small>${figures}${arrangement.code}</small></span>${this.button(row)}</li>`;
    })}</ul>`;
  }

  private button({ arrangement, words }: SizeRow) {
    return html`<button type="button" class="use no-print" aria-label=${`Use this: ${words}`} @click=${() => this.dispatchEvent(new UseEvent(arrangement))}>Use this</button>`;
  }

  private sorting(columns: readonly SizeColumn[]) {
    return html`<label>In the order of<select @change=${(event: Event) => {
      this.sorted = { by: (event.target as HTMLSelectElement).value, down: false };
    }}>${columns.map(({ id, head }) => html`<option value=${id} .selected=${id === this.sorted.by}>${head}</option>`)}</select></label>`;
  }

  private head({ id, head, unit }: SizeColumn) {
    const { by, down } = this.sorted;
    const own = by === id;
    return html`<th scope="col" class="number" aria-sort=${own ? (down ? "descending" : "ascending") : nothing}>
      <button type="button" class="head" @click=${() => {
        this.sorted = { by: id, down: own && !down };
      }}>${head}${unit === undefined ? nothing : html` <span class="unit">${unit}</span>`}${own ? html`<i class=${down ? "way down" : "way"} aria-hidden="true"></i>` : nothing}</button></th>`;
  }

  private row(row: SizeRow, columns: readonly SizeColumn[]) {
    const { arrangement, words, best } = row;
    return html`<tr class=${row.key === this.shown ? "shown" : ""}><th scope="row">${words}${mark(row)}
        ${best.length === 0 ? nothing : html`<small>${best.join(", ")}</small>`}</th>
      ${columns.map((column) => html`<td class="number">${this.cell(column, row)}</td>`)}
      <td>${arrangement.code}</td>
      <td class="no-print">${this.button(row)}</td></tr>`;
  }

  /** A cell of the table, live where there is a figure in it. */
  private cell({ cell, figure }: SizeColumn, row: SizeRow, unit = "") {
    return figureCell(`${cell(row, this.units)}${unit}`, { figure, of: row.of, asked: {} }, this.subject);
  }

  private visible(columns = columnsOf(this.rows, "", "")): SizeRow[] {
    const words = this.sought.toLowerCase().split(/\s+/).filter(Boolean);
    const own = this.rows.filter(
      (row) =>
        (!this.onlyPareto || row.arrangement.pareto) && words.every((word) => row.words.toLowerCase().includes(word)),
    );
    const by = columns.find(({ id }) => id === this.sorted.by)?.by ?? (() => 0);
    const way = this.sorted.down ? -1 : 1;
    return own.sort((one, other) => (by(one) === by(other) ? 0 : by(one) < by(other) ? -way : way));
  }
}

function mark({ arrangement }: SizeRow) {
  return arrangement.pareto ? html` <i class="mark" role="img" aria-label="no other beats it"></i>` : nothing;
}

declare global {
  interface HTMLElementTagNameMap {
    "size-table": SizeTable;
  }
  interface HTMLElementEventMap {
    "size-use": UseEvent;
  }
}
