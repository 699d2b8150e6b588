import type { System } from "@thirstline/spec/system";
import { curveSentence, type UnitSystem } from "@thirstline/study";
import { html, LitElement, unsafeCSS } from "lit";
import { customElement, property, query } from "lit/decorators.js";
import plotStyles from "uplot/dist/uPlot.min.css?inline";
import type { ChartData } from "../chart/ChartData.js";
import { columnsOf } from "../chart/Columns.js";
import { curveChart } from "../chart/curveChart.js";
import { type Curve, curveOf } from "../chart/curveOf.js";
import { curveReading } from "../chart/curveReading.js";
import { inksOf } from "../chart/inksOf.js";
import { PlotController } from "../chart/PlotController.js";
import { placeWords, plotSlider } from "../chart/plotSlider.js";
import { readingsOf } from "../chart/readingsOf.js";
import { chartDrawing } from "../drawing/chartDrawing.js";
import { plotFrameStyles } from "../look/plotFrameStyles.js";
import type { Pin } from "../model/Pin.js";
import { fileNameOf } from "../model/saveFile.js";
import { wordsHtml } from "../words/wordsHtml.js";
import { asButtons, leavesIn } from "../working/liveFigures.js";
import { whyStyles } from "../working/whyStyles.js";
import "./chart-frame.js";

const CURVE = Object.fromEntries(["vacuum now", "vacuum at change"].map((figure) => [figure, { figure, asked: {} }]));

/** Vacuum against demand: clean, now and at change, with limits, ceiling and the point the engine runs at. */
@customElement("vacuum-chart")
export class VacuumChart extends LitElement {
  static override styles = [unsafeCSS(plotStyles), plotFrameStyles, whyStyles];
  @property({ attribute: false }) system!: System;
  @property({ attribute: false }) pins: readonly Pin[] = [];
  @property() units: UnitSystem = "metric";
  @query("#plot") private place!: HTMLElement | null;
  private readonly plot = new PlotController(this, () => this.place, 380);
  private curve!: Curve;
  private data!: ChartData;

  /** Whether it is on the screen. */
  get isNear(): boolean {
    return this.plot.near;
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.size === 0) return;
    this.curve = curveOf(this.system);
    const pinned = this.pins.map(({ name, system }) => {
      const { demand, clean } = curveOf(system).point;
      return { name, demand, clean };
    });
    this.data = curveChart(this.curve.answer, this.curve.point, pinned, this.units);
  }

  override render() {
    const { title, file } = this.data;
    const { pointer } = this.plot;
    return html`<chart-frame .heading=${`${title} against demand`} .file=${`${fileNameOf(this.curve.answer.system)}-${file}`}
        .at=${placeWords(this.plot, "At the demand of the engine")}
        .readings=${readingsOf(this.data, pointer, curveReading(this.curve, this.pins, this.units))} .columns=${() => columnsOf(this.data)}
        .drawing=${() => (this.data.lines.length === 0 ? null : chartDrawing(this.data, inksOf(this)))}>
      ${plotSlider(this.plot, this.data, `${title} against the demand of the engine`)}
      <p slot="said">${wordsHtml(curveSentence(this.curve.answer, this.curve.point, this.units), asButtons(leavesIn("curve", CURVE)))}</p>
    </chart-frame>`;
  }

  protected override updated(changed: Map<string, unknown>): void {
    if (changed.size > 0) this.plot.draw(this.data);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "vacuum-chart": VacuumChart;
  }
}
