import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Columns } from "../chart/Columns.js";
import { csvOf } from "../chart/csvOf.js";
import { pictureOf } from "../drawing/pictureOf.js";
import { controlStyles } from "../look/sheetStyles.js";
import { saveFile } from "../model/saveFile.js";

/** Saves a drawing as a picture or a drawing, and its figures as a table. */
@customElement("save-row")
export class SaveRow extends LitElement {
  static override styles = [
    controlStyles,
    css`
    :host { display: flex; flex-wrap: wrap; gap: 4px; align-items: center; font-size: 0.86rem; color: var(--soft); }
    button { font-size: 0.86rem; padding: 0 12px; }
    p { color: var(--limit); flex: 1 0 100%; }
    @media print { :host { display: none; } }
  `,
  ];
  /** What is saved, for people. */
  @property() what = "";
  /** Name of the file, without its ending. */
  @property() file = "";
  /** Makes the drawing when it is asked for; null where there is none. */
  @property({ attribute: false }) drawing: () => string | null = () => null;
  @property({ attribute: false }) columns: () => Columns | null = () => null;
  @state() private fault = "";

  override render() {
    const one = (kind: string, save: () => void) =>
      html`<button type="button" aria-label=${`Save ${this.what} as ${kind}`} @click=${save}>${kind}</button>`;
    return html`<span>Save as</span>${one("PNG", this.savePicture)}${one("SVG", this.saveDrawing)}${one("CSV", this.saveFigures)}
      ${this.fault === "" ? nothing : html`<p role="alert">${this.fault}</p>`}`;
  }

  private saveDrawing(): void {
    const drawing = this.drawing();
    if (drawing !== null) saveFile(`${this.file}.svg`, new Blob([drawing], { type: "image/svg+xml" }));
  }

  private async savePicture(): Promise<void> {
    const drawing = this.drawing();
    if (drawing === null) return;
    try {
      saveFile(`${this.file}.png`, await pictureOf(drawing));
      this.fault = "";
    } catch {
      this.fault = "This browser cannot make that picture; save it as SVG.";
    }
  }

  private saveFigures(): void {
    const columns = this.columns();
    if (columns !== null) saveFile(`${this.file}.csv`, new Blob([csvOf(columns)], { type: "text/csv" }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "save-row": SaveRow;
  }
}
