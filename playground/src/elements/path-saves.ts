import type { CheckPoint, UnitSystem } from "@thirstline/study";
import { html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { partColumns } from "../chart/partColumns.js";
import { pathDrawing } from "../drawing/pathDrawing.js";
import { fileNameOf } from "../model/saveFile.js";
import "./save-row.js";

/** Saves the path with its descent, which stands beside it. */
@customElement("path-saves")
export class PathSaves extends LitElement {
  @property() name = "";
  @property({ attribute: false }) point!: CheckPoint;
  @property() units: UnitSystem = "metric";

  override render() {
    return html`<save-row what="path and descent" .file=${`${fileNameOf(this.name)}-path`} .columns=${() => partColumns(this.point, this.units)}
      .drawing=${() => this.drawing()}></save-row>`;
  }

  private drawing(): string | null {
    const path = (this.getRootNode() as ShadowRoot).querySelector<HTMLElement>("fuel-path");
    return path === null ? null : pathDrawing(path);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "path-saves": PathSaves;
  }
}
