import type { GaugeReading } from "@thirstline/spec/system";
import { type GaugeAnswer, plain, type UnitSystem } from "@thirstline/study";
import { html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { WidthController } from "../../model/WidthController.js";
import { wordsHtml } from "../../words/wordsHtml.js";
import type { Subject } from "../../working/Question.js";
import { whyStyles } from "../../working/whyStyles.js";
import type { Course } from "./Course.js";
import { drawGauge } from "./drawGauge.js";
import { gaugeChartStyles } from "./gaugeChartStyles.js";
import { gaugeFigures } from "./gaugeFigures.js";
import { gaugePlot, type Shown } from "./gaugePlot.js";
import type { GaugePlot } from "./PlotData.js";
import { type Axis, axesOf } from "./timescale.js";

/** What a gauge shows over the hours: readings, the fitted course with its band, the limit and where it is met. */
@customElement("gauge-chart")
export class GaugeChart extends LitElement {
  static override styles = [controlStyles, whyStyles, gaugeChartStyles];
  @property({ attribute: false }) answer!: GaugeAnswer;
  @property({ attribute: false }) courses: readonly Course[] = [];
  @property({ attribute: false }) readings: readonly GaugeReading[] = [];
  /** What its figures are of. */
  @property({ attribute: false }) subject!: Subject;
  @property() units: UnitSystem = "metric";
  @state() private side: Course["side"] | null = null;
  @state() private axis: Axis = "hours";
  @state() private shown: Shown | null = null;
  private readonly place = new WidthController(this);

  override render() {
    const course = this.course();
    if (course === null) return nothing;
    const axes = axesOf(course, this.readings);
    const [first] = axes;
    if (first === undefined) return nothing;
    const axis = axes.includes(this.axis) ? this.axis : first;
    // A jump is seen where all is drawn as it was read.
    const jumped = this.answer.findings.some(({ code }) => code === "jump");
    const shown = course.line === null ? "as read" : (this.shown ?? (jumped ? "as read" : "at full demand"));
    const plot = gaugePlot(course, this.readings, { axis, shown, units: this.units, pump: this.answer.pump });
    return html`<h2>${wordsHtml(plot.title, gaugeFigures(this.subject))}</h2>
      <div class="choices no-print">${this.sides(course)}${course.line === null ? nothing : this.ways(shown)}${this.axes(axes, axis)}</div>
      ${this.place.ruler()}
      ${this.place.width === 0 ? nothing : html`<svg role="img" viewBox=${`0 0 ${this.place.width} 340`} aria-label=${labelOf(plot)}>${drawGauge(plot, this.place.width, 340)}</svg>`}
      <p class="quiet">${noteOf(plot, shown)}</p>
      ${this.table(plot, course.side)}`;
  }

  /** The gauge that meets a limit, else the first. */
  private course(): Course | null {
    const { courses, side } = this;
    return (
      courses.find((one) => one.side === side) ??
      courses.find(({ crossing }) => crossing !== null) ??
      courses[0] ??
      null
    );
  }

  private sides(course: Course): TemplateResult | typeof nothing {
    if (this.courses.length < 2) return nothing;
    const one = (side: Course["side"], words: string) =>
      this.radio("side", words, course.side === side, () => {
        this.side = side;
      });
    return html`<fieldset class="choice" aria-label="Which gauge">${one("suction", "Vacuum")}${one("delivery", "Feed pressure")}</fieldset>`;
  }

  private ways(now: Shown): TemplateResult {
    const one = (shown: Shown, words: string) =>
      this.radio("shown", words, now === shown, () => {
        this.shown = shown;
      });
    return html`<fieldset class="choice" aria-label="How the readings stand">${one("at full demand", "At full demand")}${one("as read", "As read")}</fieldset>`;
  }

  private axes(axes: readonly Axis[], now: Axis): TemplateResult | typeof nothing {
    if (axes.length < 2) return nothing;
    const one = (axis: Axis, words: string) =>
      this.radio("axis", words, now === axis, () => {
        this.axis = axis;
      });
    return html`<fieldset class="choice" aria-label="Over what">${one("hours", "Over hours")}${one("date", "Over days")}</fieldset>`;
  }

  private radio(name: string, words: string, checked: boolean, take: () => void): TemplateResult {
    return html`<label><input type="radio" name=${name} .checked=${checked} @change=${take} /><span>${words}</span></label>`;
  }

  private table({ points, earlier }: GaugePlot, side: Course["side"]): TemplateResult {
    const shown = gaugeFigures(this.subject, side);
    return html`<details class="no-print"><summary>Table: the readings and what is fitted</summary>
      <div class="rows" tabindex="0" role="region" aria-label="Table: the readings and what is fitted"><ul>${[...earlier, ...points].map(({ words }) => html`<li>${wordsHtml(words, shown)}</li>`)}</ul></div></details>`;
  }
}

function labelOf({ title, points, crossing }: GaugePlot): string {
  const met = crossing === null ? "" : " with the course fitted to them and where it meets the limit";
  return `${plain(title)}: ${points.length} readings${met}. The figures stand in the table under it.`;
}

function noteOf({ points, line, earlier }: GaugePlot, shown: Shown): string {
  const before = earlier.length === 0 ? "" : " Hollow: before the run that counts.";
  const off = `${points.some((one) => one.off) ? " What stands off is ringed." : ""}${before}`;
  if (line === null) return `Points: as read. Short lines: what is fitted at the load and temperature of each.${off}`;
  const own =
    shown === "at full demand"
      ? "Each reading stands as far off the course as it was read from what its own load and temperature let expect. "
      : "";
  return `${own}Grey: where the course lies nine times in ten.${off}`;
}

declare global {
  interface HTMLElementTagNameMap {
    "gauge-chart": GaugeChart;
  }
}
