import {
  capital,
  type GaugeAnswer,
  gaugeCautionTexts,
  gaugeFinding,
  gaugeSentence,
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
import { fieldStyles } from "../fieldStyles.js";

const verdicts: Readonly<Record<GaugeAnswer["verdict"], { readonly words: string; readonly look: string }>> = {
  filter: { words: "THE FILTER", look: "" },
  other: { words: "NOT ONLY THE FILTER", look: "bad" },
  "cannot tell": { words: "CANNOT TELL YET", look: "care" },
};

/** What the gauge says, large, with what else shows and what to look at. */
@customElement("gauge-answer")
export class GaugeAnswerView extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    fieldStyles,
    css`
    dl { display: flex; flex-wrap: wrap; gap: 12px 40px; margin: 0 0 8px; }
    dt { font-size: 0.86rem; color: var(--soft); }
    dd { margin: 0; font-size: 1.5rem; font-weight: 650; line-height: 1.25; }
    dd small { display: block; font-size: 0.86rem; font-weight: 400; color: var(--soft); }
    .finding { border-left: 3px solid var(--limit); padding-left: 14px; margin: 18px 0; max-width: 44em; }
    .finding h2 { margin-bottom: 2px; }
    .finding ul { margin: 4px 0 0; padding-left: 1.2em; }
    .off li { margin: 4px 0; }
  `,
  ];
  @property({ attribute: false }) answer!: GaugeAnswer;
  @property() units: UnitSystem = "metric";

  override render() {
    const { answer, units } = this;
    const { words, look } = verdicts[answer.verdict];
    const cautions = gaugeCautionTexts(answer, units);
    return html`<p class=${`verdict ${look}`}>${words}</p>
      <p class="sentence" role="status">${wordsHtml(gaugeSentence(answer, units))}</p>
      ${this.left()}
      ${answer.findings.filter(({ code }) => code !== "loading").map((one) => this.finding(one))}
      ${this.outliers()}
      ${
        cautions.length === 0
          ? nothing
          : html`<details class="no-print"><summary>What this rests on (${cautions.length})</summary>
        <ul>${cautions.map((one) => html`<li>${capital(one)}.</li>`)}</ul></details>`
      }`;
  }

  private left(): TemplateResult | typeof nothing {
    const { left, sides, readings } = this.answer;
    const hours = (time: number) => quantity(time, "running time", this.units);
    const used = sides.flatMap(({ elements }) => elements.flatMap(({ roomUsed }) => roomUsed ?? []));
    const plugged = used.length === 0 ? null : Math.max(...used);
    if (left === null && plugged === null) return nothing;
    return html`<dl>
      ${plugged === null ? nothing : html`<div><dt>How plugged</dt><dd>${quantity(plugged, "ratio", this.units)}<small>of the room for soil, the fullest element</small></dd></div>`}
      ${
        left === null
          ? nothing
          : html`<div><dt>Hours left</dt><dd>${hours(left.middle)}<small>nine times in ten ${hours(left.low)} to ${hours(left.high)}</small></dd></div>
      ${left.hourMeter === null ? nothing : html`<div><dt>Hour meter then</dt><dd>${hours(left.hourMeter)}<small>from ${readings.used} readings over ${hours(left.sinceStart)}</small></dd></div>`}`
      }
    </dl>`;
  }

  private finding(finding: GaugeAnswer["findings"][number]): TemplateResult {
    const { name, shows, check } = gaugeFinding(finding, this.answer.pump, this.units);
    return html`<section class="finding"><h2>${capital(name)}</h2><p>${wordsHtml(shows)}</p>
      ${check.length === 0 ? nothing : html`<p class="quiet">Look at, in this order:</p><ul>${check.map((one) => html`<li>${one}</li>`)}</ul>`}</section>`;
  }

  private outliers(): TemplateResult | typeof nothing {
    const { answer, units } = this;
    if (answer.outliers.length === 0) return nothing;
    const without = withoutWords(answer, units);
    return html`<section class="block off"><h2>Stands off</h2><ul>${answer.outliers.map((one) => html`<li>${capital(outlierWords(one, units))}</li>`)}
      ${without === null ? nothing : html`<li>${without}</li>`}</ul></section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "gauge-answer": GaugeAnswerView;
  }
}
