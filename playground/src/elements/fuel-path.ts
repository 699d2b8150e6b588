import type { System } from "@thirstline/spec/system";
import { bandText, type CheckPoint, quantity, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import { ChooseEvent } from "../model/events.js";
import { type Chosen, keyOf } from "../model/Place.js";
import { descentOf } from "../path/descentOf.js";
import { drawDescent, type Frame, place } from "../path/drawDescent.js";
import { drawPath } from "../path/drawPath.js";
import { type Gap, gapsOf } from "../path/gapsOf.js";
import { type Laid, type Layout, layout } from "../path/layout.js";
import { deliveryLevels, suctionLevels } from "../path/levelsOf.js";
import { pathStyles } from "../path/pathStyles.js";
import type { Item } from "../path/Station.js";
import { type Sketch, sketch } from "../path/sketch.js";
import { stationsOf } from "../path/stationsOf.js";

/** Width of what is printed on a sheet of A4 or letter paper, px. */
const PAPER_WIDTH = 760;

/**
 * The path from tank to pump in ink, and under it, on the same places, the descent of absolute pressure.
 * @fires sheet-choose - when a part is pressed
 */
@customElement("fuel-path")
export class FuelPath extends LitElement {
  static override styles = [pathStyles, css`:host { display: block; }`];
  /** The system drawn. */
  @property({ attribute: false }) system!: System;
  /** The answer drawn, at one temperature. */
  @property({ attribute: false }) point!: CheckPoint;
  @property() units: UnitSystem = "metric";
  /** What is shown for editing; null for none. */
  @property({ attribute: false }) chosen: Chosen | null = null;
  /** Names of parts a caution is about. */
  @property({ attribute: false }) cautioned: ReadonlySet<string> = new Set();
  @state() private width = 0;
  private paper = false;
  /** As wide as the element and without height, so that watching it does not answer to what is drawn. */
  @query(".ruler") private readonly ruler!: HTMLElement | null;
  private readonly watcher = new ResizeObserver(([entry]) => {
    this.width = Math.floor(entry?.contentRect.width ?? 0);
  });

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.ruler) this.watcher.observe(this.ruler);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.watcher.disconnect();
  }

  protected override firstUpdated(): void {
    if (this.ruler) this.watcher.observe(this.ruler);
  }

  override render() {
    return html`<div class="ruler"></div>${this.width < 200 ? nothing : this.drawing()}`;
  }

  private drawing(): TemplateResult {
    const stations = stationsOf(this.system, this.point);
    const width = this.paper ? PAPER_WIDTH : this.width;
    const laid = layout(stations, width - 66, this.paper);
    const drawn = sketch(laid, width, this.paper);
    return html`<div class="sheet" .style=${`height:${drawn.height}px`}>
      <svg width=${width} height=${drawn.height} role="img" aria-label=${this.inWords(laid)}>
        ${this.descent(laid, drawn)}
        <g transform="translate(${drawn.path.x} ${drawn.path.y})">${drawPath(laid, (tank) => this.level(tank))}</g>
      </svg>
      ${gapsOf(laid.laid).map((gap) => this.gapButton(gap, laid.upright, drawn))}
      <ul class=${laid.upright ? "names upright" : "names"}>
        ${laid.laid.map((one) => this.names(one, laid, drawn))}
      </ul>
    </div>`;
  }

  /** Draws for paper or for the screen, at once: a browser that prints does not wait. */
  toPaper(paper: boolean): void {
    this.paper = paper;
    this.requestUpdate();
    this.performUpdate();
  }

  private descent(laid: Layout, drawn: Sketch): TemplateResult {
    const { system, point, units } = this;
    const descent = descentOf(laid, point);
    const shown = { units, pump: system.pump.kind };
    const suction = suctionLevels(descent, point, shown);
    const delivery = deliveryLevels(descent, point, shown);
    const frame = (from: number, to: number, id: string): Frame => ({
      upright: laid.upright,
      from: from + drawn.descent.along,
      to: to + drawn.descent.along,
      low: drawn.descent.low,
      high: drawn.descent.high,
      units,
      id,
    });
    const moved = (pane: typeof descent.suction) => ({
      ...pane,
      main: pane.main.map(([along, pressure]) => [along + drawn.descent.along, pressure] as const),
      branches: pane.branches.map((falls) =>
        falls.map(([along, pressure]) => [along + drawn.descent.along, pressure] as const),
      ),
    });
    const first = frame(descent.suction.from, descent.suction.to, "under-suction");
    return svg`
      ${laid.upright ? nothing : laid.laid.map(({ middle }) => svg`<path class="guide" d="M${middle + drawn.path.x} ${drawn.guides.from}V${drawn.guides.to}" />`)}
      ${drawDescent(moved(descent.suction), suction, first)}
      ${point.vacuumNow ? this.nowMark(place(Math.max(0, descent.ambient - point.vacuumNow.middle), suction, first), first) : nothing}
      ${suction.note === "" ? nothing : this.note(suction.note, first)}
      ${descent.delivery && delivery ? drawDescent(moved(descent.delivery), delivery, frame(descent.delivery.from, descent.delivery.to, "under-delivery")) : nothing}`;
  }

  /** Where the vacuum stands with the soil that is stated: the line itself is of clean elements. */
  private nowMark(across: number, { upright, to }: Frame): TemplateResult {
    const now = bandText(this.point.vacuumNow ?? this.point.vacuum, "vacuum", this.units);
    return upright
      ? svg`<path class="now" d="M${across} ${to - 34}V${to}" /><text class="level-text" x=${across} y=${to + 14} text-anchor="middle">now</text>`
      : svg`<path class="now" d="M${to - 64} ${across}H${to}" /><text class="level-text" x=${to - 66} y=${across + 5} text-anchor="end">now, soiled: ${now} of vacuum</text>`;
  }

  private note(text: string, { upright, to, low }: Frame): TemplateResult | typeof nothing {
    return upright ? nothing : svg`<text class="note" x=${to} y=${low + 16} text-anchor="end">${text}</text>`;
  }

  private names({ station, from, to, middle, lanes }: Laid, { upright }: Layout, drawn: Sketch): TemplateResult {
    const box = upright
      ? `top:${from + drawn.path.y}px;height:${to - from}px;left:${drawn.names.left}px;width:${drawn.names.width}px`
      : `left:${middle + drawn.path.x}px;width:${to - from - 6}px;top:${drawn.names.top}px`;
    const banked = station.branches.length > 0;
    const most = Math.max(...lanes.map((lane) => lane.length));
    // Across the page a branch is a row of names; down it they stand under one another.
    const columns = upright ? "none" : `repeat(${most}, minmax(0, 1fr))`;
    const rows = lanes.map((lane) => Array.from({ length: upright ? lane.length : most }, (_, at) => lane[at]?.item));
    return html`<li .style=${box}>
      ${this.nameButton(station.item, banked)}
      ${
        banked
          ? html`<div class="inside" .style=${`grid-template-columns:${columns}`}>
          ${rows.flat().map((item) => (item ? this.nameButton(item, false, true) : html`<span></span>`))}</div>`
          : nothing
      }
    </li>`;
  }

  /** A small button on the pipe between two stations. */
  private gapButton({ place, along, behind }: Gap, upright: boolean, { path }: Sketch): TemplateResult {
    const chosen: Chosen = { kind: "gap", place };
    const on = this.chosen !== null && keyOf(this.chosen) === keyOf(chosen);
    const [x, y] = upright ? [path.x, path.y + along] : [path.x + along, path.y];
    return html`<button type="button" class="gap no-print" .style=${`left:${x}px;top:${y}px`} aria-label=${`Add a part behind ${behind}`}
      title="Add a part here" aria-pressed=${on ? "true" : "false"} @click=${() => this.dispatchEvent(new ChooseEvent(on ? null : chosen))}></button>`;
  }

  /** Puts the keyboard on the name of a part, by its key. */
  toName(key: string): void {
    this.renderRoot.querySelector<HTMLElement>(`[data-key="${CSS.escape(key)}"]`)?.focus();
  }

  private nameButton(item: Item, isBank: boolean, inner = false): TemplateResult {
    const key = keyOf(item.chosen);
    const on = this.chosen !== null && keyOf(this.chosen) === key;
    const warned = this.cautioned.has(item.name);
    if (isBank && item.shape.kind === "tank") return html`<span class="name">${item.name} ${this.cost(item)}</span>`;
    return html`<button type="button" class=${inner ? "name inner" : "name"} data-key=${key} aria-pressed=${on ? "true" : "false"}
        @click=${() => this.dispatchEvent(new ChooseEvent(on ? null : item.chosen))}>
      <span>${item.name}${countOf(item)}${warned ? html`\u00a0<b class="mark" title="see the cautions" aria-label="with a caution">!</b>` : nothing}</span>
      ${inner ? nothing : this.cost(item)}
    </button>`;
  }

  private cost({ row, shape }: Item): TemplateResult | typeof nothing {
    if (shape.kind === "pump") return html`<i>${this.pumped()}</i>`;
    if (row === null)
      return shape.kind === "engine" ? html`<i>${quantity(this.point.demand.total, "flow", this.units)}</i>` : nothing;
    if (row.drop === null) return html`<i>nothing flows</i>`;
    const size = quantity(Math.abs(row.drop), "pressure", this.units);
    const sign = Number.parseFloat(size) === 0 ? "" : row.drop < 0 ? "+" : "−";
    return html`<i class=${row.share >= 0.3 ? "big" : ""}>${sign}${size}</i>`;
  }

  private pumped(): string {
    return `${bandText(this.point.vacuum, "vacuum", this.units)} of vacuum`;
  }

  private level(tank: number): number {
    const one = this.system.tanks[tank];
    return one === undefined || one.fullDepth === 0 ? 0.3 : 0.25 + 0.6 * (one.lowDepth / one.fullDepth);
  }

  private inWords({ laid }: Layout): string {
    const names = laid.map(({ station }) => station.item.name).join(", ");
    return `The path of the fuel: ${names}. Under it the absolute pressure behind each part; the figures stand in the table of parts.`;
  }
}

function countOf({ shape }: Item): string {
  return shape.kind === "part" && shape.part.part === "fitting" && shape.part.count > 1 ? ` ×${shape.part.count}` : "";
}

declare global {
  interface HTMLElementTagNameMap {
    "fuel-path": FuelPath;
  }
}
