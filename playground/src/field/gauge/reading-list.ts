import type { GaugeReading } from "@thirstline/spec/system";
import { figure, type QuantityKind, type UnitSystem, unitOf } from "@thirstline/study";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { chooseStyles } from "../../choose/chooseStyles.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { readingWords } from "./reading-form.js";

/** Rows shown at first, and more of them at a time. */
const SHOWN = 12;

/** Says which reading is meant. */
class RowEvent extends Event {
  readonly row: number;

  constructor(name: "reading-change" | "reading-remove", row: number) {
    super(name);
    this.row = row;
  }
}

const columns: readonly {
  readonly head: string;
  readonly kind: QuantityKind;
  readonly of: (one: GaugeReading) => number | undefined;
}[] = [
  { head: "hours", kind: "running time", of: ({ hours }) => hours },
  { head: "vacuum", kind: "vacuum", of: ({ vacuum }) => vacuum },
  { head: "feed", kind: "pressure", of: ({ feedPressure }) => feedPressure },
  { head: "load", kind: "ratio", of: ({ load }) => load },
  { head: "flow", kind: "flow", of: ({ flow }) => flow },
  { head: "fuel", kind: "temperature", of: ({ temperature }) => temperature },
  { head: "level", kind: "length", of: ({ depth }) => depth },
];

/**
 * The readings, the latest first.
 * @fires reading-change - one is to be typed over
 * @fires reading-remove - one is to be taken out
 */
@customElement("reading-list")
export class ReadingList extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    css`
    td.number { padding-left: 4px; }
    td.number:first-child, th.number:first-child { text-align: left; }
    td:last-child { white-space: nowrap; padding-right: 0; }
    td button { font-size: 0.86rem; padding: 0 10px; border-color: transparent; background: none; text-decoration: underline; text-underline-offset: 3px; }
    td button:hover { border-color: var(--edge); }
    .note { min-width: 7rem; }
    th.number { font-weight: 500; color: var(--soft); }
  `,
  ];
  @property({ attribute: false }) readings: readonly GaugeReading[] = [];
  @property() units: UnitSystem = "metric";
  @state() private most = SHOWN;

  override render() {
    const { readings, units } = this;
    const used = columns.filter(({ of }) => readings.some((one) => of(one) !== undefined));
    const dated = readings.some(({ date }) => date !== undefined);
    const shown = readings.slice(-this.most).reverse();
    return html`<div class="scroll" tabindex="0" role="region" aria-label="Readings"><table>
        <thead><tr>${dated ? html`<th scope="col">day</th>` : nothing}${used.map(({ head, kind }) => html`<th scope="col" class="number">${head}, ${unitOf(kind, units).symbol}</th>`)}
          <th scope="col">note</th><td></td></tr></thead>
        <tbody>${shown.map((one) => this.row(one, used, dated))}</tbody></table></div>
      ${
        readings.length <= this.most
          ? nothing
          : html`<button type="button" @click=${() => {
              this.most += 100;
            }}>Show earlier ones (${readings.length - this.most})</button>`
      }`;
  }

  private row(one: GaugeReading, used: typeof columns, dated: boolean) {
    const { units } = this;
    const words = readingWords(one, units);
    const note = [one.changed ? "elements changed" : "", one.note ?? ""].filter(Boolean).join("; ");
    return html`<tr>${dated ? html`<td>${one.date ?? ""}</td>` : nothing}
      ${used.map(({ kind, of }) => html`<td class="number">${textOf(of(one), kind, units)}</td>`)}
      <td class="note">${note}</td>
      <td><button type="button" aria-label=${`Change the reading of ${words}`} @click=${() => this.tell("reading-change", one)}>Change</button>
        <button type="button" aria-label=${`Take out the reading of ${words}`} @click=${() => this.tell("reading-remove", one)}>Take out</button></td></tr>`;
  }

  private tell(name: "reading-change" | "reading-remove", { row }: GaugeReading): void {
    this.dispatchEvent(new RowEvent(name, row));
  }
}

function textOf(value: number | undefined, kind: QuantityKind, units: UnitSystem): string {
  return value === undefined ? "" : figure(value, kind, units);
}

declare global {
  interface HTMLElementTagNameMap {
    "reading-list": ReadingList;
  }
  interface HTMLElementEventMap {
    "reading-change": RowEvent;
    "reading-remove": RowEvent;
  }
}
