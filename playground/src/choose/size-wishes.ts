import type { System } from "@thirstline/spec/system";
import { exactQuantity, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import "../elements/quantity-field.js";
import { controlStyles } from "../look/sheetStyles.js";
import { readQuantity } from "../model/readQuantity.js";
import "./amount-field.js";
import { chooseStyles } from "./chooseStyles.js";
import type { SizeWishes } from "./SizeWishes.js";

/** Says what a search is to keep to. */
class WishEvent extends Event {
  readonly wishes: SizeWishes;

  constructor(wishes: SizeWishes) {
    super("wish-change");
    this.wishes = wishes;
  }
}

/**
 * The boxes of a search.
 * @fires wish-change
 */
@customElement("size-wishes")
export class SizeWishesElement extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    css`
    .boxes { align-items: start; }
    .wide { grid-column: 1 / -1; }
    .wide p { color: var(--limit); font-size: 0.86rem; line-height: 1.35; margin-top: 4px; }
    fieldset.side { margin-bottom: 16px; }
  `,
  ];
  @property({ attribute: false }) system!: System;
  @property({ attribute: false }) wishes!: SizeWishes;
  /** K, coldest first: what the system is run at. */
  @property({ attribute: false }) temperatures: readonly number[] = [];
  @property({ attribute: false }) units: UnitSystem = "metric";
  @state() private boreFault = "";
  @state() private codeFault = "";

  override render() {
    const { system, wishes, temperatures, units } = this;
    return html`${system.delivery === undefined ? nothing : this.side()}
      <div class="boxes">
        ${this.number("Most side by side", "parallel", 8)}
        ${this.number("Most stages", "stages", 3)}
        <quantity-field label="Interval" .value=${wishes.interval ?? system.service?.interval ?? null} .kind=${"running time"} .reads=${"duration"} .units=${units} optional
          @value-changed=${(event: HTMLElementEventMap["value-changed"]) => this.wish({ interval: event.value })}></quantity-field>
        <label>Code asked for<input type="text" autocomplete="off" spellcheck="false" .value=${live(wishes.code ?? system.protection?.code ?? "")} placeholder="15/13/10"
          aria-invalid=${this.codeFault === "" ? "false" : "true"} @change=${this.onCode} /></label>
        ${this.codeFault === "" ? nothing : html`<div class="wide"><p role="alert">${this.codeFault}</p></div>`}
        <quantity-field label="Coldest fuel" .value=${wishes.coldest ?? temperatures[0] ?? null} .kind=${"temperature"} .reads=${"temperature"} .units=${units} optional
          @value-changed=${(event: HTMLElementEventMap["value-changed"]) => this.wish({ coldest: event.value })}></quantity-field>
        <quantity-field label="Warmest fuel" .value=${wishes.warmest ?? temperatures.at(-1) ?? null} .kind=${"temperature"} .reads=${"temperature"} .units=${units} optional
          @value-changed=${(event: HTMLElementEventMap["value-changed"]) => this.wish({ warmest: event.value })}></quantity-field>
        <div class="wide"><label>Bores to try for the lines there<input type="text" autocomplete="off" spellcheck="false" placeholder="the lines' own"
          .value=${live(wishes.bores.map((bore) => exactQuantity(bore, "bore", units)).join(", "))} aria-invalid=${this.boreFault === "" ? "false" : "true"} @change=${this.onBores} /></label>
          ${this.boreFault === "" ? nothing : html`<p role="alert">${this.boreFault}</p>`}</div>
        <amount-field label="An hour of work costs" .value=${wishes.labour} @value-changed=${(event: HTMLElementEventMap["value-changed"]) => this.wish({ labour: event.value })}></amount-field>
        <amount-field label="A stoppage costs" .value=${wishes.stoppage} @value-changed=${(event: HTMLElementEventMap["value-changed"]) => this.wish({ stoppage: event.value })}></amount-field>
      </div>`;
  }

  private side() {
    const now = this.wishes.side ?? "suction";
    const one = (
      side: "suction" | "delivery",
      words: string,
    ) => html`<label><input type="radio" name="side" .checked=${now === side}
      @change=${() => this.wish({ side })} /><span>${words}</span></label>`;
    return html`<fieldset class="side"><legend>Which side of the pump?</legend><div class="choice">${one("suction", "Suction")}${one("delivery", "Delivery")}</div></fieldset>`;
  }

  private number(label: string, key: "parallel" | "stages", most: number) {
    const choices = Array.from({ length: most }, (_, at) => at + 1);
    return html`<label>${label}<select @change=${(event: Event) => this.wish({ [key]: Number((event.target as HTMLSelectElement).value) })}>
      ${choices.map((one) => html`<option value=${one} .selected=${one === this.wishes[key]}>${one}</option>`)}</select></label>`;
  }

  private onCode(event: Event): void {
    const text = (event.target as HTMLInputElement).value.trim();
    const good = text === "" || /^\d{1,2}\/\d{1,2}\/\d{1,2}$/.test(text);
    this.codeFault = good ? "" : `"${text}" is not a cleanliness code; write one such as 15/13/10`;
    if (good) this.wish({ code: text === "" ? null : text });
  }

  private async onBores(event: Event): Promise<void> {
    const texts = (event.target as HTMLInputElement).value
      .split(/[,;]/)
      .map((text) => text.trim())
      .filter(Boolean);
    const read = await Promise.all(texts.map((text) => readQuantity(text, "bore")));
    const fault = read.find((one) => "fault" in one);
    this.boreFault = fault && "fault" in fault ? fault.fault.message : "";
    if (this.boreFault === "") this.wish({ bores: read.flatMap((one) => ("value" in one ? [one.value] : [])) });
  }

  private wish(change: Partial<SizeWishes>): void {
    this.dispatchEvent(new WishEvent({ ...this.wishes, ...change }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "size-wishes": SizeWishesElement;
  }
  interface HTMLElementEventMap {
    "wish-change": WishEvent;
  }
}
