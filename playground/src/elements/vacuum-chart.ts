import { type CurveAnswer, type CurvePoint, curveSentence, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import uPlot from "uplot";
import plotStyles from "uplot/dist/uPlot.min.css?inline";
import { type ChartData, columnsOf, type Pinned } from "../chart/columnsOf.js";
import { csvOf } from "../chart/csvOf.js";
import { type Inks, plotColumns, plotOptions } from "../chart/drawing.js";
import { controlStyles } from "../look/sheetStyles.js";
import { fileNameOf, saveFile } from "../model/saveFile.js";
import { wordsHtml } from "../words/wordsHtml.js";

const HEIGHT = 380;
const rebuilders = ["(prefers-color-scheme: dark)", "(prefers-contrast: more)", "print"];

/** Vacuum against demand: clean, now and at change, with limits, ceiling and the point the engine runs at. */
@customElement("vacuum-chart")
export class VacuumChart extends LitElement {
  static override styles = [
    unsafeCSS(plotStyles),
    controlStyles,
    css`
    :host { display: block; }
    .side { display: grid; grid-template-columns: minmax(0, 1fr); gap: 8px 40px; }
    @media (min-width: 1000px) { .side { grid-template-columns: minmax(0, 8fr) minmax(0, 3.4fr); } }
    #plot { min-height: ${HEIGHT}px; min-width: 0; }
    .reads { font-size: 0.95rem; margin: 4px 0 16px; }
    caption { text-align: left; }
    .reads table { border-collapse: collapse; width: 100%; }
    .reads th { text-align: left; font-weight: 500; color: var(--soft); padding: 3px 8px 3px 0; }
    .reads td { text-align: right; font-weight: 650; }
    .reads tr { border-bottom: 1px solid var(--rule); }
    .buttons { display: flex; flex-wrap: wrap; gap: 8px; margin-top: 12px; }
    .wide { overflow-x: auto; max-height: 22rem; }
    .all { border-collapse: collapse; font-size: 0.95rem; }
    .all th, .all td { text-align: right; padding: 3px 14px 3px 0; border-bottom: 1px solid var(--rule); }
    .all th { font-weight: 500; color: var(--soft); }
    .figure { font-weight: 650; white-space: nowrap; }
    @media print { .buttons, details { display: none; } .side { grid-template-columns: 2fr 1fr; } .uplot, .u-wrap { width: auto !important; height: auto !important; } .uplot canvas { width: auto !important; height: 230px !important; max-width: 100%; } .u-over, .u-under { display: none; } #plot { min-height: 0; }  h2 { margin: 0; } }
  `,
  ];
  @property({ attribute: false }) answer!: CurveAnswer;
  @property({ attribute: false }) point!: CurvePoint;
  @property({ attribute: false }) pinned: readonly Pinned[] = [];
  @property() units: UnitSystem = "metric";
  /** Where the pointer is on the demand axis; null for the demand of the engine. */
  @state() private pointer: number | null = null;
  @query("#plot") private place!: HTMLElement;
  private data!: ChartData;
  private plot: uPlot | null = null;
  private form = "";
  private readonly queries = rebuilders.map((one) => matchMedia(one));
  private readonly watcher = new ResizeObserver(() => this.fit());
  private readonly rebuild = (): void => {
    this.form = "";
    this.requestUpdate();
  };

  override connectedCallback(): void {
    super.connectedCallback();
    for (const one of this.queries) one.addEventListener("change", this.rebuild);
    this.watcher.observe(this);
    this.rebuild();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const one of this.queries) one.removeEventListener("change", this.rebuild);
    this.watcher.disconnect();
    this.plot?.destroy();
    this.plot = null;
  }

  protected override willUpdate(): void {
    this.data = columnsOf(this.answer, this.point, this.pinned, this.units);
  }

  override render() {
    const { title } = this.data;
    return html`<h2>${title} against demand</h2>
      <div class="side">
        <div id="plot" role="img" aria-label=${`${title} against the demand of the engine; every figure stands in the table under it.`}></div>
        <div>
          <p class="reads">${wordsHtml(curveSentence(this.answer, this.point, this.units))}</p>
          ${this.readout()}
          <div class="buttons">
            <button type="button" @click=${this.saveCsv}>Save the figures</button>
            <button type="button" @click=${this.savePicture}>Save the picture</button>
          </div>
        </div>
      </div>
      <details><summary>Table of the curve</summary>${this.table()}</details>`;
  }

  protected override updated(changed: Map<string, unknown>): void {
    if (changed.size === 1 && changed.has("pointer")) return;
    if (this.data.lines.length === 0) this.clear();
    else this.draw();
  }

  /** Gives the chart its figures, or makes a new one where lines, bands or the words on its axes differ. */
  private draw(): void {
    const columns = plotColumns(this.data);
    const lines = this.data.lines.map(({ name, label, band }) => [name, label, band !== null]);
    const form = JSON.stringify([lines, this.data.xSymbol, this.data.ySymbol, this.data.title]);
    if (this.plot && this.form === form) {
      this.plot.setData(columns);
      return;
    }
    this.clear();
    this.form = form;
    const options = plotOptions(() => this.data, this.inks(), { width: this.place.clientWidth, height: HEIGHT });
    const hooks = { ...options.hooks, setCursor: [(plot: uPlot) => this.onCursor(plot)] };
    this.plot = new uPlot({ ...options, hooks }, columns, this.place);
  }

  private clear(): void {
    this.plot?.destroy();
    this.plot = null;
  }

  private readout() {
    const { demand, lines, xSymbol, ySymbol, duty } = this.data;
    const at = this.pointer;
    const shown = (value: number | null | undefined, symbol: string) =>
      value === null || value === undefined ? "none" : `${figureOf(value)} ${symbol}`;
    return html`<div class="reads"><table>
      <caption class="quiet">${at === null ? "At the demand of the engine" : "At the pointer"}</caption>
      <tbody><tr><th scope="row">demand</th><td>${shown(at === null ? duty?.demand : demand[at], xSymbol)}</td></tr>
      ${[...lines]
        .reverse()
        .map(
          ({ label, values, atDuty, band }) =>
            html`<tr><th scope="row">${label}</th><td>${
              at !== null && band
                ? `${figureOf(band.low[at] ?? Number.NaN)} to ${shown(band.high[at], ySymbol)}`
                : shown(at === null ? atDuty : values[at], ySymbol)
            }</td></tr>`,
        )}</tbody></table></div>`;
  }

  private table() {
    const { demand, lines, xSymbol, ySymbol } = this.data;
    return html`<div class="wide" tabindex="0" role="region" aria-label="Table of the curve"><table class="all">
      <thead><tr><th scope="col">demand, ${xSymbol}</th>${lines.map(({ label }) => html`<th scope="col">${label}, ${ySymbol}</th>`)}</tr></thead>
      <tbody>${demand.map((one, at) =>
        at % 3 === 0
          ? html`<tr><td>${figureOf(one)}</td>${lines.map(({ values }) => html`<td>${figureOf(values[at] ?? Number.NaN)}</td>`)}</tr>`
          : nothing,
      )}</tbody></table></div>`;
  }

  private onCursor(plot: uPlot): void {
    const { idx } = plot.cursor;
    const inside = (plot.cursor.left ?? -1) >= 0;
    this.pointer = inside && idx !== undefined ? idx : null;
  }

  private fit(): void {
    const width = this.place?.clientWidth ?? 0;
    if (this.plot && width > 0 && Math.abs(this.plot.width - width) > 1) this.plot.setSize({ width, height: HEIGHT });
  }

  private inks(): Inks {
    const styles = getComputedStyle(this);
    const of = (name: string) => styles.getPropertyValue(`--${name}`).trim();
    return {
      ink: of("ink"),
      soft: of("soft"),
      rule: of("rule"),
      limit: of("limit"),
      fuel: of("fuel"),
      paper: of("paper"),
      face: of("face"),
    };
  }

  private saveCsv(): void {
    saveFile(`${fileNameOf(this.answer.system)}-curve.csv`, new Blob([csvOf(this.data)], { type: "text/csv" }));
  }

  private savePicture(): void {
    const drawn = this.plot?.ctx.canvas;
    if (!drawn) return;
    const canvas = document.createElement("canvas");
    canvas.width = drawn.width;
    canvas.height = drawn.height;
    const ctx = canvas.getContext("2d");
    if (!ctx) return;
    ctx.fillStyle = this.inks().paper;
    ctx.fillRect(0, 0, canvas.width, canvas.height);
    ctx.drawImage(drawn, 0, 0);
    canvas.toBlob((blob) => blob && saveFile(`${fileNameOf(this.answer.system)}-curve.png`, blob));
  }
}

/** Three figures at most; a dash for a gap. */
function figureOf(value: number): string {
  if (!Number.isFinite(value)) return "–";
  return value >= 99.95 ? value.toFixed(0) : value >= 9.995 ? value.toFixed(1) : value.toFixed(2);
}

declare global {
  interface HTMLElementTagNameMap {
    "vacuum-chart": VacuumChart;
  }
}
