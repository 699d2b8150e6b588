import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Columns } from "../chart/Columns.js";
import { figureOf } from "../chart/figureOf.js";
import { lineStrokes } from "../chart/lineLooks.js";
import type { Reading } from "../chart/Reading.js";
import { controlStyles } from "../look/sheetStyles.js";
import { whyStyles } from "../working/whyStyles.js";
import "./save-row.js";

/**
 * What every chart has around it: a heading, what it reads at the pointer, which is its legend, the table behind it, and
 * ways to save it.
 * @slot - the picture
 * @slot said - a sentence beside it
 */
@customElement("chart-frame")
export class ChartFrame extends LitElement {
  static override styles = [
    controlStyles,
    whyStyles,
    css`
    :host { display: block; container-type: inline-size; }
    .side { display: grid; grid-template-columns: minmax(0, 1fr); gap: 8px 40px; }
    @container (min-width: 980px) { .side { grid-template-columns: minmax(0, 8fr) minmax(0, 3.4fr); } }
    h3 { margin: 0 0 8px; }
    .picture { min-width: 0; }
    .reads table { border-collapse: collapse; width: 100%; font-size: 0.95rem; }
    .reads caption { text-align: left; padding-top: 4px; }
    .reads th { text-align: left; font-weight: 500; color: var(--soft); padding: 3px 8px 3px 0; }
    .reads th svg { vertical-align: middle; margin-right: 8px; stroke: var(--ink); }
    .reads td { text-align: right; font-weight: 650; }
    .reads button.why { padding: 3px 0; }
    .reads tr { border-bottom: 1px solid var(--rule); }
    save-row { margin-top: 12px; }
    .wide { overflow: auto; max-height: 22rem; }
    .all { border-collapse: collapse; font-size: 0.95rem; }
    .all th, .all td { text-align: right; padding: 3px 14px 3px 0; border-bottom: 1px solid var(--rule); }
    .all th { font-weight: 500; color: var(--soft); vertical-align: bottom; max-width: 12rem; }
    .all th:first-child, .all td:first-child { text-align: left; }
    @media print { details { display: none; } .side { grid-template-columns: 2fr 1fr; } h2 { margin: 0; } .reads table { line-height: 1.2; } }
  `,
  ];
  @property() heading = "";
  /** Whether it stands under another heading. */
  @property({ type: Boolean }) sub = false;
  /** Name of what is saved, without its ending. */
  @property() file = "";
  /** Where the readings are taken. */
  @property() at = "";
  @property({ attribute: false }) readings: readonly Reading[] = [];
  /** Asked for when the table is open or saved. */
  @property({ attribute: false }) columns: () => Columns | null = () => null;
  @property({ attribute: false }) drawing: () => string | null = () => null;
  @state() private open = false;

  override render() {
    return html`${this.sub ? html`<h3>${this.heading}</h3>` : html`<h2>${this.heading}</h2>`}
      <div class="side">
        <div class="picture"><slot></slot></div>
        <div>
          <slot name="said"></slot>
          ${this.reads()}
          <save-row .what=${this.heading.toLowerCase()} .file=${this.file} .drawing=${this.drawing} .columns=${this.columns}></save-row>
        </div>
      </div>
      <details @toggle=${(event: Event) => {
        this.open = (event.target as HTMLDetailsElement).open;
      }}><summary>Table: ${this.heading.charAt(0).toLowerCase()}${this.heading.slice(1)}</summary>${this.open ? this.table() : nothing}</details>`;
  }

  private reads(): TemplateResult | typeof nothing {
    if (this.readings.length === 0) return nothing;
    return html`<div class="reads"><table>
      ${this.at === "" ? nothing : html`<caption class="quiet">${this.at}</caption>`}
      <tbody>${this.readings.map(
        ({ look, label, value }) =>
          html`<tr><th scope="row">${look === null ? nothing : sample(look)}${label}</th><td>${value}</td></tr>`,
      )}</tbody></table></div>`;
  }

  private table(): TemplateResult | typeof nothing {
    const columns = this.columns();
    if (columns === null) return nothing;
    const cell = (one: string | number | null) => (typeof one === "string" ? one : figureOf(one));
    return html`<div class="wide" tabindex="0" role="region" aria-label=${`Table: ${this.heading}`}><table class="all">
      <thead><tr>${columns.head.map((one) => html`<th scope="col">${one}</th>`)}</tr></thead>
      <tbody>${columns.rows.map((row) => html`<tr>${row.map((one) => html`<td>${cell(one)}</td>`)}</tr>`)}</tbody></table></div>`;
  }
}

/** A short piece of a line as it is drawn. */
function sample(look: NonNullable<Reading["look"]>): TemplateResult {
  const { width, dash } = lineStrokes[look];
  return html`<svg width="30" height="10" aria-hidden="true"><path d="M0 5H30" stroke-width=${width} stroke-dasharray=${dash.join(" ")} /></svg>`;
}

declare global {
  interface HTMLElementTagNameMap {
    "chart-frame": ChartFrame;
  }
}
