import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import { chooseStyles } from "../../choose/chooseStyles.js";
import { FileDrop } from "../../file/FileDrop.js";
import { tableIn } from "../../file/tableIn.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { fieldStyles } from "../fieldStyles.js";
import { demoReadings } from "./demoReadings.js";

/** More than a table of readings may be, bytes; larger ones are not even read. */
const TOO_LARGE = 4 * 1024 * 1024;

/** Asks for a file's readings to be shown. */
class ReadingsOpenEvent extends Event {
  readonly file: string;
  readonly given: string | Uint8Array;
  /** whether they are the machine's own, to be kept */
  readonly keep: boolean;

  constructor(file: string, given: string | Uint8Array, keep: boolean) {
    super("readings-open");
    this.file = file;
    this.given = given;
    this.keep = keep;
  }
}

/**
 * Where readings come from and go to: a file, a pasted table, the invented ones.
 * @fires readings-open - with a file's text
 * @fires readings-save - to save them as a file
 * @fires readings-back - from invented ones to the machine's own
 * @fires readings-forget - to take all of them out
 */
@customElement("readings-desk")
export class ReadingsDesk extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    fieldStyles,
    css`
    :host { border-bottom: 1px solid var(--rule); padding-bottom: 12px; }
    textarea { width: 100%; min-height: 9rem; box-sizing: border-box; font: 0.86rem/1.5 var(--mono); color: var(--ink); background: var(--raised);
      border: 1px solid var(--edge); border-radius: 4px; padding: 10px; white-space: pre; overflow-x: auto; }
    textarea:focus-visible { outline: 3px solid var(--cold); }
    .invented { margin-top: 8px; }
    @media print { :host { display: none; } }
  `,
  ];
  @property() machine = "";
  /** The invented readings shown; null for the machine's own. */
  @property({ attribute: false }) demo: string | null = null;
  @property({ attribute: false }) count = 0;
  @state() private said = "";
  @state() private sure = false;
  @query("textarea") private pasted!: HTMLTextAreaElement;

  constructor() {
    super();
    // A table let go anywhere here is one of readings; other files are systems, and the page's.
    new FileDrop(this, (event) => {
      const table = tableIn(event);
      if (table) void this.readFile(table);
      return table !== null;
    });
  }

  override render() {
    const { count, demo, machine } = this;
    return html`<p class="lead">${
      demo !== null
        ? html`These readings are <b>invented</b>, to try things out; nothing of them is kept.`
        : count === 0
          ? html`Note what the gauge of <b>${machine}</b> shows, with the load and how warm the fuel is. Four readings at different hours are the fewest that tell anything; more of them, over a longer time, tell it better.`
          : html`${count === 1 ? "One reading" : `${count} readings`} of <b>${machine}</b>, kept on this device only.`
    }</p>
      ${count === 0 ? this.files() : html`<details><summary>Open, paste, save or take out readings</summary>${this.files()}</details>`}
      <p class="quiet" role="status">${this.said}</p>
      ${this.invented()}`;
  }

  private files(): TemplateResult {
    const { count, demo } = this;
    return html`<div class="row">
        <label class="button file">Open a table (CSV)<input type="file" accept=".csv,.tsv,.txt" @change=${this.onChoose} /></label>
        ${count === 0 ? nothing : html`<button type="button" @click=${() => this.dispatchEvent(new Event("readings-save"))}>Save as a table</button>`}
        ${demo !== null ? html`<button type="button" @click=${() => this.dispatchEvent(new Event("readings-back"))}>Back to its own readings</button>` : count === 0 ? nothing : this.forgetting()}
      </div>
      <details><summary>Paste a table</summary>
        <label class="quiet" for="pasted">With its heads, such as hours (h),vacuum (kPa),feed pressure (kPa),load (%),temperature (degC),note</label>
        <textarea id="pasted" spellcheck="false"></textarea>
        <button type="button" @click=${() => this.open("the pasted table", this.pasted.value, true)}>Read it</button></details>`;
  }

  private forgetting(): TemplateResult {
    if (!this.sure)
      return html`<button type="button" @click=${() => {
        this.sure = true;
      }}>Take all out</button>`;
    return html`<span>All ${this.count} readings go from this device.</span><button type="button" @click=${() => {
      this.sure = false;
      this.dispatchEvent(new Event("readings-forget"));
    }}>Take them out</button><button type="button" @click=${() => {
      this.sure = false;
    }}>Keep them</button>`;
  }

  private invented(): TemplateResult {
    const isFerry = this.machine.startsWith("Heron");
    return html`<details class="invented" ?open=${this.count === 0 || this.demo !== null}><summary>Invented readings of the ferry</summary>
      ${isFerry ? nothing : html`<p class="quiet">They are of Heron; open it with "Open an example", on top.</p>`}
      <div class="row">${demoReadings.map(
        ({ path, words }) =>
          html`<button type="button" ?disabled=${!isFerry} aria-pressed=${this.demo === path ? "true" : "false"} @click=${() => this.openDemo(path)}>${words}</button>`,
      )}</div></details>`;
  }

  private async openDemo(path: string): Promise<void> {
    const { readings } = await import("virtual:field");
    const found = readings.find((one) => one.path === path);
    if (found) this.open(path, found.text, false);
  }

  private open(file: string, given: string | Uint8Array, keep: boolean): void {
    this.said = "";
    this.dispatchEvent(new ReadingsOpenEvent(file, given, keep));
  }

  private async readFile(file: File | undefined): Promise<void> {
    if (file === undefined) return;
    if (file.size > TOO_LARGE)
      this.said = `${file.name} is larger than a table of readings may be, 4 MB, so it was not opened.`;
    else this.open(file.name, new Uint8Array(await file.arrayBuffer()), true);
  }

  private onChoose(event: Event): void {
    const chooser = event.target as HTMLInputElement;
    void this.readFile(chooser.files?.[0]);
    chooser.value = ""; // the same file, put right, can be chosen again
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "readings-desk": ReadingsDesk;
  }
  interface HTMLElementEventMap {
    "readings-open": ReadingsOpenEvent;
    "readings-save": Event;
    "readings-back": Event;
    "readings-forget": Event;
  }
}
