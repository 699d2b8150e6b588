import type { System } from "@thirstline/spec/system";
import {
  figOf,
  moneyText,
  plain,
  type QuantityKind,
  quantity,
  say,
  type UnitSystem,
  unitOf,
  type Words,
} from "@thirstline/study";
import { css, html, LitElement, nothing, svg } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { stepByKey } from "../model/stepByKey.js";
import { WidthController } from "../model/WidthController.js";
import { wordsHtml } from "../words/wordsHtml.js";
import type { Subject } from "../working/Question.js";
import { whyStyles } from "../working/whyStyles.js";
import { choiceFigures } from "./choiceFigures.js";
import { scaleOf, ticksBetween } from "./plotScale.js";
import { plotStyles } from "./plotStyles.js";
import type { SizeRow } from "./SizeRow.js";

const HEIGHT = 330;
const ROOM = { top: 26, right: 12, bottom: 46, left: 44 };

/** Says which arrangement the chart stands at. */
class ShowEvent extends Event {
  readonly key: string;

  constructor(key: string) {
    super("size-show");
    this.key = key;
  }
}

/**
 * What room under the limit costs: every listed arrangement by its yearly cost and its vacuum, those that no other beats
 * joined. The keys go from point to point; the figures stand in the list.
 * @fires size-show
 */
@customElement("size-chart")
export class SizeChart extends LitElement {
  static override styles = [
    controlStyles,
    whyStyles,
    plotStyles,
    css`
    :host { display: block; min-width: 0; }
    .frame { position: relative; cursor: crosshair; touch-action: pan-y; }
    .frame:focus-visible { outline: 3px solid var(--cold); outline-offset: 4px; border-radius: 4px; }
    .point { fill: var(--paper); stroke: var(--ink); stroke-width: 1.5; }
    .point.front { fill: var(--fuel); stroke: var(--ink); }
    .front-line { fill: none; stroke: var(--fuel); stroke-width: 2; }
    .shown { fill: none; stroke: var(--ink); stroke-width: 2.5; }
    p { margin: 0 0 8px; max-width: 46em; }
    .at { min-height: 3em; }
    .at b { font-weight: 650; }
    @media print { .at, .no-print { display: none; } p { max-width: none; } }
  `,
  ];
  @property({ attribute: false }) rows: readonly SizeRow[] = [];
  /** Most vacuum with clean elements, Pa; null where nothing says. */
  @property({ attribute: false }) limit: number | null = null;
  @property({ attribute: false }) pump: System["pump"]["kind"] = "fixed";
  @property({ attribute: false }) units: UnitSystem = "metric";
  /** What the figures are of. */
  @property({ attribute: false }) subject!: Subject;
  @property({ attribute: false }) shown: string | null = null;
  private readonly place = new WidthController(this);
  private spots: { readonly row: SizeRow; readonly x: number; readonly y: number }[] = [];

  override render() {
    const priced = this.rows.filter(({ arrangement }) => arrangement.yearlyCost !== null);
    if (priced.length < 2) return nothing;
    const ordered = [...priced].sort((one, other) => costOf(one) - costOf(other));
    const at = Math.max(
      0,
      ordered.findIndex(({ key }) => key === this.shown),
    );
    const row = ordered[at] as SizeRow;
    const words = this.wordsOf(row);
    return html`<h2>What less vacuum costs</h2>
      <p class="quiet">Each point is one arrangement on the list; those that no other beats are joined. <span class="no-print">The arrow keys go from one to the next.</span></p>
      ${this.place.ruler()}
      <div class="frame" tabindex="0" role="slider" aria-label="Arrangements by yearly cost" aria-valuemin="1" aria-valuemax=${ordered.length} aria-valuenow=${at + 1}
        aria-valuetext=${`${row.words}: ${plain(words)}`} @keydown=${(event: KeyboardEvent) => this.onKey(event, ordered, at)} @pointermove=${this.onPointer} @pointerdown=${this.onPointer}>
        ${this.place.width === 0 ? nothing : this.drawing(ordered, this.place.width, row)}</div>
      <p class="at"><b>${row.words}</b>: ${wordsHtml(words, choiceFigures(this.subject))}</p>`;
  }

  private drawing(rows: readonly SizeRow[], width: number, shown: SizeRow) {
    const unit = unitOf("vacuum", this.units);
    const vacuum = ({ arrangement }: SizeRow) => arrangement.vacuum / unit.size;
    const limit = this.limit === null ? null : this.limit / unit.size;
    // Dear ones far out would press all the others together.
    const front = rows.filter(({ arrangement }) => arrangement.pareto).map(costOf);
    const most = Math.max(...(front.length > 1 ? front : rows.map(costOf))) * 1.15;
    const drawn = rows.filter((row) => costOf(row) <= most);
    const ends = [...drawn.map(vacuum), ...(limit === null ? [] : [limit])];
    const pad = (Math.max(...ends) - Math.min(...ends)) * 0.06 || 1;
    const x = scaleOf(0, most, ROOM.left, width - ROOM.right);
    const y = scaleOf(Math.min(...ends) - pad, Math.max(...ends) + pad, HEIGHT - ROOM.bottom, ROOM.top);
    this.spots = drawn.map((row) => ({ row, x: x(costOf(row)), y: y(vacuum(row)) }));
    const dearer = rows.length - drawn.length;
    const what = this.pump === "none" ? "vacuum at the engine" : "vacuum at the pump, clean";
    return html`<svg viewBox=${`0 0 ${width} ${HEIGHT}`} aria-hidden="true">
      <text x="0" y="14">${unit.symbol}, ${what}</text>
      ${ticksBetween(Math.min(...ends) - pad, Math.max(...ends) + pad, 5).map((tick) => svg`<line class="axis" x1=${ROOM.left} x2=${width - ROOM.right} y1=${y(tick)} y2=${y(tick)} /><text x=${ROOM.left - 8} y=${y(tick) + 5} text-anchor="end">${tick}</text>`)}
      ${ticksBetween(0, most, width < 420 ? 3 : 6).map((tick) => svg`<line class="axis" x1=${x(tick)} x2=${x(tick)} y1=${HEIGHT - ROOM.bottom} y2=${HEIGHT - ROOM.bottom + 5} /><text x=${x(tick)} y=${HEIGHT - ROOM.bottom + 22} text-anchor="middle">${tick}</text>`)}
      <text x=${width - ROOM.right} y=${HEIGHT - 6} text-anchor="end">cost a year${dearer > 0 ? `, ${dearer} dearer ones left out` : ""}</text>
      <line class="base" x1=${ROOM.left} x2=${width - ROOM.right} y1=${HEIGHT - ROOM.bottom} y2=${HEIGHT - ROOM.bottom} />
      ${limit === null ? nothing : svg`<line class="limit" x1=${ROOM.left} x2=${width - ROOM.right} y1=${y(limit)} y2=${y(limit)} /><text class="limit-name" x=${width - ROOM.right} y=${y(limit) - 6} text-anchor="end">clean limit</text>`}
      <polyline class="front-line" points=${frontOf(this.spots)} />
      ${this.spots.map(({ row, x: cx, y: cy }) => (row.arrangement.pareto ? nothing : svg`<circle class="point" cx=${cx} cy=${cy} r="4" />`))}
      ${this.spots.map(({ row, x: cx, y: cy }) => (row.arrangement.pareto ? svg`<path class="point front" d=${`M${cx} ${cy - 7}l7 7-7 7-7-7z`} />` : nothing))}
      ${this.spots.filter(({ row }) => row === shown).map(({ x: cx, y: cy }) => svg`<circle class="shown" cx=${cx} cy=${cy} r="12" />`)}
    </svg>`;
  }

  /** What is said of an arrangement, its figures by the names of their workings. */
  private wordsOf({ of, arrangement, figures, best }: SizeRow): Words {
    const { yearlyCost, vacuum, changesAYear, pareto } = arrangement;
    const live = (figure: string, text: string) => figOf(of, figure, text);
    const shown = (figure: string, value: number, kind: QuantityKind) =>
      live(figure, quantity(value, kind, this.units));
    const kept = best.length > 0 ? `; ${best.join(", ")}` : pareto ? "; no other beats it" : "";
    const judged =
      figures === null
        ? ""
        : say`, ${shown("least in hand", figures.inHand, "ratio")} in hand, lasts ${figures.life === null ? "over ten years" : shown("end of life", figures.life, "running time")}`;
    const cost = live("cost of a year", moneyText(yearlyCost ?? 0));
    const changes = live("elements changed in a year", changesAYear.toFixed(0));
    return say`${cost} a year, ${shown("most vacuum", vacuum, "vacuum")}, ${changes} changed a year${judged}${kept}`;
  }

  private onKey(event: KeyboardEvent, ordered: readonly SizeRow[], at: number): void {
    const place = stepByKey(event.key, at, ordered.length - 1);
    const next = place === null ? undefined : ordered[place];
    if (!next) return;
    event.preventDefault();
    this.show(next);
  }

  private onPointer(event: PointerEvent): void {
    const frame = (event.currentTarget as HTMLElement).getBoundingClientRect();
    const [x, y] = [event.clientX - frame.left, event.clientY - frame.top];
    const away = (spot: { x: number; y: number }) => (spot.x - x) ** 2 + (spot.y - y) ** 2;
    const [nearest] = [...this.spots].sort((one, other) => away(one) - away(other));
    if (nearest && away(nearest) < 40 ** 2) this.show(nearest.row);
  }

  private show({ key }: SizeRow): void {
    if (key !== this.shown) this.dispatchEvent(new ShowEvent(key));
  }
}

function costOf({ arrangement }: SizeRow): number {
  return arrangement.yearlyCost ?? Infinity;
}

/** The front of cost and vacuum alone, since those are what is drawn: by rising cost, each with less vacuum than all before. */
function frontOf(spots: readonly { readonly row: SizeRow; readonly x: number; readonly y: number }[]): string {
  let least = -Infinity;
  return spots
    .filter(({ row, y }) => {
      if (!row.arrangement.pareto || y <= least) return false;
      least = y;
      return true;
    })
    .map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`)
    .join(" ");
}

declare global {
  interface HTMLElementTagNameMap {
    "size-chart": SizeChart;
  }
  interface HTMLElementEventMap {
    "size-show": ShowEvent;
  }
}
