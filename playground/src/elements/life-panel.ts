import {
  type CheckPoint,
  changeWords,
  type LifeAnswer,
  lifeCautions,
  lifeSentence,
  quantity,
  spreadTime,
  spreadWords,
  type UnitSystem,
} from "@thirstline/study";
import { html, LitElement, nothing, type TemplateResult, unsafeCSS } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import plotStyles from "uplot/dist/uPlot.min.css?inline";
import type { ChartData } from "../chart/ChartData.js";
import { columnsOf } from "../chart/Columns.js";
import { inksOf } from "../chart/inksOf.js";
import { PlotController } from "../chart/PlotController.js";
import { placeWords, plotSlider } from "../chart/plotSlider.js";
import type { Reading } from "../chart/Reading.js";
import { readingsOf } from "../chart/readingsOf.js";
import { chartDrawing } from "../drawing/chartDrawing.js";
import { costUnit, elementWords } from "../life/elementColumns.js";
import { DRAWS } from "../life/LifeWork.js";
import { decisiveGauge, type Gauge, gaugesOf, lifeChart } from "../life/lifeChart.js";
import { lifeReading } from "../life/lifeReading.js";
import { lifeStyles } from "../life/lifeStyles.js";
import { plotFrameStyles } from "../look/plotFrameStyles.js";
import { controlStyles } from "../look/sheetStyles.js";
import { fileNameOf } from "../model/saveFile.js";
import { wordsHtml } from "../words/wordsHtml.js";
import { figureButton, ownFigure } from "../working/figureButton.js";
import { lifeFigures } from "../working/lifeFigures.js";
import { whyStyles } from "../working/whyStyles.js";
import "./chart-frame.js";

/** How long the elements last: in a sentence, as a gauge would show it over the hours, and element by element. */
@customElement("life-panel")
export class LifePanel extends LitElement {
  static override styles = [unsafeCSS(plotStyles), controlStyles, plotFrameStyles, lifeStyles, whyStyles];
  @property({ attribute: false }) answer!: LifeAnswer;
  /** For the limits. */
  @property({ attribute: false }) point!: CheckPoint;
  /** Share of all draws that are done; null where nothing is drawn. */
  @property({ attribute: false }) progress: number | null = null;
  @property() trouble = "";
  @property() units: UnitSystem = "metric";
  /** Which gauge was asked for; null for the one whose limit is met. */
  @state() private asked: Gauge | null = null;
  @query("#plot") private place!: HTMLElement | null;
  private readonly plot = new PlotController(this, () => this.place, 380);
  private data: ChartData | null = null;
  private gauge: Gauge = "vacuum";

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.size === 0) return;
    const gauges = gaugesOf(this.answer);
    const gauge = this.asked !== null && gauges.includes(this.asked) ? this.asked : decisiveGauge(this.answer);
    this.gauge = gauge;
    const data = gauges.length === 0 ? null : lifeChart(this.answer, gauge, this.point, this.units);
    this.data = data !== null && data.lines.length > 0 ? data : null;
  }

  override render() {
    const { answer, units, trouble } = this;
    const change = changeWords(answer, units);
    return html`<h2>How long the elements last</h2>
      <p class="said">${wordsHtml(lifeSentence(answer, units), lifeFigures(answer))}</p>
      ${change === null ? nothing : html`<p class="said">${wordsHtml(change, lifeFigures(answer))}</p>`}
      ${trouble === "" ? nothing : html`<p class="quiet" role="status">${trouble}</p>`}
      ${this.data === null ? nothing : this.chart(this.data)}
      ${this.cautions()}`;
  }

  protected override updated(changed: Map<string, unknown>): void {
    if (changed.size > 0 && this.data) this.plot.draw(this.data);
  }

  private chart(data: ChartData): TemplateResult {
    const { pointer } = this.plot;
    const { system, end } = this.answer;
    const rest = end === null ? "At the last hour shown" : "When the limit is met";
    return html`<chart-frame sub .heading=${`${data.title} against running time`} .file=${`${fileNameOf(system)}-life`}
        .at=${placeWords(this.plot, rest)} .readings=${this.readings(data, pointer)}
        .columns=${() => columnsOf(data)} .drawing=${() => chartDrawing(data, inksOf(this))}>
      ${plotSlider(this.plot, data, `${data.title} against running time, at full demand and the worst temperature of the duty`)}
      <div slot="said">${this.gaugeChoice()}${this.elements()}${this.chance()}</div>
    </chart-frame>`;
  }

  private readings(data: ChartData, pointer: number | null): Reading[] {
    const { spread } = this.answer;
    const at = { ...data, dot: data.dot ?? { x: data.x.values.at(-1) ?? 0, y: 0 } };
    const read = readingsOf(at, pointer, lifeReading(this.answer, this.gauge, data, this.units));
    if (!spread || spread.draws === 0) return read;
    const shown = (share: number, time: number) => {
      const text = spreadTime(time, this.answer, this.units);
      return Number.isFinite(time) ? figureButton(text, { figure: `life, ${share} % of draws`, asked: DRAWS }) : text;
    };
    const most = html`${shown(10, spread.low)} to ${shown(90, spread.high)}`;
    return [
      ...read,
      { look: null, label: "8 draws of 10 meet it", value: most },
      { look: null, label: "half of all before", value: shown(50, spread.middle) },
    ];
  }

  private gaugeChoice(): TemplateResult | typeof nothing {
    const gauges = gaugesOf(this.answer);
    if (gauges.length < 2) return nothing;
    const shown = this.asked ?? decisiveGauge(this.answer);
    const one = (gauge: Gauge, words: string) =>
      html`<label><input type="radio" name="gauge" .checked=${shown === gauge} @change=${() => {
        this.asked = gauge;
      }} /><span>${words}</span></label>`;
    return html`<fieldset class="choice no-print" aria-label="Which gauge">${one("vacuum", "Vacuum")}${one("feed", "Feed pressure")}</fieldset>`;
  }

  private elements(): TemplateResult | typeof nothing {
    const rows = elementWords(this.answer, this.units);
    const { end, horizon } = this.answer;
    if (rows.every(({ share }) => Number.parseFloat(share) === 0)) return nothing;
    const unit = costUnit(this.units);
    return html`<table class="elements">
      <caption class="quiet">Which goes first: the elements after ${quantity(end?.time ?? horizon, "running time", this.units)}</caption>
      <thead><tr><td></td><th scope="col">resists</th><th scope="col">costs, ${unit}</th><th scope="col">of the rise</th></tr></thead>
      <tbody>${rows.map(
        ({
          name,
          restriction,
          clean,
          due,
          share,
        }) => html`<tr><th scope="row">${name}</th><td>${ownFigure(restriction, `resistance over clean of ${name}`)}</td>
          <td>${ownFigure(clean, `drop of ${name}, clean`)} to ${ownFigure(due, `drop of ${name} at the end`)}</td><td>${ownFigure(share, `share of the rise of ${name}`)}</td></tr>`,
      )}</tbody></table>`;
  }

  private chance(): TemplateResult | typeof nothing {
    const words = spreadWords(this.answer, this.units);
    if (this.progress === null) return nothing;
    const drawing = this.progress < 1 ? html`<span class="quiet">drawing what is uncertain…</span>` : nothing;
    return html`<p class="chance" aria-live="off">${words === null ? nothing : wordsHtml(words, lifeFigures(this.answer))} ${drawing}</p>`;
  }

  private cautions(): TemplateResult | typeof nothing {
    const cautions = lifeCautions(this.answer, this.units);
    if (cautions.length === 0) return nothing;
    return html`<details class="no-print"><summary>What this rests on (${cautions.length})</summary>
      <ul>${cautions.map((one) => html`<li>${one.charAt(0).toUpperCase()}${one.slice(1)}.</li>`)}</ul></details>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "life-panel": LifePanel;
  }
}
