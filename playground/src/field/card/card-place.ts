import type { System } from "@thirstline/spec/system";
import { type CardAnswer, type CardOptions, cardHtml, cardNames, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { chooseStyles } from "../../choose/chooseStyles.js";
import "../../elements/quantity-field.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { fileNameOf, saveFile } from "../../model/saveFile.js";
import type { Subject } from "../../working/Question.js";
import { FieldController } from "../FieldController.js";
import { fieldStyles } from "../fieldStyles.js";
import "./job-card.js";

/** What the figures of a card are of, by the names that workings have. */
const states: Readonly<Record<string, string>> = {
  fitted: "with the elements changed",
  duplex: "with one side of the bank shut",
  "lowest load": "with the elements changed, at the lowest load",
};

/** The job card of the machine on the sheet: which elements, how, on what a day; printed on one sheet. */
@customElement("card-place")
export class CardPlace extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    fieldStyles,
    css`
    .elements { display: flex; flex-wrap: wrap; gap: 0 22px; }
    .asked { margin-bottom: 20px; display: grid; gap: 12px; }
    .boxes { max-width: 46rem; align-items: end; }
    @media print { .asked { display: none; } }
  `,
  ];
  @property({ attribute: false }) system!: System;
  @property() units: UnitSystem = "metric";
  /** Elements that are left alone. */
  @state() private left: ReadonlySet<string> = new Set();
  @state() private allows = false;
  @state() private primer: number | null = null;
  @state() private temperature: number | null = null;
  @state() private answer: CardAnswer | null = null;
  /** What the figures of the card are of. */
  private subject: Subject | null = null;
  private readonly work = new FieldController(this, (told, asked) => {
    if (told.kind !== "card" || asked.kind !== "card") return;
    const { answer } = told;
    this.answer = answer;
    this.subject = {
      source: { ...asked, answer },
      about: (of) => `The job card: ${states[of] ?? states.fitted}.`,
    };
  });

  protected override willUpdate(changed: PropertyValues): void {
    const before = changed.get("system") as System | undefined;
    if (before !== undefined && before.name !== this.system.name) {
      this.left = new Set();
      this.primer = null;
      this.temperature = null;
      this.answer = null;
    }
    const asked = ["system", "units", "left", "allows", "primer", "temperature"];
    if (asked.some((key) => changed.has(key))) this.ask();
  }

  override render() {
    const { answer, system, units, work } = this;
    const names = cardNames(system);
    if (names.length === 0)
      return html`<p class="lead">There is no filter and no screen on the sheet, so there is nothing to change.</p>`;
    return html`<div class="asked">
        <fieldset><legend>What is changed or cleaned?</legend><div class="elements">${names.map((name) => this.element(name))}</div></fieldset>
        <label class="tick"><input type="checkbox" .checked=${this.allows} @change=${(event: Event) => {
          this.allows = (event.target as HTMLInputElement).checked;
        }} />Its manual allows elements to be filled before they are fitted</label>
        <div class="boxes">
          <quantity-field label="A stroke of the hand primer" .kind=${"small volume"} .reads=${"stroke"} optional .value=${this.primer ?? system.service?.primer ?? null} .units=${units}
            @value-changed=${(event: HTMLElementEventMap["value-changed"]) => {
              this.primer = event.value;
            }}></quantity-field>
          <quantity-field label="Fuel temperature today" .kind=${"temperature"} .reads=${"temperature"} .value=${this.temperature ?? system.temperature} .units=${units}
            @value-changed=${(event: HTMLElementEventMap["value-changed"]) => {
              this.temperature = event.value;
            }}></quantity-field>
        </div>
        <div class="row"><button type="button" class="main" ?disabled=${answer === null} @click=${() => print()}>Print the card</button>
          <button type="button" ?disabled=${answer === null} @click=${this.save}>Save it as a page (HTML)</button></div>
      </div>
      ${this.card()}
      ${work.refusal === "" ? nothing : html`<p class="fault" role="alert">There is no card: ${work.refusal}.</p>`}`;
  }

  private card(): TemplateResult | typeof nothing {
    if (this.chosen().length === 0) return html`<p class="lead" role="status">Say what is changed or cleaned.</p>`;
    if (this.work.refusal !== "") return nothing;
    return this.answer === null
      ? html`<p class="lead" role="status">Working it out.</p>`
      : html`<job-card .answer=${this.answer} .subject=${this.subject}></job-card>`;
  }

  private element(name: string): TemplateResult {
    return html`<label class="tick"><input type="checkbox" .checked=${!this.left.has(name)} @change=${(
      event: Event,
    ) => {
      const left = new Set(this.left);
      if ((event.target as HTMLInputElement).checked) left.delete(name);
      else left.add(name);
      this.left = left;
    }} />${name}</label>`;
  }

  private chosen(): string[] {
    return cardNames(this.system).filter((name) => !this.left.has(name));
  }

  private ask(): void {
    const at = this.chosen();
    if (at.length === 0) return;
    const options: CardOptions = {
      at,
      units: this.units,
      ...(this.temperature === null ? {} : { temperature: this.temperature }),
      ...(this.allows ? { prefill: "manual-allows" } : {}),
      ...(this.primer === null ? {} : { primer: this.primer }),
    };
    this.work.ask({ kind: "card", system: this.system, options });
  }

  private save(): void {
    if (this.answer === null) return;
    saveFile(`${fileNameOf(this.system.name)}-card.html`, new Blob([cardHtml(this.answer)], { type: "text/html" }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "card-place": CardPlace;
  }
}
