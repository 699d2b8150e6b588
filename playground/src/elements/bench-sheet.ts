import type { System } from "@thirstline/spec/system";
import { type Caution, plain, safetyWords, type UnitSystem, verdictSentence } from "@thirstline/study";
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { carrySpreads } from "../edit/carrySpreads.js";
import { sheetFault } from "../edit/sheetFault.js";
import { forget, keep, kept } from "../file/keeping.js";
import { controlStyles, sheetStyles } from "../look/sheetStyles.js";
import { type Answers, answersOf } from "../model/answersOf.js";
import type { Example } from "../model/Example.js";
import { History } from "../model/History.js";
import { freeLetter, type Pin } from "../model/Pin.js";
import { type Chosen, keyOf } from "../model/Place.js";
import { fileNameOf } from "../model/saveFile.js";
import { whenPainted } from "../model/whenPainted.js";
import { cautionedParts, cautionPlace } from "../words/cautionPlace.js";
import { verdictWord } from "../words/verdictWord.js";
import { wordsHtml } from "../words/wordsHtml.js";
import "./answer-figures.js";
import "./caution-list.js";
import "./fuel-path.js";
import "./parts-table.js";
import "./place-controls.js";

/** How long after a change the sheet is kept, ms. */
const KEPT_AFTER = 400;

/** The bench sheet: owns the system and its answers; everything on it shows them and asks it for changes. */
@customElement("bench-sheet")
export class BenchSheet extends LitElement {
  static override styles = [controlStyles, sheetStyles];
  /** Demonstration systems; the first opens where nothing was kept. */
  @property({ attribute: false }) examples: readonly Example[] = [];
  @state() private units: UnitSystem = "metric";
  @state() private chosen: Chosen | null = null;
  @state() private pins: readonly Pin[] = [];
  /** Why a change was refused, or "". */
  @state() private refusal = "";
  /** What there is to know about what was opened, or "". */
  @state() private notice = "";
  /** Link to the system, to be printed as text. */
  @state() private link = "";
  /** Whether what comes after the path has been fetched. */
  @state() private complete = false;
  private history!: History<System>;
  private begun = false;
  private answers!: Answers;
  private keeping = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener("keydown", this.onKey);
    addEventListener("beforeprint", this.onPrint);
    addEventListener("afterprint", this.onPrint);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener("keydown", this.onKey);
    removeEventListener("beforeprint", this.onPrint);
    removeEventListener("afterprint", this.onPrint);
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("examples") && !this.begun) this.begin();
  }

  override render() {
    const { check, point } = this.answers;
    const { system, units } = this;
    const sentence = verdictSentence(check, point, units);
    return html`
      <main @sheet-edit=${this.onEdit}
        @sheet-print=${this.print}
        @sheet-choose=${(event: HTMLElementEventMap["sheet-choose"]) => this.choose(event.chosen)}
        @sheet-open=${(event: HTMLElementEventMap["sheet-open"]) => this.open(event.system, event.notice)}>
        <header>
          <h1>Thirstline</h1>
          <p>Will the pump get the fuel it asks for, through these filters and lines?</p>
          ${this.exampleChoice()}${this.unitChoice()}
        </header>
        <section class="desk no-print" aria-label="File">${this.desk()}</section>
        ${this.notices()}
        <p class=${`verdict ${point.verdict === "cannot say" ? "unknown" : point.verdict}`}>${verdictWord(point.verdict)}</p>
        <p class="sentence">${wordsHtml(sentence)}</p>
        <place-controls .system=${system} .point=${point} .units=${units} .examples=${this.examples}></place-controls>
        <fuel-path .system=${system} .point=${point} .units=${units} .chosen=${this.chosen}
          .cautioned=${cautionedParts(point.cautions)}></fuel-path>
        ${this.refusal === "" ? nothing : html`<p class="refusal" role="alert">That cannot be: ${this.refusal}.</p>`}
        ${this.editor()}
        ${this.partCautions(point.cautions)}
        ${this.rest()}
        <details class="parts block after"><summary>Table of parts</summary>
          <parts-table .point=${point} .pump=${check.pump} .units=${units}></parts-table></details>
      </main>
      <p class="on-paper">${system.name}, ${fileNameOf(system.name)}.yaml, printed on ${new Intl.DateTimeFormat(undefined, { dateStyle: "long" }).format()}. ${this.link}</p>
      <footer>${safetyWords.map((words) => html`<p>${words}</p>`)}</footer>
      <p class="unseen" role="status">${plain(sentence)}</p>`;
  }

  protected override async firstUpdated(): Promise<void> {
    await whenPainted();
    await import("./rest-of-sheet.js");
    this.complete = true;
  }

  private get system(): System {
    return this.history.present;
  }

  /** Opens what was kept, or the first example. */
  private begin(): void {
    const [first] = this.examples;
    if (first === undefined) return;
    this.begun = true;
    const before = kept();
    try {
      if (before === null) throw new Error("nothing was kept");
      this.answers = answersOf(before.system);
      this.history = new History(before.system);
      const day = new Intl.DateTimeFormat(undefined, { dateStyle: "long", timeStyle: "short" }).format(before.at);
      this.notice = `Brought back what was on the sheet on ${day}.`;
    } catch {
      // Nothing there, or from a version that wrote something else.
      this.answers = answersOf(first.system);
      this.history = new History(first.system);
    }
  }

  private onEdit(event: HTMLElementEventMap["sheet-edit"]): void {
    const next = carrySpreads(this.system, event.change(this.system));
    if (!this.edit(next, event.merge)) event.preventDefault();
  }

  private open(system: System, notice: string): void {
    if (!this.edit(system, null)) return;
    this.chosen = null;
    this.notice = notice;
  }

  /** Takes a change where it can be answered; else says why not and leaves everything as it is. */
  private edit(next: System, merge: string | null): boolean {
    const fault = sheetFault(next);
    try {
      if (fault !== null) throw new Error(fault);
      this.answers = answersOf(next);
    } catch (error) {
      this.refusal = error instanceof Error ? error.message : "it has no answer";
      return false;
    }
    this.refusal = "";
    this.history.push(next, merge, performance.now());
    this.afterChange();
    return true;
  }

  private step(way: "undo" | "redo"): void {
    this.history[way]();
    this.answers = answersOf(this.system);
    this.chosen = null;
    this.refusal = "";
    this.afterChange();
  }

  private afterChange(): void {
    this.requestUpdate();
    clearTimeout(this.keeping);
    this.keeping = window.setTimeout(() => keep(this.system), KEPT_AFTER);
  }

  private async choose(chosen: Chosen | null): Promise<void> {
    const before = this.chosen;
    this.chosen = chosen;
    this.refusal = "";
    await this.updateComplete;
    if (chosen !== null) {
      await customElements.whenDefined("part-editor");
      this.renderRoot.querySelector("part-editor")?.toHeading();
    } else if (before !== null) {
      this.renderRoot.querySelector("fuel-path")?.toName(keyOf(before));
    }
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    const [target] = event.composedPath();
    const typing =
      target instanceof HTMLTextAreaElement ||
      (target instanceof HTMLInputElement && !["range", "radio", "checkbox"].includes(target.type));
    if (event.key === "Escape" && this.chosen !== null) void this.choose(null);
    if (typing || !(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    if (key !== "z" && key !== "y") return;
    event.preventDefault();
    this.step(key === "y" || event.shiftKey ? "redo" : "undo");
  };

  private async print({ link }: HTMLElementEventMap["sheet-print"]): Promise<void> {
    this.link = link;
    await this.updateComplete;
    print();
  }

  /** On paper the table of parts is open, and the path drawn for the width of a sheet. */
  private readonly onPrint = ({ type }: Event): void => {
    const printing = type === "beforeprint";
    const table = this.renderRoot.querySelector<HTMLDetailsElement>("details.parts");
    if (table && printing) table.open = true;
    this.renderRoot.querySelector("fuel-path")?.toPaper(printing);
  };

  private notices() {
    if (this.notice === "") return nothing;
    const example = this.examples[0];
    const restored = this.notice.startsWith("Brought back") && example !== undefined;
    return html`<p class="notice no-print" role="status">${this.notice}
      ${
        restored
          ? html`<button type="button" @click=${() => {
              forget();
              this.open(example.system, "");
            }}>Begin with the ferry</button>`
          : nothing
      }
      <button type="button" @click=${() => {
        this.notice = "";
      }}>Good</button></p>`;
  }

  private editor() {
    if (this.chosen === null) return nothing;
    return html`<part-editor class="no-print" .system=${this.system} .chosen=${this.chosen} .units=${this.units}></part-editor>`;
  }

  private desk() {
    if (!this.complete) return nothing;
    return html`<button type="button" ?disabled=${!this.history.canUndo} @click=${() => this.step("undo")}>Undo</button>
      <button type="button" ?disabled=${!this.history.canRedo} @click=${() => this.step("redo")}>Redo</button>
      <file-desk .system=${this.system}></file-desk>`;
  }

  /** What is fetched once the path stands: charts, the map, what is pinned. */
  private rest(): TemplateResult | typeof nothing {
    if (!this.complete) return nothing;
    const { answers, system, units } = this;
    const pinned = this.pins.map(({ name, answers: { curvePoint } }) => ({
      name,
      demand: curvePoint.demand,
      clean: curvePoint.clean,
    }));
    return html`
      <section class="block after"><vacuum-chart .answer=${answers.curve} .point=${answers.curvePoint} .pinned=${pinned} .units=${units}></vacuum-chart></section>
      <section class="block after halves">
        <cold-map .system=${system} .point=${answers.point} .units=${units}></cold-map>
        <answer-figures .answer=${answers.check} .point=${answers.point} .units=${units}></answer-figures></section>
      <section class="block after"><pinned-variants .answers=${answers} .pins=${this.pins} .units=${units}
        @pin-this=${() => {
          this.pins = [...this.pins, { name: freeLetter(this.pins), system, answers }];
        }}
        @pin-drop=${(event: HTMLElementEventMap["pin-drop"]) => {
          this.pins = this.pins.filter(({ name }) => name !== event.pin);
        }}></pinned-variants></section>`;
  }

  private exampleChoice() {
    const at = this.examples.findIndex(({ system }) => system.name === this.system.name);
    return html`<label class="no-print"><span class="unseen">Open an example</span>
      <select @change=${(event: Event) => this.openExample((event.target as HTMLSelectElement).value)}>
        ${at === -1 ? html`<option value="" selected>${this.system.name}</option>` : nothing}
        ${this.examples.map(({ file, system }, index) => html`<option value=${file} .selected=${index === at}>${system.name}</option>`)}
      </select></label>`;
  }

  private openExample(file: string): void {
    const found = this.examples.find((example) => example.file === file);
    if (found) this.open(found.system, "");
  }

  private unitChoice() {
    const one = (units: UnitSystem, words: string) => html`<label><input type="radio" name="units" value=${units}
      .checked=${this.units === units} @change=${() => {
        this.units = units;
      }} /><span>${words}</span></label>`;
    return html`<fieldset class="choice no-print" aria-label="Units">${one("metric", "Metric")}${one("us", "US")}</fieldset>`;
  }

  private partCautions(cautions: readonly Caution[]) {
    const ofParts = cautions.filter((one) => typeof cautionPlace(one) === "object");
    return html`<caution-list class="after" .cautions=${ofParts} .units=${this.units}></caution-list>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "bench-sheet": BenchSheet;
  }
}
