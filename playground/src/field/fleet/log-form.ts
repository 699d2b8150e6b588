import type { FleetEntry, UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import { chooseStyles } from "../../choose/chooseStyles.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { fieldStyles } from "../fieldStyles.js";
import type { LogNote } from "./LogNote.js";

/** Asks for an entry to be put into the log. */
class NoteEvent extends Event {
  readonly note: LogNote;

  constructor(note: LogNote) {
    super("log-note");
    this.note = note;
  }
}

const empty = {
  hours: "",
  distance: "",
  gauge: "",
  changed: [],
  newHourMeter: false,
  newDistanceMeter: false,
  note: "",
} as const;

/**
 * An entry for the log: which machine, which day, what was read and what was done.
 * @fires log-note - with what was typed; whether it can stand in the log is for others to say
 */
@customElement("log-form")
export class LogForm extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    fieldStyles,
    css`
    form.boxes { display: grid; gap: 12px 16px; grid-template-columns: repeat(auto-fill, minmax(min(9.2rem, 100%), 1fr)); align-items: start; }
    form > label:not(.tick) { display: block; font-size: 0.86rem; color: var(--soft); }
    .wide { grid-column: 1 / -1; }
    .machine, .note { grid-column: span 2; }
    select { width: 100%; height: 44px; }
    .done { display: flex; flex-wrap: wrap; gap: 0 20px; }
    @media (max-width: 480px) { form.boxes { grid-template-columns: repeat(2, minmax(0, 1fr)); } form > * { min-width: 0; } }
  `,
  ];
  @property({ attribute: false }) entries: readonly FleetEntry[] = [];
  /** Today. */
  @property() on = "";
  @property() units: UnitSystem = "metric";
  /** Why the last one was refused. */
  @property({ attribute: false }) refused: readonly string[] = [];
  @state() private note: LogNote = { machine: "", date: "", ...empty };
  @query("#machine") private first!: HTMLInputElement;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("on")) this.note = { ...this.note, date: this.on };
  }

  override render() {
    const { note, units, refused } = this;
    const us = units === "us";
    return html`<form class="boxes" novalidate @submit=${this.onSubmit}>
      <label class="machine">Machine<input id="machine" type="text" list="machines" autocomplete="off" .value=${live(note.machine)} @change=${this.text("machine")} /></label>
      <datalist id="machines">${this.entries.slice(0, 500).map(({ machine }) => html`<option value=${machine}></option>`)}</datalist>
      <label>Day<input type="date" .value=${live(note.date)} @change=${this.text("date")} /></label>
      ${this.box("hours", "Hour meter", "11650 h")}${this.box("distance", "Distance meter", us ? "152000 mi" : "245100 km")}${this.box("gauge", "Vacuum at full load", us ? "4.1 inHg" : "14 kPa")}
      <label class="note">Note<input type="text" autocomplete="off" .value=${live(note.note)} @change=${this.text("note")} /></label>
      <fieldset class="wide"><legend>What was done</legend><div class="done">${this.done()}</div></fieldset>
      ${refused.length === 0 ? nothing : html`<div class="wide" role="alert">${refused.map((why) => html`<p>It was not put in: ${why}.</p>`)}</div>`}
      <div class="row wide"><button type="submit" class="main">Put it into the log</button></div></form>`;
  }

  /** Empties the boxes and goes to the first. */
  afresh(): void {
    this.note = { machine: "", date: this.on, ...empty };
    this.first.focus();
  }

  /** Begins an entry of a machine. */
  begin(machine: string): void {
    this.note = { ...this.note, ...empty, machine };
    this.first.scrollIntoView({ block: "center" });
    this.first.focus();
  }

  private done(): TemplateResult[] {
    const { note } = this;
    const elements = this.entries.find(({ machine }) => machine === note.machine)?.elements ?? [];
    const names = ["all", ...(elements.length > 1 ? elements.map(({ element }) => element) : [])];
    const change = (name: string, on: boolean) => {
      const rest = note.changed.filter((one) => one !== name && one !== "all" && name !== "all");
      this.note = { ...note, changed: on ? [...rest, name] : rest };
    };
    return [
      ...names.map((name) =>
        tick(name === "all" ? "All elements changed" : `Changed ${name}`, note.changed.includes(name), (on) =>
          change(name, on),
        ),
      ),
      tick("A new hour meter", note.newHourMeter, (on) => {
        this.note = { ...note, newHourMeter: on };
      }),
      tick("A new distance meter", note.newDistanceMeter, (on) => {
        this.note = { ...note, newDistanceMeter: on };
      }),
    ];
  }

  private box(key: "hours" | "distance" | "gauge", label: string, example: string): TemplateResult {
    return html`<label>${label}<input type="text" autocomplete="off" spellcheck="false" placeholder=${example} .value=${live(this.note[key])} @change=${this.text(key)} /></label>`;
  }

  private text(key: "machine" | "date" | "hours" | "distance" | "gauge" | "note") {
    return (event: Event) => {
      this.note = { ...this.note, [key]: (event.target as HTMLInputElement).value };
    };
  }

  private onSubmit(event: Event): void {
    event.preventDefault();
    this.dispatchEvent(new NoteEvent(this.note));
  }
}

function tick(words: string, checked: boolean, take: (on: boolean) => void): TemplateResult {
  return html`<label class="tick"><input type="checkbox" .checked=${live(checked)} @change=${(event: Event) => take((event.target as HTMLInputElement).checked)} />${words}</label>`;
}

declare global {
  interface HTMLElementTagNameMap {
    "log-form": LogForm;
  }
  interface HTMLElementEventMap {
    "log-note": NoteEvent;
  }
}
