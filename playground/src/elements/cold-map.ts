import type { System } from "@thirstline/spec/system";
import type { CheckPoint, UnitSystem } from "@thirstline/study";
import { html, LitElement, nothing } from "lit";
import { customElement, property, query } from "lit/decorators.js";
import { HelperController } from "../aside/HelperController.js";
import { inksOf } from "../chart/inksOf.js";
import { nearest } from "../chart/nearest.js";
import { PlotPlace } from "../chart/PlotPlace.js";
import { copyOf } from "../drawing/copyOf.js";
import { drawingText, tag } from "../drawing/tag.js";
import { drawMap } from "../map/drawMap.js";
import { MapFrame, TEMPERATURES } from "../map/MapFrame.js";
import type { MapPoint } from "../map/MapPoint.js";
import { mapColumns, mapReadings } from "../map/mapReadings.js";
import { mapStyles } from "../map/mapStyles.js";
import { toMapPoint } from "../map/toMapPoint.js";
import { scaledDemand } from "../model/demand.js";
import { EditEvent } from "../model/events.js";
import { fileNameOf } from "../model/saveFile.js";
import { WidthController } from "../model/WidthController.js";
import { figureButton } from "../working/figureButton.js";
import "./chart-frame.js";

/**
 * Where it starves: temperature across, demand up.
 * @fires sheet-edit - when the map is pressed: temperature and demand go there
 */
@customElement("cold-map")
export class ColdMap extends LitElement {
  static override styles = [mapStyles];
  @property({ attribute: false }) system!: System;
  @property({ attribute: false }) point!: CheckPoint;
  @property() units: UnitSystem = "metric";
  @query("svg") private readonly drawn!: SVGSVGElement | null;
  private points: readonly MapPoint[] = [];
  /** Which of the temperatures that were worked out is read. */
  private readonly reads = new PlotPlace(() => this.requestUpdate());
  private readonly room = new WidthController(this);
  private readonly helper = new HelperController(this, (outcome) => {
    if (outcome.kind === "map") this.points = outcome.points;
  });

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has("system")) {
      this.helper.ask({ kind: "map", system: this.system, temperatures: TEMPERATURES });
    }
  }

  override render() {
    const { points, point, units, system } = this;
    const there = points.length > 0;
    const read = this.read();
    const asked = read === null ? {} : { temperature: read.temperature };
    const shown = (text: string, figure: string) => figureButton(text, { figure, asked });
    return html`<chart-frame heading="Where it starves" .file=${`${fileNameOf(system.name)}-map`}
        .at=${this.placeWords()} .readings=${there ? mapReadings(read ?? toMapPoint(point), units, shown) : []}
        .columns=${() => (there ? mapColumns(points, units) : null)} .drawing=${() => this.drawing()}>
      <p class="quiet">Temperature across, demand up. Press the map to go there.</p>
      ${this.helper.trouble === "" ? nothing : html`<p class="quiet" role="status">${this.helper.trouble}</p>`}
      ${this.room.ruler()}
      ${there && this.room.width >= 120 ? this.map() : nothing}
    </chart-frame>`;
  }

  private map() {
    const { points, point, units } = this;
    const frame = this.frame();
    const read = this.read();
    const said = mapReadings(read ?? toMapPoint(point), units).map(({ label, value }) => `${label} ${value}`);
    return html`<svg height=${frame.height} role="slider" tabindex="0" aria-label="Map of the ceilings over temperature; the keys go along it"
        aria-valuemin="0" aria-valuemax=${points.length - 1} aria-valuenow=${this.place ?? this.rest} aria-valuetext=${said.join(", ")}
        @keydown=${(event: KeyboardEvent) => this.reads.onKey(event, this.rest, points.length - 1)}
        @pointerdown=${this.onPress} @pointermove=${this.onMove} @pointerleave=${() => this.pointAt(null)}>
      ${drawMap(frame, { points, point, units, pointer: read?.temperature ?? null })}</svg>`;
  }

  /** Place among what was worked out that is read; null at rest, at the temperature of the fuel. */
  private get place(): number | null {
    return this.reads.at(this.points.length - 1);
  }

  /** Where the keys set out from. */
  private get rest(): number {
    return this.nearestTo(this.point.temperature);
  }

  private nearestTo(temperature: number): number {
    return nearest(
      this.points.map((one) => one.temperature),
      temperature,
    );
  }

  private read(): MapPoint | null {
    return this.place === null ? null : (this.points[this.place] ?? null);
  }

  private placeWords(): string {
    if (this.place === null) return "At the temperature of the fuel";
    return this.reads.isKept ? "Kept here; Escape lets go" : "At the pointer; a press goes there";
  }

  private frame(): MapFrame {
    return new MapFrame(this.room.width, this.points, this.point.demand.total);
  }

  private drawing(): string | null {
    if (!this.drawn) return null;
    const inks = inksOf(this);
    const { width, height } = this.frame();
    const inside = [...this.drawn.children].map((one) => copyOf(one as SVGElement)).join("");
    return drawingText({ width, height }, inks.paper, tag("g", { "font-family": inks.face }, inside));
  }

  private placeOf(event: PointerEvent) {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    return this.frame().at(event.clientX - box.left, event.clientY - box.top);
  }

  private onMove(event: PointerEvent): void {
    const place = this.placeOf(event);
    if (event.buttons === 1) this.onPress(event);
    else this.pointAt(place && this.nearestTo(place.temperature));
  }

  private pointAt(place: number | null): void {
    if (this.reads.under === place) return;
    this.reads.under = place;
    this.requestUpdate();
  }

  private onPress(event: PointerEvent): void {
    const place = this.placeOf(event);
    if (place === null) return;
    // The sheet goes there, and what is read with it: at its own temperature, not at the nearest that was worked out.
    this.reads.under = null;
    this.reads.onPress();
    const { temperature, demand } = place;
    const factor = demand / this.point.demand.total;
    this.dispatchEvent(new EditEvent((system) => ({ ...scaledDemand(system, factor), temperature }), "map"));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "cold-map": ColdMap;
  }
}
