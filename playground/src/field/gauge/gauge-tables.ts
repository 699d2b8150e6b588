import { figure, type GaugeAnswer, quantity, type SideAnswer, type UnitSystem, unitOf } from "@thirstline/study";
import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { chooseStyles } from "../../choose/chooseStyles.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { figureButton } from "../../working/figureButton.js";
import type { Subject } from "../../working/Question.js";
import { whyStyles } from "../../working/whyStyles.js";

/** Laws shown each on a line of its own; the rest are told together. */
const SHOWN = 4;

/** The elements as they are now, and the laws that were compared. */
@customElement("gauge-tables")
export class GaugeTables extends LitElement {
  static override styles = [
    controlStyles,
    whyStyles,
    chooseStyles,
    css`
    .halves { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(24rem, 100%), 1fr)); gap: 28px 48px; align-items: start; }
    .halves > * { min-width: 0; }
    .bar { display: block; height: 6px; background: var(--ink); min-width: 1px; }
    .bar-cell { width: 40%; }
    .range { display: block; font-size: 0.86rem; }
    section section + section, section h2:not(:first-child) { margin-top: 24px; }
    tbody th { color: var(--ink); }
  `,
  ];
  @property({ attribute: false }) answer!: GaugeAnswer;
  /** What its figures are of. */
  @property({ attribute: false }) subject!: Subject;
  @property() units: UnitSystem = "metric";

  override render() {
    const { sides } = this.answer;
    const found = sides.filter(({ elements }) => elements.length > 0);
    if (found.length === 0) return nothing;
    return html`<div class="halves"><section><h2>Elements now</h2>${this.elements(found)}</section>
      <section>${found.filter(({ trend }) => trend).map((side) => this.laws(side, found.length > 1))}</section></div>`;
  }

  private elements(sides: readonly SideAnswer[]): TemplateResult {
    const { units } = this;
    const symbol = unitOf("pressure", units).symbol;
    return html`<div class="scroll" tabindex="0" role="region" aria-label="Elements now"><table>
      <thead><tr><td></td><th scope="col" class="number">resists, × clean</th><th scope="col" class="number">costs, ${symbol}</th><th scope="col" class="number">of its room</th></tr></thead>
      <tbody>${sides.flatMap(({ side, elements }) => {
        const live = this.liveOf(side);
        return elements.map(({ name, ratio, dropClean, drop, roomUsed }) => {
          const over = `resistance over clean of ${name}`;
          return html`<tr><th scope="row">${name}</th>
        <td class="number">${live(over, ratio.middle.toFixed(1))}<span class="unit range">${live(`${over}, low end`, ratio.low.toFixed(1))} to ${live(`${over}, high end`, ratio.high.toFixed(1))}</span></td>
        <td class="number">${live(`drop of ${name}, clean`, figure(dropClean, "pressure", units))} to ${live(`drop of ${name}`, figure(drop, "pressure", units))}</td>
        <td class="number">${roomUsed === null ? "" : live(`room used up of ${name}`, quantity(roomUsed, "ratio", units))}</td></tr>`;
        });
      })}</tbody></table></div>`;
  }

  /** Makes figures of a gauge live. */
  private liveOf(of: SideAnswer["side"]) {
    return (name: string, text: string) => figureButton(text, { figure: name, of, asked: {} }, this.subject);
  }

  private laws({ side, laws }: SideAnswer, several: boolean): TemplateResult {
    const live = this.liveOf(side);
    const shown = laws.slice(0, SHOWN);
    const rest = laws.slice(SHOWN).reduce((sum, { weight }) => sum + weight, 0);
    const where = !several ? "" : side === "delivery" ? ", behind the pump" : ", before the pump";
    return html`<h2>How restriction grows${where}</h2>
      <table><tbody>${shown.map(
        ({
          law,
          mix,
          weight,
        }) => html`<tr><th scope="row">${law}${mix === null ? "" : html` <span class="unit">${live(`mix of ${law}`, `${Math.round(100 * mix)} %`)} of the second</span>`}</th>
        <td class="bar-cell" aria-hidden="true"><span class="bar" .style=${`width: ${(100 * weight).toFixed(1)}%`}></span></td>
        <td class="number">${live(`weight of ${law}`, quantity(weight, "ratio", this.units))}</td></tr>`,
      )}</tbody></table>
      <p class="quiet">By how much each loading law weighs among all ${laws.length} that fit; the others together ${quantity(rest, "ratio", this.units)}.</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "gauge-tables": GaugeTables;
  }
}
