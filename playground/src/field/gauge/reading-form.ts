import type { GaugeReading } from "@thirstline/spec/system";
import { quantity, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import { chooseStyles } from "../../choose/chooseStyles.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { fieldStyles } from "../fieldStyles.js";
import { type Draft, draftOf, emptyDraft } from "./Draft.js";
import type { DraftFaults } from "./readDraft.js";

/** Says which reading was typed. */
class ReadingEvent extends Event {
  readonly reading: GaugeReading;

  constructor(reading: GaugeReading) {
    super("reading-typed");
    this.reading = reading;
  }
}

/**
 * One reading to type, each piece with its unit: what the gauge showed, and at what load and temperature.
 * @fires reading-typed - a good one
 * @fires reading-leave - when a change of one is given up
 */
@customElement("reading-form")
export class ReadingForm extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    fieldStyles,
    css`
    form.boxes { display: grid; gap: 12px 16px; grid-template-columns: repeat(auto-fill, minmax(min(9.2rem, 100%), 1fr)); align-items: start; }
    form > label { display: block; font-size: 0.86rem; color: var(--soft); }
    .wide { grid-column: 1 / -1; }
    .note { grid-column: span 2; }
    @media (max-width: 480px) { form.boxes { grid-template-columns: repeat(2, minmax(0, 1fr)); } form > * { min-width: 0; } }
  `,
  ];
  @property() units: UnitSystem = "metric";
  /** A reading to be typed over; null for a new one. */
  @property({ attribute: false }) over: GaugeReading | null = null;
  /** Why the last one was not taken in, or "". */
  @property() refusal = "";
  @state() private draft: Draft = emptyDraft;
  @state() private faults: DraftFaults = new Map();
  @query("input") private first!: HTMLInputElement;

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has("over")) return;
    this.faults = new Map();
    this.draft = this.over === null ? emptyDraft : draftOf(this.over, this.units);
  }

  override render() {
    const us = this.units === "us";
    const whole = this.faults.get("") ?? (this.refusal === "" ? undefined : this.refusal);
    return html`<form class="boxes" novalidate @submit=${this.onSubmit}>
        ${this.box("hours", "Hour meter", "11450 h")}${this.box("date", "or the day", "", "date")}
        ${this.box("vacuum", "Vacuum", us ? "4.1 inHg" : "14 kPa")}${this.box("feed", "Feed pressure", us ? "6.5 psi" : "45 kPa")}
        ${this.box("load", "Load, or the flow", us ? "100 % or 30 gal/h" : "100 % or 110 L/h")}
        ${this.box("temperature", "Fuel temperature", us ? "54 degF" : "12 degC")}
        ${this.box("level", "Fuel over the pick-up", us ? "2 ft" : "0.6 m")}
        ${this.box("note", "Note", "")}
        <label class="tick wide"><input type="checkbox" .checked=${live(this.draft.changed)} @change=${(
          event: Event,
        ) => {
          this.draft = { ...this.draft, changed: (event.target as HTMLInputElement).checked };
        }} />The elements were changed just before</label>
        ${whole === undefined ? nothing : html`<p class="wide" role="alert">It was not taken in: ${whole}.</p>`}
        <div class="row wide"><button type="submit" class="main">${this.over === null ? "Take it in" : "Put it right"}</button>
          ${this.over === null ? nothing : html`<button type="button" @click=${() => this.dispatchEvent(new Event("reading-leave"))}>Leave it as it was</button>`}
          <span class="quiet">Any unit will do: 12 inHg, 54 degF, 1 bar.</span></div>
      </form>`;
  }

  /** Empties the boxes for the next reading and goes to the first. */
  afresh(): void {
    // The next is read at much the same load and level.
    this.draft = { ...emptyDraft, load: this.draft.load, level: this.draft.level };
    this.first.focus();
  }

  private box(key: Exclude<keyof Draft, "changed">, label: string, example: string, type = "text"): TemplateResult {
    const fault = this.faults.get(key);
    return html`<label class=${key === "note" ? "note" : ""}>${label}<input type=${type} autocomplete="off" spellcheck="false" placeholder=${example}
        .value=${live(this.draft[key])} aria-invalid=${fault === undefined ? "false" : "true"} aria-describedby=${fault === undefined ? nothing : `fault-${key}`}
        @input=${(event: Event) => {
          this.draft = { ...this.draft, [key]: (event.target as HTMLInputElement).value };
        }} />${fault === undefined ? nothing : html`<p id=${`fault-${key}`} role="alert">${fault}</p>`}</label>`;
  }

  private async onSubmit(event: Event): Promise<void> {
    event.preventDefault();
    const { readDraft } = await import("./readDraft.js");
    const read = readDraft(this.draft);
    this.faults = "faults" in read ? read.faults : new Map();
    if ("reading" in read) this.dispatchEvent(new ReadingEvent(read.reading));
  }
}

/** A reading in a few words: when, and what was read. */
export function readingWords({ hours, date, vacuum }: GaugeReading, units: UnitSystem): string {
  const when = hours === undefined ? (date ?? "") : quantity(hours, "running time", units);
  return vacuum === undefined ? when : `${when}, ${quantity(vacuum, "vacuum", units)}`;
}

declare global {
  interface HTMLElementTagNameMap {
    "reading-form": ReadingForm;
  }
  interface HTMLElementEventMap {
    "reading-typed": ReadingEvent;
    "reading-leave": Event;
  }
}
