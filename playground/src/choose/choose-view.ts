import { elements as invented } from "virtual:catalogue";
import type { UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { cache } from "lit/directives/cache.js";
import { controlStyles } from "../look/sheetStyles.js";
import type { Sheet } from "../model/Sheet.js";
import { SheetFollower } from "../model/SheetFollower.js";
import { machineLine, placeRow, placeRowStyles } from "../views/placeRow.js";
import type { Catalogue } from "./Catalogue.js";
import "./catalogue-desk.js";
import { chooseStyles } from "./chooseStyles.js";
import "./remedy-panel.js";
import "./size-panel.js";
import "./swap-panel.js";

const theInvented: Catalogue = { file: null, elements: invented };

const questions = [
  { id: "swap", words: "May I fit that one instead?" },
  { id: "size", words: "How many, which, how arranged?" },
  { id: "remedy", words: "What would help most?" },
] as const;

/** Choosing: three questions about the system on the sheet, and the catalogue that is chosen from. */
@customElement("choose-view")
export class ChooseView extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    placeRowStyles,
    css`
    .machine { margin-bottom: 8px; }
    .used { background: var(--wash); padding: 6px 12px; border-radius: 4px; margin-bottom: 12px; position: sticky; top: 0; z-index: 3; }
    catalogue-desk { border-top: 1px solid var(--rule); border-bottom: 1px solid var(--rule); padding: 8px 0; margin-bottom: 20px; }
  `,
  ];
  @property({ attribute: false }) sheet!: Sheet;
  @property({ attribute: false }) units: UnitSystem = "metric";
  /** Which of the questions, by its name in the address. */
  @property() place = "";
  @state() private catalogue: Catalogue = theInvented;
  /** What was put on the sheet last, or "". */
  @state() private used = "";

  constructor() {
    super();
    new SheetFollower(this, () => {
      // What was undone or changed since is not what was said any more.
      if (this.sheet.system !== this.usedFor) this.used = "";
      this.requestUpdate();
    });
  }

  override render() {
    const { sheet, place } = this;
    const now = questions.find(({ id }) => id === place)?.id ?? "swap";
    return html`${placeRow("Questions", "choose", questions, now)}
      <p class="machine">${machineLine(sheet.system.name)}</p>
      ${now === "remedy" ? nothing : html`<catalogue-desk .catalogue=${this.catalogue} @catalogue-change=${this.onCatalogue}></catalogue-desk>`}
      <div @choose-used=${this.onUsed}>
        ${this.notice()}
        ${sheet.refusal === "" ? nothing : html`<p class="fault" role="alert">That cannot be put on the sheet: ${sheet.refusal}.</p>`}
        ${cache(this.panel(now))}
      </div>`;
  }

  private notice() {
    if (this.used === "") return nothing;
    return html`<div class="row used no-print" role="status"><span>${this.used}</span>
      <button type="button" @click=${this.undo}>Undo</button><a class="button row" href="#sheet">See the sheet</a>
      <button type="button" @click=${() => {
        this.used = "";
      }}>Good</button></div>`;
  }

  private panel(now: (typeof questions)[number]["id"]) {
    const { sheet, catalogue, units } = this;
    const { system } = sheet;
    switch (now) {
      case "swap":
        return html`<swap-panel .system=${system} .catalogue=${catalogue} .units=${units}></swap-panel>`;
      case "size":
        return html`<size-panel .system=${system} .catalogue=${catalogue} .units=${units}></size-panel>`;
      case "remedy":
        return html`<remedy-panel .system=${system} .units=${units}></remedy-panel>`;
    }
  }

  private usedFor: Sheet["system"] | null = null;

  private onUsed({ words }: HTMLElementEventMap["choose-used"]): void {
    this.used = words;
    this.usedFor = this.sheet.system;
  }

  private onCatalogue({ catalogue }: HTMLElementEventMap["catalogue-change"]): void {
    this.catalogue = catalogue ?? theInvented;
  }

  private undo(): void {
    this.sheet.step("undo");
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "choose-view": ChooseView;
  }
}
