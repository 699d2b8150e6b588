import type { System } from "@thirstline/spec/system";
import { type CheckPoint, type UnitSystem, unitOf } from "@thirstline/study";
import { css, html, LitElement, nothing, type SVGTemplateResult, svg } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import type { MapPoint } from "../map/coldMapMessages.js";
import { MapWorker } from "../map/MapWorker.js";
import { type UnsureRange, unsureRanges } from "../map/unsureRanges.js";
import { scaledDemand } from "../model/demand.js";
import { EditEvent } from "../model/events.js";
import { ticks } from "../path/ticks.js";

/** Fuel temperatures across the map, K: -40 to 60 degC. */
const TEMPERATURES = Array.from({ length: 26 }, (_, at) => 233.15 + 4 * at);
const [COLDEST, WARMEST] = [233.15, 333.15];
const HEIGHT = 320;
const ROOM = { left: 62, right: 8, top: 12, bottom: 44 };

/**
 * Where it starves: temperature across, demand up.
 * @fires sheet-edit - when the map is pressed: temperature and demand go there
 */
@customElement("cold-map")
export class ColdMap extends LitElement {
  static override styles = [
    controlStyles,
    css`
    :host { display: block; }
    svg { display: block; width: 100%; cursor: crosshair; touch-action: pan-y; }
    text { font: 13px var(--face); fill: var(--soft); font-variant-numeric: tabular-nums; }
    .said { font-weight: 650; fill: var(--ink); paint-order: stroke; stroke: var(--paper); stroke-width: 5; stroke-linejoin: round; }
    .starves { fill: var(--limit); opacity: 0.26; }
    .hatch { stroke: var(--limit); stroke-width: 1.5; opacity: 0.7; }
    .perhaps { fill: var(--limit); opacity: 0.12; }
    .tight { fill: var(--wash); }
    .holds { fill: var(--raised); }
    .unsure { fill: url(#dots); }
    .dot { fill: var(--cold); }
    .edge { fill: none; stroke: var(--limit); stroke-width: 2.5; }
    .clean { fill: none; stroke: var(--limit); stroke-width: 1.5; stroke-dasharray: 8 5; }
    .cold { stroke: var(--cold); stroke-width: 1.5; stroke-dasharray: 2 4; }
    .cold-text { fill: var(--cold); }
    .duty { fill: var(--fuel-bright); stroke: var(--ink); stroke-width: 2; }
    .axis { stroke: var(--edge); }
  `,
  ];
  @property({ attribute: false }) system!: System;
  @property({ attribute: false }) point!: CheckPoint;
  @property() units: UnitSystem = "metric";
  @state() private points: readonly MapPoint[] = [];
  @state() private width = 0;
  private worker: MapWorker | null = null;
  /** As wide as the element and without height, so that watching it does not answer to what is drawn. */
  @query(".ruler") private readonly ruler!: HTMLElement | null;
  private readonly watcher = new ResizeObserver(([entry]) => {
    this.width = Math.floor(entry?.contentRect.width ?? 0);
  });

  override connectedCallback(): void {
    super.connectedCallback();
    this.worker = new MapWorker((points) => {
      this.points = points;
    });
    if (this.ruler) this.watcher.observe(this.ruler);
    this.requestUpdate("system");
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.worker?.end();
    this.worker = null;
    this.watcher.disconnect();
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has("system")) this.worker?.ask(this.system, TEMPERATURES);
  }

  protected override firstUpdated(): void {
    if (this.ruler) this.watcher.observe(this.ruler);
  }

  override render() {
    return html`<div class="ruler"></div><h2>Where it starves</h2>
      <p class="quiet">Temperature across, demand up. Press the map to go there.</p>
      ${this.width < 120 || this.points.length === 0 ? nothing : this.map()}`;
  }

  private map() {
    const top = this.top();
    const line = (of: (point: MapPoint) => number): string =>
      this.points.map((one) => this.xy(one.temperature, Math.min(of(one), top), top)).join("L");
    const [left, right, floor] = [ROOM.left, this.width - ROOM.right, HEIGHT - ROOM.bottom];
    const under = (d: string): string => `M${left} ${floor}L${d}L${right} ${floor}Z`;
    const [low, high, clean] = [
      line((one) => one.atChange.low),
      line((one) => one.atChange.high),
      line((one) => one.clean),
    ];
    return html`<svg height=${HEIGHT} role="img" aria-label="Map of the ceilings over temperature; the sliders for temperature and demand go where the map goes."
        @pointerdown=${this.onPoint} @pointermove=${(event: PointerEvent) => event.buttons === 1 && this.onPoint(event)}>
      <defs>
        <pattern id="hatching" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch" d="M0 0V9" /></pattern>
        <pattern id="dots" width="9" height="9" patternUnits="userSpaceOnUse"><circle class="dot" cx="2" cy="2" r="1.2" /></pattern>
      </defs>
      <rect class="starves" x=${left} y=${ROOM.top} width=${right - left} height=${floor - ROOM.top} />
      <rect fill="url(#hatching)" x=${left} y=${ROOM.top} width=${right - left} height=${floor - ROOM.top} />
      <path class="holds" d=${under(high)} /><path class="perhaps" d=${under(high)} />
      <path class="holds" d=${under(low)} /><path class="tight" d=${under(low)} /><path class="holds" d=${under(clean)} />
      ${unsureRanges(this.points, this.point.fuel.cloudPoint).map((one) => this.unsureArea(one))}
      <path class="clean" d=${`M${clean}`} /><path class="edge" d=${`M${low}`} />
      ${this.words(top)}${this.axes(top)}
      <circle class="duty" r="7" cx=${this.x(this.point.temperature)} cy=${this.y(this.point.demand.total, top)} />
    </svg>`;
  }

  private unsureArea({ from, to, wax }: UnsureRange): SVGTemplateResult {
    const [left, right, floor] = [this.x(from), this.x(to), HEIGHT - ROOM.bottom];
    return svg`<rect class="unsure" x=${left} y=${ROOM.top} width=${right - left} height=${floor - ROOM.top} />
      ${wax ? svg`<path class="cold" d="M${right} ${ROOM.top}V${floor}" />` : nothing}
      ${right - left < 50 ? nothing : svg`<text class="said cold-text" x=${(left + right) / 2} y=${floor - 12} text-anchor="middle">${wax ? "wax" : "no data"}</text>`}`;
  }

  /** Names for the areas, each where its area is tall enough to hold it. */
  private words(top: number) {
    const at = this.points[Math.floor(this.points.length * 0.72)];
    if (at === undefined) return nothing;
    const x = this.x(at.temperature);
    const areas = [
      { words: "gets its fuel", from: 0, to: Math.min(at.clean, top) },
      { words: "no room for soil", from: at.clean, to: Math.min(at.atChange.low, top) },
      { words: "a flow test would settle it", from: at.atChange.low, to: Math.min(at.atChange.high, top) },
      { words: "starves", from: at.atChange.high, to: top },
    ];
    return areas
      .filter(({ from, to }) => this.y(from, top) - this.y(to, top) > 26)
      .map(
        ({ words, from, to }) =>
          svg`<text class="said" x=${x} y=${this.y((from + to) / 2, top) + 5} text-anchor="middle">${words}</text>`,
      );
  }

  private axes(top: number) {
    const [temperature, flow] = [unitOf("temperature", this.units), unitOf("flow", this.units)];
    const zero = temperature.zero ?? 0;
    const floor = HEIGHT - ROOM.bottom;
    const across = ticks(
      (COLDEST - zero) / temperature.size,
      (WARMEST - zero) / temperature.size,
      this.width < 420 ? 4 : 8,
    );
    const up = ticks(0, top / flow.size, 4);
    return svg`<path class="axis" d="M${ROOM.left} ${ROOM.top}V${floor}H${this.width - ROOM.right}" fill="none" />
      ${across.map((one) => svg`<text x=${this.x(one * temperature.size + zero)} y=${floor + 18} text-anchor="middle">${one}</text>`)}
      <text x=${this.width - ROOM.right} y=${floor + 38} text-anchor="end">Temperature of the fuel, ${temperature.symbol}</text>
      ${up.map((one) => svg`<text x=${ROOM.left - 8} y=${this.y(one * flow.size, top) + 5} text-anchor="end">${one}</text>`)}
      <text x="0" y=${floor + 38}>Demand, ${flow.symbol}</text>`;
  }

  /** The largest demand shown, m3/s: over the highest ceiling there is, and well over the demand. */
  private top(): number {
    const { total } = this.point.demand;
    const ceilings = this.points.flatMap(({ clean, atChange }) => [clean, atChange.low, atChange.high]);
    return Math.max(1.5 * total, ...ceilings.filter((one) => one < 5 * total).map((one) => 1.15 * one));
  }

  private x(temperature: number): number {
    return ROOM.left + ((temperature - COLDEST) / (WARMEST - COLDEST)) * (this.width - ROOM.left - ROOM.right);
  }

  private y(demand: number, top: number): number {
    return HEIGHT - ROOM.bottom - (demand / top) * (HEIGHT - ROOM.bottom - ROOM.top);
  }

  private xy(temperature: number, demand: number, top: number): string {
    return `${this.x(temperature).toFixed(1)} ${this.y(demand, top).toFixed(1)}`;
  }

  private onPoint(event: PointerEvent): void {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    const across = (event.clientX - box.left - ROOM.left) / (this.width - ROOM.left - ROOM.right);
    const up = (HEIGHT - ROOM.bottom - (event.clientY - box.top)) / (HEIGHT - ROOM.bottom - ROOM.top);
    if (across < 0 || across > 1 || up < 0.01 || up > 1) return;
    // To the half degree, as a thermometer is read.
    const temperature = Number(
      (Math.round((COLDEST + across * (WARMEST - COLDEST) - 273.15) * 2) / 2 + 273.15).toFixed(2),
    );
    const factor = (up * this.top()) / this.point.demand.total;
    this.dispatchEvent(new EditEvent((system) => ({ ...scaledDemand(system, factor), temperature }), "map"));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "cold-map": ColdMap;
  }
}
