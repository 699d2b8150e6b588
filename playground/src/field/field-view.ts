import type { UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import type { Sheet } from "../model/Sheet.js";
import { SheetFollower } from "../model/SheetFollower.js";
import { machineLine, placeRow, placeRowStyles } from "../views/placeRow.js";
import "./card/card-place.js";
import "./fleet/fleet-place.js";
import "./gauge/gauge-place.js";

const places = [
  { id: "gauge", words: "What does the gauge say?" },
  { id: "fleet", words: "What is due?" },
  { id: "card", words: "The job card" },
] as const;

/** At the machine: its gauge, its yard and its job card, each at its own address. */
@customElement("field-view")
export class FieldView extends LitElement {
  static override styles = [
    controlStyles,
    placeRowStyles,
    css`
    :host { display: block; min-width: 0; }
    .machine { margin-bottom: 12px; }
    .fault { color: var(--limit); font-weight: 600; }
    @media print { .no-print { display: none; } }
  `,
  ];
  @property({ attribute: false }) sheet!: Sheet;
  @property() units: UnitSystem = "metric";
  /** Which of the three, by its name in the address. */
  @property() place = "";

  constructor() {
    super();
    new SheetFollower(this, () => this.requestUpdate());
  }

  override render() {
    const { sheet, place } = this;
    const now = places.find(({ id }) => id === place)?.id ?? "gauge";
    return html`${placeRow("At the machine", "field", places, now)}
      ${now === "fleet" ? nothing : html`<p class="machine no-print">${machineLine(sheet.system.name)}</p>`}
      ${sheet.refusal === "" ? nothing : html`<p class="fault" role="alert">That cannot be put on the sheet: ${sheet.refusal}.</p>`}
      ${this.shown(now)}`;
  }

  private shown(now: (typeof places)[number]["id"]): TemplateResult {
    const { system } = this.sheet;
    switch (now) {
      case "gauge":
        return html`<gauge-place .system=${system} .units=${this.units}></gauge-place>`;
      case "fleet":
        return html`<fleet-place .units=${this.units}></fleet-place>`;
      case "card":
        return html`<card-place .system=${system} .units=${this.units}></card-place>`;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "field-view": FieldView;
  }
}
