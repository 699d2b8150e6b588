import type { CatalogueElement, System } from "@thirstline/spec/system";
import { asFitted, fitElement, fittedFrom, type SwapAnswer, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { EditEvent } from "../model/events.js";
import type { Subject } from "../working/Question.js";
import "./amount-field.js";
import type { Catalogue } from "./Catalogue.js";
import { ChooseController } from "./ChooseController.js";
import { chooseStyles } from "./chooseStyles.js";
import type { Asked } from "./messages.js";
import "./element-list.js";
import { fittedPlaces } from "./fittedPlaces.js";
import "./swap-answer.js";
import { UsedEvent } from "./UsedEvent.js";
import "./work-progress.js";

/** Draws for the chance of starving; as many as the command line takes when nobody says how many. */
const DRAWS = 400;

/**
 * May I fit that one instead? Places, an element, and the answer.
 * @fires sheet-edit - to fit it
 * @fires choose-used - when that was done
 */
@customElement("swap-panel")
export class SwapPanel extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    css`
    .places label { display: flex; gap: 12px; align-items: center; min-height: 44px; cursor: pointer; }
    .places input { accent-color: var(--fuel); width: 18px; height: 18px; margin: 0; flex: none; }
    .ask { font-size: 1.15rem; max-width: 34em; color: var(--soft); margin-top: 12px; }
    h2 { margin-top: 20px; }
  `,
  ];
  @property({ attribute: false }) system!: System;
  @property({ attribute: false }) catalogue!: Catalogue;
  @property({ attribute: false }) units: UnitSystem = "metric";
  @state() private at: readonly string[] = [];
  @state() private picked: CatalogueElement | null = null;
  @state() private labour: number | null = null;
  @state() private stoppage: number | null = null;
  @state() private answer: SwapAnswer | null = null;
  /** What the figures of the answer are of. */
  private subject: Subject | null = null;
  private readonly work = new ChooseController(this, (told, asked) => {
    if (told.kind !== "swap" || asked.kind !== "swap") return;
    this.answer = told.answer;
    this.subject = subjectOf(asked);
  });

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("system")) this.keepPlaces();
    if (changed.has("catalogue")) {
      const { elements } = this.catalogue;
      this.picked = elements.find(({ name }) => name === this.picked?.name) ?? null;
    }
    const asked = ["system", "catalogue", "at", "picked", "labour", "stoppage"];
    if ([...(changed as Map<string, unknown>).keys()].some((key) => asked.includes(key))) this.ask();
  }

  override render() {
    const groups = fittedPlaces(this.system);
    if (groups.length === 0)
      return html`<p class="ask">There is no filter on the sheet, so there is nothing to swap. Add one on the sheet first.</p>`;
    return html`<div class="two">
      <div class="no-print">
        <fieldset class="places"><legend>Which filter?</legend>${groups.flat().map(({ name }) => this.place(name))}</fieldset>
        <h2>Which element instead?</h2>
        <element-list .elements=${this.catalogue.elements} .picked=${this.picked} .fitted=${this.fitted()}
          @element-pick=${(event: HTMLElementEventMap["element-pick"]) => {
            this.picked = event.element;
          }}></element-list>
        <div class="boxes gap">
          <amount-field label="An hour of work costs" .value=${this.labour} @value-changed=${(
            event: HTMLElementEventMap["value-changed"],
          ) => {
            this.labour = event.value;
          }}></amount-field>
          <amount-field label="A stoppage costs" .value=${this.stoppage} @value-changed=${(
            event: HTMLElementEventMap["value-changed"],
          ) => {
            this.stoppage = event.value;
          }}></amount-field>
        </div>
      </div>
      <div>${this.result()}</div>
    </div>`;
  }

  private place(name: string) {
    return html`<label><input type="checkbox" .checked=${this.at.includes(name)} @change=${() => this.toggle(name)} />${name}</label>`;
  }

  private result() {
    const { at, picked, answer, work } = this;
    if (at.length === 0) return html`<p class="ask">Say which filter gets the other element.</p>`;
    if (picked === null)
      return html`<p class="ask">Pick an element to see whether it may be fitted, and what it changes.</p>`;
    if (work.refusal !== "") return html`<p class="fault" role="alert">There is no answer: ${work.refusal}.</p>`;
    if (answer === null) return html`<p class="ask" role="status">Working it out.</p>`;
    return html`<swap-answer .answer=${answer} .subject=${this.subject} .system=${this.system} .changed=${fitElement(this.system, at, picked)} .units=${this.units}
        @swap-use=${this.use}></swap-answer>
      <work-progress .progress=${work.progress} @work-stop=${() => work.stop()}></work-progress>
      ${answer.now.cost.elements === null && !this.fitted() ? html`<p class="quiet">What is fitted now is not in the catalogue, so its price is not known.</p>` : nothing}`;
  }

  /** Places that are still there; else those of the first filter. */
  private keepPlaces(): void {
    const groups = fittedPlaces(this.system);
    const names = groups.flat().map(({ name }) => name);
    const left = this.at.filter((name) => names.includes(name));
    this.at = left.length > 0 ? left : (groups[0] ?? []).map(({ name }) => name);
  }

  private toggle(name: string): void {
    const names = fittedPlaces(this.system)
      .flat()
      .map((one) => one.name);
    const on = this.at.includes(name) ? this.at.filter((one) => one !== name) : [...this.at, name];
    this.at = names.filter((one) => on.includes(one));
  }

  private fitted(): CatalogueElement | null {
    const [first] = this.at;
    return first === undefined ? null : fittedFrom(asFitted(this.system, first).filter, this.catalogue.elements);
  }

  private ask(): void {
    const { system, at, picked, labour, stoppage } = this;
    if (at.length === 0 || picked === null) {
      this.answer = null;
      return;
    }
    const options = {
      fitted: this.fitted(),
      ...(labour === null ? {} : { labourRate: labour }),
      ...(stoppage === null ? {} : { stoppage }),
    };
    this.work.ask({ kind: "swap", system, at, with: picked, options, draws: DRAWS });
  }

  private use(): void {
    const { picked, at } = this;
    if (picked === null) return;
    const edit = new EditEvent((system) => fitElement(system, at, picked));
    if (this.dispatchEvent(edit))
      this.dispatchEvent(new UsedEvent(`${picked.name} is on the sheet at ${at.join(" and ")}.`));
  }
}

/** What the figures of an answer are of. */
function subjectOf({ system, at, with: other, options, draws }: Extract<Asked, { kind: "swap" }>): Subject {
  return {
    source: { kind: "swap", system, given: { at, with: other }, options: { ...options, draws } },
    about: (of) => (of === "now" ? "As it is now." : `With ${other.name} at ${at.join(" and ")}.`),
  };
}

declare global {
  interface HTMLElementTagNameMap {
    "swap-panel": SwapPanel;
  }
}
