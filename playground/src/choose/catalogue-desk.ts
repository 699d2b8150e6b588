import type { Fault } from "@thirstline/spec";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import { FileDrop } from "../file/FileDrop.js";
import { tableIn } from "../file/tableIn.js";
import "../elements/file-faults.js";
import { controlStyles } from "../look/sheetStyles.js";
import type { Catalogue } from "./Catalogue.js";
import { ChooseController } from "./ChooseController.js";
import { forgetCatalogue, keepCatalogue, keptCatalogue } from "./keptCatalogue.js";
import "./work-progress.js";

/** More than any catalogue holds, bytes; larger ones are not even read. */
const TOO_LARGE = 8 * 1024 * 1024;
/** A text longer than this is not offered to be put right on the page: no box is the place for it. */
const TOO_LONG = 200_000;

/** Says that another catalogue is to be chosen from. */
class CatalogueEvent extends Event {
  /** null for the invented one */
  readonly catalogue: Catalogue | null;

  constructor(catalogue: Catalogue | null) {
    super("catalogue-change");
    this.catalogue = catalogue;
  }
}

/**
 * Which catalogue is chosen from: the invented one that comes with the page, or the reader's own, read here, kept in this
 * browser and sent nowhere.
 * @fires catalogue-change
 */
@customElement("catalogue-desk")
export class CatalogueDesk extends LitElement {
  static override styles = [
    controlStyles,
    css`
    :host { display: block; }
    .row { display: flex; flex-wrap: wrap; gap: 8px 16px; align-items: center; }
    .row p { flex: 1 1 18rem; max-width: 60ch; }
    .button { display: inline-flex; align-items: center; box-sizing: border-box; position: relative; }
    .button input { position: absolute; inset: 0; opacity: 0; width: 100%; cursor: pointer; font-size: 0; }
    .button:focus-within { outline: 3px solid var(--cold); outline-offset: 1px; }
    .said { margin-top: 4px; }
    @media print { .row button, .button, .said { display: none; } }
  `,
  ];
  @property({ attribute: false }) catalogue!: Catalogue;
  @state() private said = "";
  @state() private refused: { readonly file: string; readonly text: string; readonly faults: readonly Fault[] } | null =
    null;
  @query("input[type=file]") private chooser!: HTMLInputElement;
  private reading: { readonly file: string; readonly bytes: Uint8Array; readonly keep: boolean } | null = null;
  private readonly work = new ChooseController(this, (told) => {
    if (told.kind === "read") void this.take(told.result);
  });

  constructor() {
    super();
    // A table let go anywhere on the view is a catalogue, and so is anything let go on this desk; other files are systems.
    new FileDrop(this, (event) => {
      const file = event.composedPath().includes(this) ? event.dataTransfer?.files[0] : tableIn(event);
      if (file) void this.readFile(file);
      return Boolean(file);
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.bringBack();
  }

  override render() {
    const { file, elements } = this.catalogue;
    const count = elements.length === 1 ? "One element" : `${elements.length} elements`;
    return html`<div class="row">
        <p>${
          file === null
            ? html`${count} of an <b>invented</b> catalogue, to try things out: none of them can be bought.`
            : html`${count} of <b>${file}</b>, kept on this device only.`
        }</p>
        <label class="button">Open your catalogue<input type="file" accept=".csv,.tsv,.txt,.yaml,.yml,.json" @change=${this.onChoose} /></label>
        ${file === null ? nothing : html`<button type="button" @click=${this.forget}>Forget it</button>`}
      </div>
      <work-progress .progress=${this.work.busy && this.reading?.keep ? { words: `Reading ${this.reading.file}`, done: 0, of: 1 } : null} @work-stop=${() => this.work.stop()}></work-progress>
      <p class="said quiet" role="status">${this.work.refusal === "" ? this.said : `It was not read: ${this.work.refusal}.`}</p>
      ${this.faults()}`;
  }

  private faults() {
    if (this.refused === null) return nothing;
    const { file, text, faults } = this.refused;
    return html`<file-faults .file=${file} .text=${text} .faults=${faults} .kept=${"The catalogue before it is still there."} .editable=${text.length <= TOO_LONG}
      @file-again=${(event: HTMLElementEventMap["file-again"]) => this.read(new TextEncoder().encode(event.text), file, true)}
      @file-leave=${() => {
        this.refused = null;
      }}></file-faults>`;
  }

  private read(bytes: Uint8Array, file: string, keep: boolean): void {
    this.said = "";
    this.reading = { file, bytes, keep };
    this.work.ask({ kind: "read", bytes, file });
  }

  private async take(result: { elements: Catalogue["elements"] } | { faults: readonly Fault[] }): Promise<void> {
    if (this.reading === null) return;
    const { file, bytes, keep } = this.reading;
    if ("faults" in result) {
      // What was kept by an older version, and no longer reads, is not the reader's fault of today.
      if (keep) this.refused = { file, text: new TextDecoder().decode(bytes), faults: result.faults };
      return;
    }
    this.refused = null;
    this.dispatchEvent(new CatalogueEvent({ file, elements: result.elements }));
    if (!keep) return;
    const kept = await keepCatalogue({ file, bytes });
    this.said = kept ? "" : "This browser keeps nothing, so it is there until the page is closed.";
  }

  private async bringBack(): Promise<void> {
    if (this.catalogue.file !== null) return;
    const kept = await keptCatalogue();
    if (kept !== null && this.reading === null) this.read(kept.bytes, kept.file, false);
  }

  private async forget(): Promise<void> {
    await forgetCatalogue();
    this.reading = null;
    this.said = "It is forgotten, here and on this device.";
    this.dispatchEvent(new CatalogueEvent(null));
  }

  private async readFile(file: File | undefined): Promise<void> {
    if (file === undefined) return;
    if (file.size > TOO_LARGE) {
      this.said = `${file.name} is larger than a catalogue may be, 8 MB, so it was not opened.`;
      return;
    }
    this.read(new Uint8Array(await file.arrayBuffer()), file.name, true);
  }

  private onChoose(): void {
    void this.readFile(this.chooser.files?.[0]);
    this.chooser.value = ""; // the same file, put right, can be chosen again
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "catalogue-desk": CatalogueDesk;
  }
  interface HTMLElementEventMap {
    "catalogue-change": CatalogueEvent;
  }
}
