import type { System } from "@thirstline/spec/system";
import { type Caution, type CheckPoint, quantity, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { SoilTargets } from "../life/SoilTargets.js";
import { controlStyles } from "../look/sheetStyles.js";
import { scaledDemand } from "../model/demand.js";
import type { Example } from "../model/Example.js";
import { type ElementChoice, elementChoices, withElements } from "../model/elements.js";
import { EditEvent, type ValueEvent } from "../model/events.js";
import type { Chosen } from "../model/Place.js";
import { type CautionPlace, cautionPlace } from "../words/cautionPlace.js";
import "./caution-list.js";
import "./range-control.js";

/** The coldest fuel a system file holds, K: -60 degC. */
const COLDEST = 213.15;
/** How much colder one press makes it, K. */
const COLDER = 5;

/**
 * What can be tried, each by what it changes: temperature by the fuel, altitude by the place, elements by the filters,
 * demand by the engine; with the cautions about each.
 * @fires sheet-edit
 */
@customElement("place-controls")
export class PlaceControls extends LitElement {
  static override styles = [
    controlStyles,
    css`
    :host { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(16.5rem, 100%), 1fr)); gap: 16px 36px; margin: 4px 0 16px; }
    section { border-top: 1px solid var(--rule); padding-top: 10px; min-width: 0; }
    h2 { margin: 0; font-size: 0.95rem; font-weight: 450; color: var(--soft); }
    .stack { flex-direction: column; margin-top: 8px; }
    .stack label + label span { border-left: 0; border-top: 1px solid var(--edge); }
    /* Until it has been fetched its room is kept, so that what is under it stays where it is. */
    filter-controls:not(:defined) { display: block; min-height: 8rem; }
    @media (min-width: 1100px) { filter-controls:not(:defined) { grid-column: span 3; } }
    .colder { margin-top: 4px; }
    @media print { :host { display: block; margin: 0; } section { border: 0; padding: 0; } h2, range-control, fieldset, button { display: none !important; } }
  `,
  ];
  @property({ attribute: false }) system!: System;
  @property({ attribute: false }) point!: CheckPoint;
  @property() units: UnitSystem = "metric";
  @property({ attribute: false }) examples: readonly Example[] = [];
  @property({ attribute: false }) chosen: Chosen | null = null;
  /** Where the soil slider leads; see `filter-controls`. */
  @property({ attribute: false }) soil: SoilTargets | null | undefined = undefined;
  /** Greatest demand of the slider, m3/s; kept while one system is tried, so that the slider does not run away. */
  @state() private mostDemand = 0;

  private choices: readonly ElementChoice[] = [];

  override willUpdate(changed: Map<string, unknown>): void {
    const before = changed.get("system") as System | undefined;
    const { total } = this.point.demand;
    const asBefore =
      before && (["tanks", "suction", "delivery"] as const).every((one) => before[one] === this.system[one]);
    if (!asBefore || changed.has("examples")) this.choices = elementChoices(this.system, this.examples);
    if (before?.name !== this.system.name || total > this.mostDemand) this.mostDemand = 2.5 * total;
  }

  override render() {
    const { system, point, units } = this;
    return html`
      <section aria-label="Fuel"><h2>${point.fuel.name} in the tank</h2>
        <range-control cold label="Temperature of the fuel" .value=${system.temperature} .min=${233.15} .max=${333.15}
          .kind=${"temperature"} .reads=${"temperature"} .units=${units}
          @value-changed=${(event: ValueEvent) => this.set({ temperature: event.value ?? system.temperature }, "temperature")}></range-control>
        <button type="button" class="colder no-print" ?disabled=${system.temperature - COLDER < COLDEST} @click=${() => this.set({ temperature: system.temperature - COLDER }, null)}>Try it colder</button>
        ${this.cautions("fuel", "tank")}</section>
      ${this.choices.length === 0 ? nothing : this.elements(this.choices)}
      <section aria-label="Place"><h2>Where it stands</h2>
        <range-control label="Altitude" .value=${system.altitude} .min=${0} .max=${4500} .kind=${"altitude"} .reads=${"altitude"}
          .units=${units} @value-changed=${(event: ValueEvent) => this.set({ altitude: event.value ?? system.altitude }, "altitude")}></range-control>
        ${this.cautions("place", "pump")}</section>
      <section aria-label="Engine"><h2>${this.engine()}</h2>
        <range-control label="Demand of the engine" .value=${point.demand.total} .min=${0.02 * this.mostDemand} .max=${this.mostDemand}
          .kind=${"flow"} .reads=${"flow"} .units=${units} @value-changed=${this.onDemand}></range-control>
        ${this.cautions("limits")}</section>
      <filter-controls .system=${system} .point=${point} .chosen=${this.chosen} .soil=${this.soil} .units=${units}></filter-controls>`;
  }

  private elements(choices: readonly ElementChoice[]): TemplateResult {
    return html`<section aria-label="Prefilter"><h2>What is fitted in the prefilters</h2>
      <fieldset class="choice stack" aria-label="Prefilter element">${choices.map(
        ({ label, elements, fitted }) => html`<label><input type="radio" name="element" .checked=${fitted}
          @change=${() => this.dispatchEvent(new EditEvent((system) => withElements(system, elements)))} /><span>${label}</span></label>`,
      )}</fieldset></section>`;
  }

  private engine(): string {
    const { burn, return: back } = this.point.demand;
    const shown = (value: number) => quantity(value, "flow", this.units);
    return back > 0 ? `Burns ${shown(burn)}, sends back ${shown(back)}` : `Burns ${shown(burn)}`;
  }

  private cautions(...places: CautionPlace[]): TemplateResult {
    const here = this.point.cautions.filter((one: Caution) => places.includes(cautionPlace(one)));
    return html`<caution-list .cautions=${here} .units=${this.units}></caution-list>`;
  }

  private set(fields: Partial<System>, merge: string | null): void {
    this.dispatchEvent(new EditEvent((system) => ({ ...system, ...fields }), merge));
  }

  private onDemand({ value }: ValueEvent): void {
    const { total } = this.point.demand;
    const factor = (value ?? total) / total;
    this.dispatchEvent(new EditEvent((system) => scaledDemand(system, factor), "demand"));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "place-controls": PlaceControls;
  }
}
