import { type CheckPoint, type PartRow, partWords, quantity, sideWords, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { ownFigure } from "../working/figureButton.js";
import { whyStyles } from "../working/whyStyles.js";

/** Every part with what it costs: the figures of the drawing, for reading and for paper. */
@customElement("parts-table")
export class PartsTable extends LitElement {
  static override styles = [
    whyStyles,
    css`
    .wide { overflow-x: auto; }
    table { border-collapse: collapse; width: 100%; font-size: 0.95rem; }
    caption { text-align: left; font-weight: 650; padding: 10px 0 4px; }
    th, td { text-align: right; padding: 5px 10px; border-bottom: 1px solid var(--rule); white-space: nowrap; }
    th:first-child, td:first-child { text-align: left; white-space: normal; padding-left: 0; }
    thead th { font-weight: 500; color: var(--soft); }
    tbody th { font-weight: 500; }
    .in { padding-left: 1.4em !important; }
    @media print { table { line-height: 1.2; } th, td { padding: 0 8px; } caption { padding: 4px 0 0; } }
    .big td, .big th { font-weight: 700; }
    td button.figure.why { font-weight: inherit; padding: 5px 0 5px 6px; margin: -5px 0; }
  `,
  ];
  @property({ attribute: false }) point!: CheckPoint;
  @property() pump: "none" | "fixed" | "curve" | "pulse" = "fixed";
  @property() units: UnitSystem = "metric";

  override render() {
    const { suction, delivery } = this.point;
    const words = sideWords(this.pump);
    return html`<div class="wide" tabindex="0" role="region" aria-label="Table of parts">
      ${this.side(words.suction, suction)}
      ${delivery.length === 0 ? nothing : this.side(words.delivery, delivery)}
    </div>`;
  }

  private side(name: string, rows: readonly PartRow[]): TemplateResult {
    return html`<table>
      <caption>${name}</caption>
      <thead><tr><th scope="col">Part</th><th scope="col">Flow</th><th scope="col">Costs</th><th scope="col">Share</th>
        <th scope="col">Pressure behind it</th><th scope="col">Re</th></tr></thead>
      <tbody>${rows.map((row) => this.row(row))}</tbody>
    </table>`;
  }

  private row(row: PartRow): TemplateResult {
    const shown = (value: number | null, kind: "flow" | "pressure" | "absolute pressure", figure: string) =>
      value === null ? "nothing flows" : ownFigure(quantity(value, kind, this.units), `${figure} ${row.name}`);
    const share = row.share > 0 ? ownFigure(quantity(row.share, "ratio", this.units), `share of ${row.name}`) : "";
    return html`<tr class=${row.depth === 0 && row.share >= 0.3 ? "big" : ""}>
      <th scope="row" class=${row.depth > 0 ? "in" : ""}>${partWords(row)}</th>
      <td>${shown(row.flow, "flow", "flow in")}</td><td>${shown(row.drop, "pressure", "drop of")}</td><td>${share}</td>
      <td>${shown(row.pressure, "absolute pressure", "pressure behind")}</td>
      <td>${row.reynolds === null ? "" : ownFigure(row.reynolds.toFixed(0), `Reynolds number in ${row.name}`)}${row.regime === "transitional" ? " (between)" : ""}</td>
    </tr>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "parts-table": PartsTable;
  }
}
