import { bandText, type CheckPoint, limitName, quantity, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import type { Answers } from "../model/answersOf.js";
import { OpenEvent } from "../model/events.js";
import { MOST_PINS, type Pin } from "../model/Pin.js";
import { verdictWord } from "../words/verdictWord.js";
import { ownFigure } from "../working/figureButton.js";
import type { Subject } from "../working/Question.js";
import { whyStyles } from "../working/whyStyles.js";

/**
 * Variants set aside, side by side with what is on the sheet.
 * @fires pin-this - to set aside what is on the sheet
 * @fires pin-drop - to let one go; its name is in `pin`
 * @fires sheet-open - to go back to one
 */
@customElement("pinned-variants")
export class PinnedVariants extends LitElement {
  static override styles = [
    controlStyles,
    whyStyles,
    css`
    :host { display: block; }
    .wide { overflow-x: auto; margin-top: 8px; }
    table { border-collapse: collapse; font-size: 0.95rem; min-width: min(100%, 36rem); }
    th, td { text-align: left; vertical-align: top; padding: 6px 20px 6px 0; border-bottom: 1px solid var(--rule); }
    tbody th { font-weight: 500; color: var(--soft); }
    thead th { font-weight: 700; }
    .differs { font-weight: 700; }
    td button.figure.why { font-weight: inherit; padding: 5px 0; margin: -5px 0; }
    .pair { display: flex; flex-wrap: wrap; gap: 6px; padding-top: 4px; }
    @media print { :host(:not([pinned])), button:not(.why), .pair { display: none; } }
  `,
  ];
  @property({ attribute: false }) answers!: Answers;
  @property({ attribute: false }) pins: readonly Pin[] = [];
  @property() units: UnitSystem = "metric";

  private subjects: readonly Subject[] = [];

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has("pins"))
      this.subjects = this.pins.map(({ name, system }) => ({
        source: system,
        about: `Pinned as ${name}: ${system.name}.`,
      }));
  }

  protected override updated(): void {
    this.toggleAttribute("pinned", this.pins.length > 0);
  }

  override render() {
    const full = this.pins.length >= MOST_PINS;
    return html`<h2>Compare</h2>
      ${
        full
          ? html`<p class="quiet">${MOST_PINS} are pinned; let one go to pin another.</p>`
          : html`<button type="button" @click=${() => this.dispatchEvent(new Event("pin-this"))}>Pin this</button>`
      }
      ${this.pins.length === 0 ? html`<p class="quiet">Sets aside what is on the sheet, to see what a change makes of it.</p>` : this.table()}`;
  }

  private table() {
    const now = this.answers;
    return html`<div class="wide" tabindex="0" role="region" aria-label="Pinned variants"><table>
      <thead><tr><td></td>${this.pins.map(
        (pin) => html`<th scope="col">${pin.name}<div class="pair">
          <button type="button" aria-label=${`Go back to ${pin.name}`} @click=${() => this.dispatchEvent(new OpenEvent(pin.system))}>Go back</button>
          <button type="button" aria-label=${`Let go of ${pin.name}`} @click=${() => this.dispatchEvent(new PinDropEvent(pin.name))}>Let go</button></div></th>`,
      )}
        <th scope="col">On the sheet</th></tr></thead>
      <tbody>${this.rows().map(([name, of, figure]) => {
        const live = (text: string, subject: Subject | null) => {
          if (figure === undefined || !/\d/.test(text)) return text;
          // Of the part that costs most only its share is worked out.
          const at = figure === "largest share" ? text.lastIndexOf(", ") + 2 : 0;
          return html`${text.slice(0, at)}${ownFigure(text.slice(at), figure, subject)}`;
        };
        const here = of(now);
        const theirs = this.pins.map(({ answers }) => of(answers));
        if (here === "" && theirs.every((one) => one === "")) return nothing;
        return html`<tr><th scope="row">${name}</th>${theirs.map((one, at) => html`<td class=${one === here ? "" : "differs"}>${live(one, this.subjects[at] ?? null)}</td>`)}
          <td class=${theirs.some((one) => one !== here) ? "differs" : ""}>${live(here, null)}</td></tr>`;
      })}</tbody></table></div>`;
  }

  /** What is compared line by line, with the name of its working. */
  private rows(): [name: string, of: (answers: Answers) => string, figure?: string][] {
    const { units } = this;
    const at =
      (of: (point: CheckPoint) => string) =>
      ({ point }: Answers) =>
        of(point);
    return [
      ["Machine", ({ check }) => check.system],
      ["Verdict", at(({ verdict }) => verdictWord(verdict))],
      ["Temperature", at(({ temperature }) => quantity(temperature, "temperature", units)), "temperature"],
      ["Demand", at(({ demand }) => quantity(demand.total, "flow", units)), "demand"],
      ["Vacuum, clean", at(({ vacuum }) => bandText(vacuum, "vacuum", units)), "vacuum"],
      ["Vacuum, now", at(({ vacuumNow }) => (vacuumNow ? bandText(vacuumNow, "vacuum", units) : "")), "vacuum now"],
      [
        "Feed pressure",
        at(({ feedPressure }) => (feedPressure ? bandText(feedPressure, "pressure", units) : "")),
        "feed pressure",
      ],
      ["Supply ceiling", at(({ ceilings }) => bandText(ceilings.atChange.flow, "flow", units)), "ceiling at change"],
      ["What binds", ({ point, check }) => limitName(point.ceilings.atChange.limit, check.pump)],
      ["In hand", at(({ inHand }) => quantity(inHand.low, "ratio", units)), "in hand, low end"],
      [
        "Costs most",
        at(({ most }) => (most ? `${most.name}, ${quantity(most.share, "ratio", units)}` : "")),
        "largest share",
      ],
    ];
  }
}

/** Asks to let a pinned variant go. */
class PinDropEvent extends Event {
  readonly pin: string;

  constructor(pin: string) {
    super("pin-drop");
    this.pin = pin;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "pinned-variants": PinnedVariants;
  }
  interface HTMLElementEventMap {
    "pin-drop": PinDropEvent;
    "pin-this": Event;
  }
}
