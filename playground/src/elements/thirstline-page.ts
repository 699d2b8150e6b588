import { safetyWords, type UnitSystem } from "@thirstline/study";
import { html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { forget, keep, kept } from "../file/keeping.js";
import { openedWords } from "../file/openedWords.js";
import { keepUnits, unitsKept } from "../file/unitsKept.js";
import { pageStyles } from "../look/pageStyles.js";
import { controlStyles } from "../look/sheetStyles.js";
import type { AfterFrame } from "../model/AfterFrame.js";
import type { Example } from "../model/Example.js";
import { Sheet } from "../model/Sheet.js";
import { fileNameOf } from "../model/saveFile.js";
import { whenPainted } from "../model/whenPainted.js";
import type { View } from "../views/View.js";
import { sheetView, viewAt, views } from "../views/views.js";
import type { WhyController } from "../working/WhyController.js";
import type {} from "../working/WhyEvent.js";

const longDay = new Intl.DateTimeFormat(undefined, { dateStyle: "long" });
/** How long after a change the sheet is kept, ms. */
const KEPT_AFTER = 400;

/** The page: owns the sheet and shows one view of it; views show it and ask for changes. */
@customElement("thirstline-page")
export class ThirstlinePage extends LitElement {
  static override styles = [controlStyles, pageStyles];
  /** Demonstration systems; the first opens where nothing was kept. */
  @property({ attribute: false }) examples: readonly Example[] = [];
  @state() private units: UnitSystem = unitsKept();
  /** What there is to know about what was opened, or "". */
  @state() private notice = "";
  /** Link to the system, to be printed as text. */
  @state() private link = "";
  @state() private view: View = sheetView;
  @state() private place = "";
  /** Whether what opens and saves files has been fetched. */
  @state() private complete = false;
  private sheet!: Sheet;
  private behind: AfterFrame | null = null;
  private keeping = 0;
  private keeps = true;
  /** Shows workings beside the page; fetched when the first figure is opened. */
  private why: WhyController | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener("keydown", this.onKey);
    addEventListener("hashchange", this.onAddress);
    void this.onAddress();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener("keydown", this.onKey);
    removeEventListener("hashchange", this.onAddress);
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("examples") && this.sheet === undefined) this.begin();
  }

  override render() {
    const { sheet, units, examples, place, view } = this;
    const outside = view.apart ? "no-print" : "";
    return html`
      <header class=${outside}>
        <h1>Thirstline</h1>
        <p>Will the pump get the fuel it asks for, through these filters and lines?</p>
        ${this.exampleChoice()}${this.unitChoice()}
        ${this.row()}
      </header>
      <div class="body" @sheet-edit=${this.onEdit} @sheet-print=${this.print} @figure-why=${this.onWhy}
        @sheet-open=${(event: HTMLElementEventMap["sheet-open"]) => this.open(event.system, event.notice)}>
        <section class="desk no-print" ?hidden=${view.apart ?? false} aria-label="File">${this.desk()}</section>
        ${this.notices()}
        <main>${view.show({ sheet, units, examples, place, marked: this.why?.marked ?? null })}</main>
      </div>
      ${this.why?.panel(sheet.system, units, view.id)}
      ${this.onPaper()}
      <footer class=${outside}>${safetyWords.map((words) => html`<p>${words}</p>`)}</footer>`;
  }

  protected override async firstUpdated(): Promise<void> {
    await whenPainted();
    const [{ AfterFrame }] = await Promise.all([import("../model/AfterFrame.js"), import("./file-desk.js")]);
    this.behind = new AfterFrame(this, () => this.requestUpdate());
    this.complete = true;
  }

  /** Opens what was kept, or the first example. */
  private begin(): void {
    const [first] = this.examples;
    if (first === undefined) return;
    const before = kept();
    try {
      if (before === null) throw new Error("nothing was kept");
      this.sheet = new Sheet(before.system);
      const day = new Intl.DateTimeFormat(undefined, { dateStyle: "long", timeStyle: "short" }).format(before.at);
      this.notice = `Brought back what was on the sheet on ${day}.`;
    } catch {
      // Nothing there, or from a version that wrote something else.
      this.sheet = new Sheet(first.system);
    }
    this.sheet.addEventListener("changed", () => {
      // A view that shows the sheet follows it itself, and first.
      if (this.behind) this.behind.ask();
      else this.requestUpdate();
      // One that waits is not put off: to do that at every step of a slider would cost more than to keep now and then.
      this.keeping ||= window.setTimeout(() => {
        this.keeping = 0;
        if (!keep(this.sheet.system) && this.keeps) {
          this.keeps = false; // told once
          this.notice = "This browser keeps nothing: save the file before you close the page.";
        }
      }, KEPT_AFTER);
    });
  }

  private readonly onAddress = async (): Promise<void> => {
    const { view, place } = viewAt(location.hash);
    await view.load();
    // Another may have been asked for while this one was fetched.
    if (viewAt(location.hash).view !== view) return;
    const another = view !== this.view;
    this.view = view;
    this.place = place;
    await this.updateComplete;
    if (another) scrollTo(0, 0);
  };

  private onEdit(event: HTMLElementEventMap["sheet-edit"]): void {
    if (!this.sheet.edit(event.change, event.merge)) event.preventDefault();
  }

  private open(system: Sheet["system"], notice: string): void {
    if (this.sheet.take(system)) this.notice = notice;
  }

  private async onWhy(event: HTMLElementEventMap["figure-why"]): Promise<void> {
    const [opener] = event.composedPath();
    const { WhyController } = await import("../working/rest-of-working.js");
    this.why ??= new WhyController(this);
    await this.why.open(event, opener, this.view.id);
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    const [target] = event.composedPath();
    const typing =
      target instanceof HTMLTextAreaElement ||
      (target instanceof HTMLInputElement && !["range", "radio", "checkbox"].includes(target.type));
    if (typing || !(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    if (key !== "z" && key !== "y") return;
    event.preventDefault();
    this.sheet.step(key === "y" || event.shiftKey ? "redo" : "undo");
  };

  private async print({ link }: HTMLElementEventMap["sheet-print"]): Promise<void> {
    this.link = link;
    await this.updateComplete;
    print();
  }

  private row() {
    if (views.length < 2) return nothing;
    return html`<nav class="no-print" aria-label="Views">${views.map(
      ({ id, label }) => html`<a href=${`#${id}`} aria-current=${id === this.view.id ? "page" : nothing}>${label}</a>`,
    )}</nav>`;
  }

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

  private desk() {
    if (!this.complete) return nothing;
    const { sheet } = this;
    return html`<button type="button" ?disabled=${!sheet.canUndo} @click=${() => sheet.step("undo")}>Undo</button>
      <button type="button" ?disabled=${!sheet.canRedo} @click=${() => sheet.step("redo")}>Redo</button>
      <file-desk .system=${sheet.system} .examples=${this.examples}></file-desk>`;
  }

  private onPaper() {
    if (this.view !== sheetView) return nothing;
    const { name } = this.sheet.system;
    const day = longDay.format();
    return html`<p class="on-paper">${name}, ${fileNameOf(name)}.yaml, printed on ${day}. ${this.link}</p>`;
  }

  private exampleChoice() {
    const { name } = this.sheet.system;
    const at = this.examples.findIndex(({ system }) => system.name === name);
    return html`<label class="no-print"><span class="unseen">Open an example</span>
      <select @change=${(event: Event) => this.openExample((event.target as HTMLSelectElement).value)}>
        ${at === -1 ? html`<option value="" selected>${name}</option>` : nothing}
        ${this.examples.map(({ file, system }, index) => html`<option value=${file} .selected=${index === at}>${system.name}</option>`)}
      </select></label>`;
  }

  private openExample(file: string): void {
    const found = this.examples.find((example) => example.file === file);
    if (found) this.open(found.system, openedWords(found.file, found.cautions ?? []));
  }

  private unitChoice() {
    const one = (units: UnitSystem, words: string) => html`<label><input type="radio" name="units" value=${units}
      .checked=${this.units === units} @change=${() => {
        this.units = units;
        keepUnits(units);
      }} /><span>${words}</span></label>`;
    return html`<fieldset class="choice no-print" aria-label="Units">${one("metric", "Metric")}${one("us", "US")}</fieldset>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "thirstline-page": ThirstlinePage;
  }
}
