import { exactQuantity, type QuantityKind, type UnitSystem, unitOf } from "@thirstline/study";
import { css, html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import { ValueEvent } from "../model/events.js";
import type { Reads } from "../model/readQuantity.js";
import "./quantity-field.js";

/**
 * Slider with a box for the exact quantity beside it.
 * @fires value-changed - while it moves and after an entry; its `value` is SI
 */
@customElement("range-control")
export class RangeControl extends LitElement {
  static override styles = css`
    :host { display: grid; grid-template-columns: minmax(0, 1fr) 7.2rem; gap: 2px 14px; align-items: center; }
    label { font-size: 0.95rem; font-weight: 600; grid-column: 1 / -1; }
    input { width: 100%; height: 44px; margin: 0; background: none; -webkit-appearance: none; appearance: none; cursor: pointer; }
    input::-webkit-slider-runnable-track { height: 8px; border-radius: 4px; background: var(--track, var(--rule)); border: 1px solid var(--edge); }
    input::-moz-range-track { height: 8px; border-radius: 4px; background: var(--track, var(--rule)); border: 1px solid var(--edge); }
    input::-webkit-slider-thumb { -webkit-appearance: none; width: 26px; height: 26px; margin-top: -10px; border-radius: 50%;
      background: var(--raised); border: 3px solid var(--ink); }
    input::-moz-range-thumb { width: 20px; height: 20px; border-radius: 50%; background: var(--raised); border: 3px solid var(--ink); }
    input:focus-visible { outline: 3px solid var(--cold); outline-offset: 2px; border-radius: 6px; }
    :host([cold]) { --track: linear-gradient(to right, var(--cold), var(--rule) 75%); }
    @media (forced-colors: active) {
      input::-webkit-slider-runnable-track { background: Canvas; border-color: CanvasText; }
      input::-webkit-slider-thumb { background: ButtonFace; border-color: ButtonText; }
    }
  `;
  @property() label = "";
  /** SI. */
  @property({ type: Number }) value = 0;
  /** Ends of the slider, SI; the box takes more. */
  @property({ type: Number }) min = 0;
  @property({ type: Number }) max = 1;
  @property({ attribute: false }) kind: QuantityKind = "plain";
  @property({ attribute: false }) reads: Reads = "length";
  @property() units: UnitSystem = "metric";
  /** Whether the track is the temperature scale. */
  @property({ type: Boolean, reflect: true }) cold = false;

  override render() {
    const text = exactQuantity(this.value, this.kind, this.units);
    const { least, most, step } = this.scale();
    return html`
      <label for="slider">${this.label}</label>
      <input id="slider" type="range" min=${least} max=${most} step=${step} .value=${live(String(this.shown(this.value)))}
        aria-valuetext=${text} @input=${this.onInput} />
      <quantity-field quiet label=${`${this.label}, exactly`} .value=${this.value} .kind=${this.kind} .reads=${this.reads}
        .units=${this.units} @value-changed=${this.onExact}></quantity-field>`;
  }

  private shown(value: number): number {
    const { size, zero = 0 } = unitOf(this.kind, this.units);
    return value / size - zero / size;
  }

  /** Ends on round figures of the shown unit, in steps of about a hundredth of the whole. */
  private scale(): { least: number; most: number; step: number } {
    const [low, high] = [this.shown(this.min), this.shown(this.max)];
    const rough = (high - low) / 120;
    const power = 10 ** Math.floor(Math.log10(rough));
    const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= rough) ?? power;
    return { least: Math.round(low / step) * step, most: Math.round(high / step) * step, step };
  }

  private onInput(event: Event): void {
    const { size, zero = 0 } = unitOf(this.kind, this.units);
    // Through decimals, so that 15 °C from the slider is the 288.15 K a file says.
    this.take(Number(((event.target as HTMLInputElement).valueAsNumber * size + zero).toPrecision(15)));
  }

  private onExact(event: HTMLElementEventMap["value-changed"]): void {
    event.stopPropagation();
    if (event.value !== null) this.take(event.value);
  }

  private take(value: number): void {
    this.dispatchEvent(new ValueEvent(value));
    this.requestUpdate();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "range-control": RangeControl;
  }
}
