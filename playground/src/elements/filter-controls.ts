import type { System } from "@thirstline/spec/system";
import { type CheckPoint, exactQuantity, quantity, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { SoilTargets } from "../life/SoilTargets.js";
import { soiledBy, soilShare } from "../life/soiledBy.js";
import { controlStyles } from "../look/sheetStyles.js";
import { EditEvent, type ValueEvent } from "../model/events.js";
import { type Chosen, keyOf } from "../model/Place.js";
import { mapParts } from "../model/parts.js";
import { type Alike, meantFilters } from "../trial/alikeFilters.js";
import { listed } from "../trial/assumedWords.js";
import { ratedSize, sizeRange, sliderRange } from "../trial/ratedSize.js";
import { trySize } from "../trial/trySize.js";
import "./branch-count.js";
import "./range-control.js";

/**
 * What can be tried of the filters: how fine the one that counts is, how far all are loaded, how many stand side by side.
 * Its sections stand in the grid of what it is put in.
 * @fires sheet-edit
 */
@customElement("filter-controls")
export class FilterControls extends LitElement {
  static override styles = [
    controlStyles,
    css`
    :host { display: contents; }
    section { border-top: 1px solid var(--rule); padding-top: 10px; min-width: 0; }
    h2 { margin: 0; font-size: 0.95rem; font-weight: 450; color: var(--soft); overflow-wrap: anywhere; }
    .quiet { line-height: 1.35; margin-top: 4px; }
    .fault { color: var(--limit); font-size: 0.86rem; }
    @media print { :host { display: none; } }
  `,
  ];
  @property({ attribute: false }) system!: System;
  @property({ attribute: false }) point!: CheckPoint;
  @property({ attribute: false }) chosen: Chosen | null = null;
  /** Where the soil slider leads; null where there is no saying, undefined until it is worked out. */
  @property({ attribute: false }) soil: SoilTargets | null | undefined = undefined;
  @property() units: UnitSystem = "metric";
  /** Names of the filters whose size is tried; they stay while it is, whichever costs most by then. */
  private meant: readonly string[] = [];
  private meantFor = "";
  private alike: Alike | null = null;
  private sizeFault = "";

  protected override willUpdate(changed: Map<string, unknown>): void {
    const { system, point, chosen } = this;
    const found = meantFilters(system, point, chosen);
    const cause = `${system.name}/${chosen === null ? "" : keyOf(chosen)}`;
    const named = this.meant.length === 0 ? null : meantByName(system, this.meant);
    if (cause !== this.meantFor || named === null) {
      this.meant = found?.map(({ name }) => name) ?? [];
      this.meantFor = cause;
    }
    this.alike = meantByName(system, this.meant);
    if (changed.has("system")) this.sizeFault = "";
  }

  override render() {
    return html`${this.size()}${this.loading()}
      <branch-count .system=${this.system} .chosen=${this.chosen}></branch-count>`;
  }

  private size(): TemplateResult | typeof nothing {
    const first = this.alike?.[0];
    const size = first === undefined ? null : ratedSize(first);
    if (this.alike === null || first === undefined || size === null) return nothing;
    const { least, most } = sliderRange(first);
    return html`<section aria-label="Fineness"><h2>${listed(this.alike.map(({ name }) => name))}</h2>
      <range-control label="Micron rating" .value=${size} .min=${least} .max=${most} .kind=${"particle size"} .reads=${"size"}
        .units=${this.units} @value-changed=${this.onSize}></range-control>
      <p class="quiet">${this.sizeWords(first)}</p>
      ${this.sizeFault === "" ? nothing : html`<p class="fault" role="alert">${this.sizeFault}</p>`}</section>`;
  }

  private sizeWords({ medium, tried }: Alike[number]): string {
    const basis = medium.by === "flow test" ? "flow test" : "figures";
    if (tried !== undefined) {
      return `Assumed: its ${basis} at ${exactQuantity(tried.size, "particle size", this.units)}, scaled by the square of the size. A flow test of the element would settle it.`;
    }
    if (medium.by === "rating") return "Its resistance is estimated from this rating, good to a factor of 2 at best.";
    return `Its ${basis} ${medium.by === "flow test" ? "holds" : "hold"} at this size; at another it is scaled by the square of the size, which is assumed.`;
  }

  private loading(): TemplateResult | typeof nothing {
    const { soil, system } = this;
    if (soil === null) return nothing;
    if (soil === undefined) return html`<section aria-label="Soil"><h2>Soil on the filters</h2></section>`;
    const share = soilShare(system, soil);
    return html`<section aria-label="Soil"><h2>Soil on the filters</h2>
      <range-control label="Loaded, from clean to due" .value=${share} .min=${0} .max=${1} .kind=${"ratio"} .reads=${"share"}
        .units=${this.units} @value-changed=${({ value }: ValueEvent) => this.edit((now) => soiledBy(now, value ?? 0, soil), "soil")}></range-control>
      <p class="quiet">${soilWords(soil, share)}</p></section>`;
  }

  private onSize({ value }: ValueEvent): void {
    const [first] = this.alike ?? [];
    if (value === null || first === undefined) return;
    const { least, most } = sizeRange(first);
    const slack = 1e-9;
    if (value < least - slack || value > most + slack) {
      const shown = (size: number) => quantity(size, "particle size", this.units);
      this.sizeFault = `Sizes from ${shown(least)} to ${shown(most)} can be tried: beyond them its betas leave what a file holds.`;
      this.requestUpdate();
      return;
    }
    const names = new Set(this.meant);
    const change = (system: System) =>
      mapParts(system, (part) => (part.part === "filter" && names.has(part.name) ? trySize(part, value) : part));
    this.edit(change, "size");
  }

  private edit(change: (system: System) => System, merge: string): void {
    this.dispatchEvent(new EditEvent(change, merge));
  }
}

function soilWords({ by, due }: SoilTargets, share: number): string {
  const times = (value: number) => value.toFixed(value < 9.95 ? 1 : 0);
  const [first = ["", 1], ...rest] = due;
  const most = rest.reduce((a, b) => (b[1] > a[1] ? b : a), first);
  const now = times(1 + share * (most[1] - 1));
  if (by === "alike")
    return `How they fill is not known here: all close alike, now to ${now} times their clean resistance, due at ${times(most[1])}.`;
  return `${most[0]} resists ${now} times as much as clean; when it is due, ${times(most[1])} times.`;
}

/** Filters by their names; null where one is gone or has no size. */
function meantByName(system: System, names: readonly string[]): Alike | null {
  const found: Alike[number][] = [];
  mapParts(system, (part) => {
    if (part.part === "filter" && names.includes(part.name) && ratedSize(part) !== null) found.push(part);
    return part;
  });
  return found.length === names.length && found.length > 0 ? found : null;
}

declare global {
  interface HTMLElementTagNameMap {
    "filter-controls": FilterControls;
  }
}
