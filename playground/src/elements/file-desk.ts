import type { Fault } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import { html, LitElement, nothing } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import { notesIn } from "../file/assumedNotes.js";
import { fileOf } from "../file/fileOf.js";
import { fragmentOf, isSystemFragment, textOf } from "../file/link.js";
import { isUnchanged, losesComments, type Opened, remember, remembered } from "../file/Opened.js";
import { openedExample } from "../file/openedExample.js";
import { openedWords } from "../file/openedWords.js";
import { PlainFault } from "../file/PlainFault.js";
import { PrintEvent } from "../file/PrintEvent.js";
import { deskStyles } from "../look/deskStyles.js";
import { controlStyles } from "../look/sheetStyles.js";
import type { Example } from "../model/Example.js";
import { OpenEvent } from "../model/events.js";
import { fileNameOf, saveFile } from "../model/saveFile.js";
import "./file-faults.js";

/** More than any system file holds, bytes; larger ones are not even read. */
const TOO_LARGE = 1024 * 1024;

/**
 * Opens and saves system files, the same the command line reads, and makes and opens links.
 * @fires sheet-print - with a link to put on the paper
 * @fires sheet-open - with a system that could be read; a file at fault changes nothing
 */
@customElement("file-desk")
export class FileDesk extends LitElement {
  static override styles = [controlStyles, deskStyles];
  @property({ attribute: false }) system!: System;
  /** Demonstration systems, whose own files are given back as a reader's are. */
  @property({ attribute: false }) examples: readonly Example[] = [];
  @state() private said = "";
  @state() private link = "";
  @state() private over = false;
  @state() private refused: { readonly file: string; readonly text: string; readonly faults: readonly Fault[] } | null =
    null;
  private opened: Opened | null = remembered();
  @query("input[type=file]") private chooser!: HTMLInputElement;

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener("dragover", this.onDragOver);
    addEventListener("dragleave", this.onDragLeave);
    addEventListener("drop", this.onDrop);
    addEventListener("hashchange", this.onLink);
    void this.onLink();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener("dragover", this.onDragOver);
    removeEventListener("dragleave", this.onDragLeave);
    removeEventListener("drop", this.onDrop);
    removeEventListener("hashchange", this.onLink);
  }

  override render() {
    return html`<div class="buttons">
        <label class="button">Open a file<input type="file" accept=".yaml,.yml,.json" @change=${this.onChoose} /></label>
        <button type="button" @click=${this.save}>Save the file</button>
        <button type="button" @click=${this.copyLink}>Copy a link</button>
        <button type="button" @click=${this.printSheet}>Print the sheet</button>
      </div>
      <p class="said" role="status">${this.said}</p>
      ${this.link === "" ? nothing : html`<input class="link" readonly aria-label="Link to this system" .value=${this.link} @focus=${(event: Event) => (event.target as HTMLInputElement).select()} />`}
      ${this.over ? html`<div class="drop">Let go to open the file</div>` : nothing}
      ${
        this.refused === null
          ? nothing
          : html`<file-faults .file=${this.refused.file} .text=${this.refused.text} .faults=${this.refused.faults}
        @file-again=${(event: HTMLElementEventMap["file-again"]) => this.read(event.text, this.refused?.file ?? "")}
        @file-leave=${() => {
          this.refused = null;
        }}></file-faults>`
      }`;
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    // A link stands for the system it was made of.
    if (changed.has("system")) this.link = "";
  }

  /** Reads a file's text; what is at fault is shown on its lines, and the sheet keeps what it has. */
  private async read(text: string | Uint8Array, file: string): Promise<void> {
    const { readSystem } = await import("@thirstline/spec");
    const result = readSystem(text, { file });
    if ("faults" in result) {
      this.refused = {
        file,
        text: typeof text === "string" ? text : new TextDecoder().decode(text),
        faults: result.faults,
      };
      return;
    }
    this.refused = null;
    this.said = "";
    const words = typeof text === "string" ? text : exactText(text);
    this.opened = remember(file, words, result.system);
    this.dispatchEvent(new OpenEvent(result.system, openedWords(file, result.cautions, notesIn(words))));
  }

  private async readFile(file: File | undefined): Promise<void> {
    if (file === undefined) return;
    if (file.size > TOO_LARGE) {
      this.said = `${file.name} is far larger than any system file, so it was not opened.`;
      return;
    }
    await this.read(new Uint8Array(await file.arrayBuffer()), file.name);
  }

  private async save(): Promise<void> {
    try {
      const { opened, system, examples } = this;
      const sources = [opened, await openedExample(system, examples)].filter((one) => one !== null);
      const same = sources.find((one) => isUnchanged(one, system));
      const text = same?.text ?? (await fileOf(system));
      saveFile(`${fileNameOf(system.name)}.yaml`, new Blob([text], { type: "application/yaml" }));
      const lost = same ? undefined : sources.find((one) => losesComments(one, system));
      this.said =
        lost === undefined
          ? ""
          : `Saved. The comments of ${lost.file} are not in it: they are kept only while nothing is changed.`;
    } catch (error) {
      this.said = sayOf(error);
    }
  }

  private async copyLink(): Promise<void> {
    try {
      this.link = await linkOf(this.system);
    } catch (error) {
      this.said = sayOf(error);
      return;
    }
    try {
      await navigator.clipboard.writeText(this.link);
      this.said = "The link is copied. Nothing leaves this device until you send it.";
    } catch {
      this.said = "Copy the link from the box.";
    }
  }

  /** The link goes onto the paper as text, with the day and the file's name. */
  private async printSheet(): Promise<void> {
    this.dispatchEvent(new PrintEvent(await this.linkOrNone()));
  }

  private async linkOrNone(): Promise<string> {
    try {
      return await linkOf(this.system);
    } catch {
      return ""; // too large for a link: the file's name has to do
    }
  }

  private readonly onLink = async (): Promise<void> => {
    const { hash } = location;
    if (!isSystemFragment(hash)) return;
    // Taken out of the address at once, so that a reload shows what was made of it since.
    history.replaceState(null, "", location.pathname + location.search);
    try {
      await this.read(await textOf(hash), "the link");
    } catch (error) {
      this.said = sayOf(error);
    }
  };

  private onChoose(): void {
    void this.readFile(this.chooser.files?.[0]);
    this.chooser.value = ""; // the same file, put right, can be chosen again
  }

  private readonly onDragOver = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    this.over = true;
  };

  private readonly onDragLeave = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.over = false;
  };

  private readonly onDrop = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    this.over = false;
    if (event.defaultPrevented) return; // a view took it for a file of its own
    event.preventDefault();
    void this.readFile(event.dataTransfer.files[0]);
  };
}

/** The address of this page with a system in it. */
async function linkOf(system: System): Promise<string> {
  return new URL(await fragmentOf(await fileOf(system)), location.href).href;
}

/** A file's text to the last byte: a mark of its encoding at the start stays. */
function exactText(bytes: Uint8Array): string {
  return new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
}

function sayOf(error: unknown): string {
  return error instanceof PlainFault ? error.message : "That could not be done here.";
}

declare global {
  interface HTMLElementTagNameMap {
    "file-desk": FileDesk;
  }
}
