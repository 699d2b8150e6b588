import {
  type FleetAnswer,
  type FleetEntry,
  type FleetGroup,
  fleetGroupTitle,
  type UnitSystem,
} from "@thirstline/study";
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import { chooseStyles } from "../../choose/chooseStyles.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { wordsHtml } from "../../words/wordsHtml.js";
import type { Subject } from "../../working/Question.js";
import { whyStyles } from "../../working/whyStyles.js";
import { fieldStyles } from "../fieldStyles.js";
import { daysWords, entryWords } from "./entryWords.js";
import { fleetFigures } from "./fleetFigures.js";

/** Rows of a group shown at first, and more of them at a time: a list of thousands would only be scrolled past. */
const SHOWN = 20;

/** Says which machine is meant. */
class MachineEvent extends Event {
  readonly entry: FleetEntry;

  constructor(name: "machine-open" | "machine-note", entry: FleetEntry) {
    super(name);
    this.entry = entry;
  }
}

/**
 * Every machine of a yard in its group, the most pressing first.
 * @fires machine-open - its system is to be put on the sheet
 * @fires machine-note - something of it is to be noted
 */
@customElement("fleet-list")
export class FleetList extends LitElement {
  static override styles = [
    controlStyles,
    whyStyles,
    chooseStyles,
    fieldStyles,
    css`
    section { margin-top: 24px; }
    h2 { display: flex; gap: 10px; align-items: baseline; border-bottom: 2px solid var(--ink); padding-bottom: 4px; margin: 0; }
    h2.late, h2.now { color: var(--limit); border-color: var(--limit); }
    h2 small { font-weight: 400; color: var(--soft); font-size: 0.86rem; }
    li { display: grid; grid-template-columns: 8.5rem minmax(0, 1fr) auto; gap: 0 20px; padding: 10px 0; border-bottom: 1px solid var(--rule); align-items: start; }
    .day { line-height: 1.3; }
    .day b { display: block; font-weight: 650; white-space: nowrap; }
    .machine { font-weight: 700; }
    .stakes { color: var(--soft); font-size: 0.86rem; margin-left: 8px; }
    .why { max-width: 70ch; font-size: 0.95rem; }
    .act { display: flex; gap: 0 4px; }
    .act button { font-size: 0.86rem; padding: 0 10px; border-color: transparent; background: none; text-decoration: underline; text-underline-offset: 3px; }
    .act button:hover { border-color: var(--edge); }
    .more { margin-top: 8px; }
    input[type="search"] { max-width: 22rem; }
    @media screen and (max-width: 700px) { li { grid-template-columns: minmax(0, 1fr); gap: 2px; } .day { display: flex; gap: 10px; } .act { margin-left: -10px; } }
    @media print { .act, input, label { display: none !important; } }
  `,
  ];
  @property({ attribute: false }) answer!: FleetAnswer;
  /** What its figures are of. */
  @property({ attribute: false }) subject!: Subject;
  @property() units: UnitSystem = "metric";
  @state() private sought = "";
  @state() private most: ReadonlyMap<FleetGroup, number> = new Map();

  protected override willUpdate(changed: PropertyValues<this>): void {
    // Another yard begins at its top; the same one after an entry stays where it was.
    const before = changed.get("answer") as FleetAnswer | undefined;
    if (before !== undefined && before.entries.length !== this.answer.entries.length) this.most = new Map();
  }

  override render() {
    const { answer, sought } = this;
    const groups = [...new Set(answer.entries.map(({ group }) => group))];
    const found =
      sought === "" ? answer.entries : answer.entries.filter(({ machine }) => machine.toLowerCase().includes(sought));
    return html`${
      answer.entries.length <= SHOWN
        ? nothing
        : html`<label class="quiet">Find a machine<input type="search" @input=${(event: Event) => {
            this.sought = (event.target as HTMLInputElement).value.trim().toLowerCase();
          }} /></label>`
    }
      ${found.length === 0 && sought !== "" ? html`<p class="lead" role="status">No machine is called so.</p>` : nothing}
      ${groups.map((group) =>
        this.group(
          group,
          found.filter((entry) => entry.group === group),
        ),
      )}`;
  }

  private group(group: FleetGroup, entries: readonly FleetEntry[]): TemplateResult | typeof nothing {
    if (entries.length === 0) return nothing;
    const most = this.most.get(group) ?? SHOWN;
    const left = entries.length - most;
    return html`<section><h2 class=${group}>${fleetGroupTitle(group, this.answer)}<small>${entries.length}</small></h2>
      <ul class="plain">${repeat(
        entries.slice(0, most),
        ({ machine }) => machine,
        (entry) => this.row(entry),
      )}</ul>
      ${
        left <= 0
          ? nothing
          : html`<button type="button" class="more no-print" @click=${() => {
              this.most = new Map([...this.most, [group, most + 100]]);
            }}>Show ${Math.min(left, 100)} more of ${left}</button>`
      }</section>`;
  }

  private row(entry: FleetEntry): TemplateResult {
    const { machine, stakes, due, group, system } = entry;
    const shown = fleetFigures(this.subject, `machine ${this.answer.entries.indexOf(entry)}`);
    const day =
      due === null || group === "cannot say"
        ? nothing
        : html`<b>${due.date}</b><span class="quiet">${wordsHtml(daysWords(due.days), shown)}</span>`;
    const tell = (name: "machine-open" | "machine-note") => this.dispatchEvent(new MachineEvent(name, entry));
    return html`<li><div class="day">${day}</div>
      <div class="why"><span class="machine">${machine}</span>${stakes === "a nuisance" ? html`<span class="stakes">a nuisance when it stops</span>` : nothing}
        <div>${wordsHtml(entryWords(entry, this.units), shown)}</div></div>
      <div class="act"><button type="button" aria-label=${`Note something of ${machine}`} @click=${() => tell("machine-note")}>Note</button>
        <button type="button" title=${system} aria-label=${`Open ${machine} on the sheet`} @click=${() => tell("machine-open")}>Open</button></div></li>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "fleet-list": FleetList;
  }
  interface HTMLElementEventMap {
    "machine-open": MachineEvent;
    "machine-note": MachineEvent;
  }
}
