import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { chooseStyles } from "../../choose/chooseStyles.js";
import { FileDrop } from "../../file/FileDrop.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { saveFile } from "../../model/saveFile.js";
import { fieldStyles } from "../fieldStyles.js";
import { chosen, dropped, type Found, opened } from "./openedFiles.js";
import type { YardController } from "./YardController.js";
import { LOG, MACHINES, type YardFile } from "./YardFile.js";

/**
 * Where a yard's files come from and go to; none of them is sent anywhere.
 * @fires yard-invented - to look at the invented yard
 */
@customElement("yard-desk")
export class YardDesk extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    fieldStyles,
    css`
    :host { border-bottom: 1px solid var(--rule); padding-bottom: 12px; }
    .files { display: flex; flex-wrap: wrap; gap: 4px 8px; max-height: 14rem; overflow: auto; }
    .files button { font-size: 0.86rem; padding: 0 10px; }
    @media print { :host { display: none; } }
  `,
  ];
  @property({ attribute: false }) yard!: YardController;
  /** The yard as it stands, so that the desk is drawn again with it. */
  @property({ attribute: false }) files: readonly YardFile[] = [];
  @state() private said = "";
  /** What was opened and waits for a yes, since rows of the log would be lost. */
  @state() private waiting: (() => Promise<void>) | null = null;

  constructor() {
    super();
    new FileDrop(this, (event) => this.takeDrop(event.dataTransfer?.items));
  }

  override render() {
    const { files, yard } = this;
    const own = files.length > 0 && !yard.invented;
    return html`<p class="lead">${this.lead()}</p>
      <div class="row">
        <label class="button file">Open a folder<input type="file" webkitdirectory multiple @change=${(event: Event) => this.onChoose(event, false)} /></label>
        <label class="button file">${own ? "Add files" : "Open files"}<input type="file" multiple accept=".yaml,.yml,.json,.csv" @change=${(event: Event) => this.onChoose(event, own)} /></label>
        ${yard.invented ? html`<button type="button" @click=${() => yard.back()}>Leave the invented yard</button>` : nothing}
        ${files.length === 0 ? html`<button type="button" @click=${() => this.dispatchEvent(new Event("yard-invented"))}>Look at an invented yard</button>` : nothing}
        ${files.some(({ path }) => path === LOG) ? html`<button type="button" @click=${this.saveLog}>Save the log</button>` : nothing}
        ${own ? html`<button type="button" @click=${() => this.sure(() => yard.forget())}>Take it off this device</button>` : nothing}
      </div>
      ${this.asking()}
      <p class="quiet" role="status">${this.said}</p>
      ${files.length === 0 ? nothing : this.saving()}`;
  }

  private lead(): TemplateResult {
    const { files, yard } = this;
    if (yard.invented) return html`This yard is <b>invented</b>, to try things out; nothing of it is kept.`;
    if (files.length === 0) {
      return html`A yard is a folder of system files with a list of its machines (<b>${MACHINES}</b>), a log of what was read and changed (<b>${LOG}</b>) and, if you like, what is on the shelf (<b>shelf.csv</b>). Open it, or drop it here; it stays on this device.`;
    }
    const unsaved = yard.state?.unsaved ?? 0;
    const rows =
      unsaved === 0
        ? ""
        : ` ${unsaved === 1 ? "One row was" : `${unsaved} rows were`} put into its log here since it was saved as a file.`;
    return html`${files.length} files of <b>${yard.state?.name}</b>, kept on this device only.${rows}`;
  }

  private asking(): TemplateResult | typeof nothing {
    const { waiting, yard } = this;
    if (waiting === null) return nothing;
    const unsaved = yard.state?.unsaved ?? 0;
    return html`<div class="row trouble" role="alert"><span>${unsaved === 0 ? "The yard's files go from this device; those they came from stay." : `The log here has ${unsaved === 1 ? "a row" : `${unsaved} rows`} that no file has. Save the log first.`}</span>
      <button type="button" @click=${() => {
        this.waiting = null;
        void waiting();
      }}>${unsaved === 0 ? "Go on" : "Lose them and go on"}</button>
      <button type="button" @click=${() => {
        this.waiting = null;
      }}>Leave it as it is</button></div>`;
  }

  private saving(): TemplateResult {
    const { before } = this.yard;
    return html`<details><summary>Save a file of it</summary><div class="files">
      ${this.files.map((file) => html`<button type="button" @click=${() => save(file, file.path)}>${file.path}</button>`)}
      ${before === null ? nothing : html`<button type="button" @click=${() => save(before, "log-before.csv")}>the log before the last entry</button>`}</div></details>`;
  }

  private saveLog(): void {
    const log = this.files.find(({ path }) => path === LOG);
    if (log === undefined) return;
    save(log, LOG);
    void this.yard.saved();
  }

  /** Asks first where the yard's own log has rows that stand in no file, or the yard itself would go. */
  private sure(act: () => Promise<void>): void {
    this.waiting = act;
  }

  private async take(found: readonly Found[], add: boolean): Promise<void> {
    this.said = "";
    const read = await opened(found);
    if ("refused" in read) {
      this.said = read.refused;
      return;
    }
    const { yard } = this;
    const isLost = !add || read.files.some(({ path }) => path === LOG);
    const act = () => (add ? yard.add(read.files) : yard.open(read.name, read.files));
    if (isLost && !yard.invented && (yard.state?.unsaved ?? 0) > 0) this.sure(act);
    else await act();
  }

  private onChoose(event: Event, add: boolean): void {
    const chooser = event.target as HTMLInputElement;
    if (chooser.files !== null) void this.take(chosen(chooser.files), add);
    chooser.value = ""; // the same files, put right, can be chosen again
  }

  /** A folder is a yard of its own; one file more goes into the yard that is open. */
  private takeDrop(items: DataTransferItemList | undefined): boolean {
    if (items === undefined || ![...items].some(({ kind }) => kind === "file")) return false;
    const single = items.length === 1 && items[0]?.webkitGetAsEntry()?.isFile === true;
    const add = single && this.files.length > 0 && !this.yard.invented;
    void dropped(items).then((found) => this.take(found, add));
    return true;
  }
}

function save({ bytes, path }: YardFile, name: string): void {
  saveFile(
    name.slice(name.lastIndexOf("/") + 1),
    new Blob([bytes], { type: path.endsWith(".csv") ? "text/csv" : "application/yaml" }),
  );
}

declare global {
  interface HTMLElementTagNameMap {
    "yard-desk": YardDesk;
  }
}
