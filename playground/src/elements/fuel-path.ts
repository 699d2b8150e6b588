import type { System } from "@thirstline/spec/system";
import type { CheckPoint, UnitSystem } from "@thirstline/study";
import { adoptStyles, css, html, LitElement, noChange, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { ChooseEvent, EditEvent } from "../model/events.js";
import { type Chosen, keyOf, type Place } from "../model/Place.js";
import { WidthController } from "../model/WidthController.js";
import type { Draggable } from "../path/Dragged.js";
import { drawNames } from "../path/drawNames.js";
import { drawPanes } from "../path/drawPanes.js";
import { drawPath } from "../path/drawPath.js";
import type { DropSpot } from "../path/dropSpots.js";
import { type Layout, layout } from "../path/layout.js";
import type { PartDrag } from "../path/PartDrag.js";
import { pathStyles } from "../path/pathStyles.js";
import type { Item } from "../path/Station.js";
import { type Sketch, sketch } from "../path/sketch.js";
import { stationsOf } from "../path/stationsOf.js";

/** Width of what is printed on a sheet of A4 or letter paper, px. */
const PAPER_WIDTH = 760;

/**
 * The path from tank to pump in ink, and under it, on the same places, the descent of absolute pressure.
 * @fires sheet-choose - when a part is pressed
 * @fires sheet-edit - when a part has been dragged to another place
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
  /** What is spoken of beside the drawing; null for none. */
  @property({ attribute: false }) marked: Chosen | null = null;
  /** Names of parts a caution is about. */
  @property({ attribute: false }) cautioned: ReadonlySet<string> = new Set();
  /** Whether it is only to be looked at: no part can be pressed and none added. */
  @property({ type: Boolean }) still = false;
  /** Whether only the descent follows a figure that moves; the same parts' figures come with the next drawing. */
  @property({ type: Boolean }) ahead = false;
  /** What parts are added and dragged by; null until it is fetched. */
  @property({ attribute: false }) tools: typeof import("../path/pathTools.js") | null = null;
  private paper = false;
  private eases = true;
  /** What is drawn now and where. */
  private shown: { readonly laid: Layout; readonly drawn: Sketch } | null = null;
  private drag: PartDrag | null = null;
  private readonly room = new WidthController(this);

  protected override willUpdate(changed: PropertyValues): void {
    // A step of a slider is small and the next one soon there: what eases would lag behind the hand.
    if (changed.has("point")) this.eases = !this.ahead;
    if (this.tools === null || this.drag !== null) return;
    this.drag = new this.tools.PartDrag(this);
    adoptStyles(this.renderRoot as ShadowRoot, [...FuelPath.elementStyles, this.tools.toolStyles]);
  }

  protected override updated(changed: PropertyValues): void {
    if (this.marked === null && !changed.has("marked")) return;
    const key = this.marked && keyOf(this.marked);
    for (const one of this.renderRoot.querySelectorAll("[data-key]")) {
      one.toggleAttribute("data-marked", one.getAttribute("data-key") === key);
    }
  }

  override render() {
    return html`${this.room.ruler()}${this.room.width < 200 && !this.paper ? nothing : this.drawing()}`;
  }

  private drawing(): TemplateResult {
    const stations = stationsOf(this.system, this.point);
    const width = this.paper ? PAPER_WIDTH : this.room.width;
    const laid = layout(stations, width - 66, this.paper);
    const drawn = sketch(laid, width, this.paper);
    const only = this.ahead && this.shown !== null && placesOf(this.shown.laid) === placesOf(laid);
    this.shown = { laid, drawn };
    const dragged = this.drag?.now ?? null;
    return html`<div class=${dragged === null ? "sheet" : "sheet dragging"} .style=${`height:${drawn.height}px`} @pointerdown=${this.onPress} @click=${this.onClick}>
      <svg class=${this.eases ? "eases" : ""} width=${width} height=${drawn.height} role="img" aria-label=${only ? noChange : this.inWords(laid)}>
        ${drawPanes(laid, drawn, this)}
        <g transform="translate(${drawn.path.x} ${drawn.path.y})">${only ? noChange : drawPath(laid, (tank) => this.level(tank))}</g>
      </svg>
      ${only ? noChange : this.still ? nothing : this.tools?.drawGaps(laid, drawn, this.chosen)}
      <ul class=${laid.upright ? "names upright" : "names"}>
        ${only ? noChange : drawNames(laid, drawn, this)}
      </ul>
      ${this.tools?.drawDrag(dragged, laid.upright)}
    </div>`;
  }

  /** Draws for paper or for the screen, at once: a browser that prints does not wait. */
  toPaper(paper: boolean): void {
    this.paper = paper;
    this.requestUpdate();
    this.performUpdate();
  }

  spotsFor(place: Place): readonly DropSpot[] {
    if (this.shown === null || this.tools === null) return [];
    return this.tools.spotsFor(this.system, place, this.shown.laid, this.shown.drawn);
  }

  onDrawing(x: number, y: number): readonly [number, number] {
    const box = this.getBoundingClientRect();
    return [x - box.left, y - box.top];
  }

  letGo({ place }: Draggable, { slot }: DropSpot): void {
    if (this.tools) this.dispatchEvent(new EditEvent(this.tools.moveChange(place, slot.place)));
  }

  private onPress(event: PointerEvent): void {
    const item = this.itemAt(event);
    if (item?.chosen.kind === "part") this.drag?.press(event, { place: item.chosen.place, name: item.name });
  }

  /** A symbol that is pressed is chosen, as its name is. */
  private onClick(event: MouseEvent): void {
    const item = this.itemAt(event);
    const [target] = event.composedPath();
    if (item === null || !(target instanceof SVGElement)) return;
    const on = this.chosen !== null && keyOf(this.chosen) === keyOf(item.chosen);
    this.dispatchEvent(new ChooseEvent(on ? null : item.chosen));
  }

  private itemAt(event: Event): Item | null {
    if (this.still) return null;
    const keys = event
      .composedPath()
      .flatMap((one) => (one instanceof Element ? (one.getAttribute("data-key") ?? []) : []));
    const items = this.shown?.laid.laid.flatMap(({ station, lanes }) => [
      station.item,
      ...lanes.flat().map(({ item }) => item),
    ]);
    return items?.find(({ chosen }) => keys.includes(keyOf(chosen))) ?? null;
  }

  /** Puts the keyboard on the name of a part, by its key. */
  toName(key: string): void {
    this.renderRoot.querySelector<HTMLElement>(`button[data-key="${CSS.escape(key)}"]`)?.focus();
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

/** Tells layouts apart by their stations and where they stand. */
function placesOf({ laid, upright }: Layout): string {
  return laid
    .map(({ station, from, lanes }) => [station.item.name, from, upright, ...lanes.map(({ length }) => length)])
    .join();
}

declare global {
  interface HTMLElementTagNameMap {
    "fuel-path": FuelPath;
  }
}
