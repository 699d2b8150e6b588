import type { System } from "@thirstline/spec/system";
import type { CheckPoint, UnitSystem } from "@thirstline/study";
import { html, LitElement, nothing } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import { HelperController } from "../aside/HelperController.js";
import { inksOf } from "../chart/inksOf.js";
import { copyOf } from "../drawing/copyOf.js";
import { drawingText, tag } from "../drawing/tag.js";
import { drawMap } from "../map/drawMap.js";
import { MapFrame, TEMPERATURES } from "../map/MapFrame.js";
import type { MapPoint } from "../map/MapPoint.js";
import { mapColumns, mapReadings } from "../map/mapReadings.js";
import { mapStyles } from "../map/mapStyles.js";
import { scaledDemand } from "../model/demand.js";
import { EditEvent } from "../model/events.js";
import { fileNameOf } from "../model/saveFile.js";
import { WidthController } from "../model/WidthController.js";
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
  /** Where the pointer is, K; null while it is elsewhere. */
  @state() private pointer: number | null = null;
  @query("svg") private readonly drawn!: SVGSVGElement | null;
  private points: readonly MapPoint[] = [];
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
    const { points, point, units, system, pointer } = this;
    const there = points.length > 0;
    return html`<chart-frame heading="Where it starves" .file=${`${fileNameOf(system.name)}-map`}
        .at=${pointer === null ? "At the temperature of the fuel" : "At the pointer"}
        .readings=${there ? mapReadings(points, pointer ?? point.temperature, units) : []}
        .columns=${() => (there ? mapColumns(points, units) : null)} .drawing=${() => this.drawing()}>
      <p class="quiet">Temperature across, demand up. Press the map to go there.</p>
      ${this.helper.trouble === "" ? nothing : html`<p class="quiet" role="status">${this.helper.trouble}</p>`}
      ${this.room.ruler()}
      ${there && this.room.width >= 120 ? this.map() : nothing}
    </chart-frame>`;
  }

  private map() {
    const frame = this.frame();
    return html`<svg height=${frame.height} role="img" aria-label="Map of the ceilings over temperature; the sliders for temperature and demand go where the map goes."
        @pointerdown=${this.onPress} @pointermove=${this.onMove} @pointerleave=${this.onLeave}>
      ${drawMap(frame, { points: this.points, point: this.point, units: this.units, pointer: this.pointer })}</svg>`;
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
    if (event.buttons === 1) this.onPress(event);
    this.pointer = this.placeOf(event)?.temperature ?? null;
  }

  private onLeave(): void {
    this.pointer = null;
  }

  private onPress(event: PointerEvent): void {
    const place = this.placeOf(event);
    if (place === null) return;
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
