import {
  capital,
  capitalWords,
  type GaugeAnswer,
  gaugeCautionWords,
  gaugeFinding,
  gaugeSentence,
  leftFigure,
  outlierWords,
  quantity,
  type UnitSystem,
  withoutWords,
} from "@thirstline/study";
import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { chooseStyles } from "../../choose/chooseStyles.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { wordsHtml } from "../../words/wordsHtml.js";
import { figureButton } from "../../working/figureButton.js";
import type { Subject } from "../../working/Question.js";
import { whyStyles } from "../../working/whyStyles.js";
import { fieldStyles } from "../fieldStyles.js";
import { gaugeFigures } from "./gaugeFigures.js";

const verdicts: Readonly<Record<GaugeAnswer["verdict"], { readonly words: string; readonly look: string }>> = {
  filter: { words: "The filter", look: "" },
  other: { words: "Not only the filter", look: "bad" },
  "cannot tell": { words: "Cannot tell yet", look: "unknown" },
};

/** What the gauge says, large, with what else shows and what to look at. */
@customElement("gauge-answer")
export class GaugeAnswerView extends LitElement {
  static override styles = [
    controlStyles,
    whyStyles,
    chooseStyles,
    fieldStyles,
    css`
    dl { display: flex; flex-wrap: wrap; gap: 12px 40px; margin: 0 0 8px; }
    dt { font-size: 0.86rem; color: var(--soft); }
    dd { margin: 0; font-size: 1.5rem; font-weight: 650; line-height: 1.25; }
    dd small button.figure.why { font-weight: inherit; }
    dd small { display: block; font-size: 0.86rem; font-weight: 400; color: var(--soft); }
    .finding { border-left: 3px solid var(--limit); padding-left: 14px; margin: 18px 0; max-width: 44em; }
    .finding h2 { margin-bottom: 2px; }
    .finding ul { margin: 4px 0 0; padding-left: 1.2em; }
    .off li { margin: 4px 0; }
  `,
  ];
  @property({ attribute: false }) answer!: GaugeAnswer;
  /** What its figures are of. */
  @property({ attribute: false }) subject!: Subject;
  @property() units: UnitSystem = "metric";

  override render() {
    const { answer, units, subject } = this;
    const shown = gaugeFigures(subject);
    const { words, look } = verdicts[answer.verdict];
    const cautions = gaugeCautionWords(answer, units);
    return html`<p class=${`verdict ${look}`}>${words}</p>
      <p class="sentence" role="status">${wordsHtml(gaugeSentence(answer, units), shown)}</p>
      ${this.left()}
      ${answer.findings.map((one, at) => (one.code === "loading" ? nothing : this.finding(one, at)))}
      ${this.outliers()}
      ${
        cautions.length === 0
          ? nothing
          : html`<details class="no-print"><summary>What this rests on (${cautions.length})</summary>
        <ul>${cautions.map((one) => html`<li>${wordsHtml(capitalWords(one), shown)}.</li>`)}</ul></details>`
      }`;
  }

  private left(): TemplateResult | typeof nothing {
    const { left, sides, readings } = this.answer;
    const { units, subject } = this;
    const live = (of: string, figure: string, text: string) => figureButton(text, { figure, of, asked: {} }, subject);
    const hours = (figure: string, time: number) => live("left", figure, quantity(time, "running time", units));
    const end = (which: "low" | "middle" | "high") =>
      left && wordsHtml([leftFigure(left, which, units)], gaugeFigures(subject));
    const used = sides.flatMap(({ side, elements }) =>
      elements.flatMap(({ name, roomUsed }) => (roomUsed === null ? [] : { side, name, roomUsed })),
    );
    const plugged = used.reduce<(typeof used)[number] | null>(
      (most, one) => (most === null || one.roomUsed > most.roomUsed ? one : most),
      null,
    );
    if (left === null && plugged === null) return nothing;
    return html`<dl>
      ${plugged === null ? nothing : html`<div><dt>How plugged</dt><dd>${live(plugged.side, `room used up of ${plugged.name}`, quantity(plugged.roomUsed, "ratio", units))}<small>of the room for soil, the fullest element</small></dd></div>`}
      ${
        left === null
          ? nothing
          : html`<div><dt>Hours left</dt><dd>${end("middle")}<small>nine times in ten ${end("low")} to ${end("high")}</small></dd></div>
      ${left.hourMeter === null ? nothing : html`<div><dt>Hour meter then</dt><dd>${hours("hour meter at the limit", left.hourMeter)}<small>from ${live("readings", "readings used", String(readings.used))} readings over ${hours("running time so far", left.sinceStart)}</small></dd></div>`}`
      }
    </dl>`;
  }

  private finding(finding: GaugeAnswer["findings"][number], at: number): TemplateResult {
    const { name, shows, check } = gaugeFinding(finding, this.answer.pump, this.units);
    return html`<section class="finding"><h2>${capital(name)}</h2><p>${wordsHtml(shows, gaugeFigures(this.subject, `finding ${at}`))}</p>
      ${check.length === 0 ? nothing : html`<p class="quiet">Look at, in this order:</p><ul>${check.map((one) => html`<li>${one}</li>`)}</ul>`}</section>`;
  }

  private outliers(): TemplateResult | typeof nothing {
    const { answer, units, subject } = this;
    if (answer.outliers.length === 0) return nothing;
    const without = withoutWords(answer, units);
    return html`<section class="block off"><h2>Stands off</h2><ul>${answer.outliers.map((one, at) => html`<li>${wordsHtml(capitalWords(outlierWords(one, units)), gaugeFigures(subject, `outlier ${at}`))}</li>`)}
      ${without === null ? nothing : html`<li>${wordsHtml(without, gaugeFigures(subject))}</li>`}</ul></section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "gauge-answer": GaugeAnswerView;
  }
}
