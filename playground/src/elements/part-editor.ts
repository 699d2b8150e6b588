import type { System } from "@thirstline/spec/system";
import type { UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import * as edits from "../edit/edits.js";
import { indexOf, listAt, partAt } from "../edit/lists.js";
import { moveTo } from "../edit/moveTo.js";
import { newPart, newParts } from "../edit/newPart.js";
import { type Slot, slotsFor } from "../edit/slots.js";
import type { Field } from "../fields/Field.js";
import { partFields } from "../fields/partFields.js";
import { engineFields, pumpFields, tankFields } from "../fields/systemFields.js";
import { controlStyles } from "../look/sheetStyles.js";
import { ChooseEvent, EditEvent, type ValueEvent } from "../model/events.js";
import type { Chosen, Place } from "../model/Place.js";
import "./quantity-field.js";

/**
 * Shows what is chosen on the path, with its figures in boxes and everything that can be done with it.
 * @fires sheet-edit
 * @fires sheet-choose
 */
@customElement("part-editor")
export class PartEditor extends LitElement {
  static override styles = [
    controlStyles,
    css`
    :host { display: block; border: 2px solid var(--ink); border-radius: 6px; background: var(--raised); padding: 14px 18px 18px; margin-top: 20px; }
    header { display: flex; justify-content: space-between; align-items: center; gap: 12px; }
    .boxes { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(13rem, 100%), 1fr)); gap: 12px 20px; align-items: start; margin: 8px 0 16px; }
    .buttons { display: flex; flex-wrap: wrap; gap: 8px; }
    label.plain { display: block; font-size: 0.86rem; color: var(--soft); }
    label.plain input, label.plain select { display: block; width: 100%; height: 44px; box-sizing: border-box; font: inherit; font-size: 1rem;
      color: var(--ink); background: var(--raised); border: 1px solid var(--edge); border-radius: 4px; padding: 0 10px; }
    label.tick { display: flex; gap: 10px; align-items: center; min-height: 44px; font-size: 0.95rem; align-self: end; cursor: pointer; }
    label.tick input { width: 22px; height: 22px; accent-color: var(--ink); }
    input:focus-visible { outline: 3px solid var(--cold); outline-offset: 1px; }
    .buttons + .buttons, .buttons + .boxes { margin-top: 12px; }
    .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
    .danger { color: var(--limit); border-color: var(--limit); }
  `,
  ];
  @property({ attribute: false }) system!: System;
  @property({ attribute: false }) chosen!: Chosen;
  @property() units: UnitSystem = "metric";

  override render() {
    const { chosen } = this;
    return html`<header><h2 tabindex="-1">${this.heading()}</h2>
        <button type="button" @click=${() => this.choose(null)}>Close</button></header>
      ${this.inside()}
      ${chosen.kind === "gap" ? this.adding(chosen.place) : html`<div class="boxes">${this.fields().map((one) => this.box(one))}</div>`}
      ${chosen.kind === "part" ? html`<div class="buttons">${this.actions(chosen.place)}</div>` : nothing}`;
  }

  /** Puts the keyboard where the part is shown. */
  toHeading(): void {
    this.renderRoot.querySelector("h2")?.focus({ preventScroll: false });
  }

  private heading(): string {
    const { chosen, system } = this;
    switch (chosen.kind) {
      case "part": {
        const part = partAt(system, chosen.place);
        return part?.part === "bank" ? `${part.branches.length} in parallel` : (part?.name ?? "");
      }
      case "gap":
        return "Add a part here";
      case "tank":
        return system.tanks[chosen.tank]?.name ?? "Tank";
      case "pump":
        return "Lift pump";
      case "engine":
        return "Engine and limits";
    }
  }

  private fields(): Field[] {
    const { chosen, system } = this;
    if (chosen.kind === "part") return partFields(system, chosen.place);
    if (chosen.kind === "tank") return tankFields(system, chosen.tank);
    return chosen.kind === "pump" ? pumpFields(system) : engineFields(system);
  }

  private box(field: Field): TemplateResult {
    switch (field.type) {
      case "quantity":
        return html`<quantity-field label=${field.label} .value=${field.value} .kind=${field.shown} .reads=${field.reads} .units=${this.units}
          ?optional=${field.optional ?? false} @value-changed=${({ value }: ValueEvent) => this.edit(field.change(value))}></quantity-field>`;
      case "number":
        return html`<label class="plain">${field.label}<input type="number" min=${field.least} max=${field.most} step=${field.whole ? 1 : "any"} required
          .value=${live(String(field.value))} @change=${(event: Event) => this.onNumber(event, field.change)} /></label>`;
      case "text":
        return html`<label class="plain">${field.label}<input type="text" maxlength="100" required autocomplete="off" .value=${live(field.value)}
          @change=${(event: Event) => this.onText(event, field.change)} /></label>`;
      case "choice":
        return html`<label class="plain">${field.label}<select @change=${(event: Event) => this.edit(field.change((event.target as HTMLSelectElement).value))}>
          ${field.among.map(([value, words]) => html`<option value=${value} ?selected=${value === field.value}>${words}</option>`)}</select></label>`;
      case "flag":
        return html`<label class="tick"><input type="checkbox" .checked=${live(field.value)}
          @change=${(event: Event) => this.edit(field.change((event.target as HTMLInputElement).checked))} />${field.label}</label>`;
    }
  }

  private actions(place: Place): (TemplateResult | typeof nothing)[] {
    const { system } = this;
    const part = partAt(system, place);
    const list = listAt(system, place);
    const at = indexOf(place);
    if (part === undefined) return [];
    const bank = part.part === "bank";
    const single = at < list.length - 1;
    const moved = (by: number) => ({ kind: "part", place: edits.movedPlace(place, by) }) as const;
    return [
      at > 0 ? this.button("Move towards the tank", (one) => edits.movePart(one, place, -1), moved(-1)) : nothing,
      single ? this.button("Move towards the engine", (one) => edits.movePart(one, place, 1), moved(1)) : nothing,
      html`<button type="button" @click=${() => this.choose({ kind: "gap", place: edits.movedPlace(place, 1) })}>Add a part behind it</button>`,
      bank
        ? this.button("Add a branch", (one) => edits.addBranch(one, place))
        : this.button("Duplicate", (one) => edits.duplicatePart(one, place), moved(1)),
      edits.canBranch(part, place) ? this.button("Branch here", (one) => edits.branchHere(one, place)) : nothing,
      bank ? this.button("Keep the first branch only", (one) => edits.unbranch(one, place), null) : nothing,
      this.moves(place),
      edits.canRemove(system, place)
        ? this.button("Remove", (one) => edits.removePart(one, place), null, "danger")
        : nothing,
    ];
  }

  /** Every place the part may go, for whoever does not drag it. */
  private moves(place: Place): TemplateResult | typeof nothing {
    const slots = slotsFor(this.system, place);
    if (slots.length === 0) return nothing;
    return html`<label class="move"><span class="unseen">Move it to</span><select @change=${(event: Event) => this.onMove(event, place, slots)}>
      <option value="" selected>Move it to…</option>
      ${slots.map(({ words }, at) => html`<option value=${at}>${words}</option>`)}</select></label>`;
  }

  private onMove(event: Event, from: Place, slots: readonly Slot[]): void {
    const select = event.target as HTMLSelectElement;
    const to = slots[Number(select.value)]?.place;
    select.value = "";
    if (to === undefined) return;
    const { place } = moveTo(this.system, from, to);
    if (this.edit((system) => moveTo(system, from, to).system)) this.choose({ kind: "part", place });
  }

  /** The parts of a bank, and of a tank's own path a way to begin. */
  private inside(): TemplateResult | typeof nothing {
    const { chosen, system } = this;
    if (chosen.kind === "tank") {
      const place: Place =
        system.tanks.length > 1 ? { side: "tank", tank: chosen.tank, at: 0 } : { side: "suction", at: 0 };
      return html`<div class="buttons"><button type="button" @click=${() => this.choose({ kind: "gap", place })}>Add a part behind it</button></div>`;
    }
    const bank = chosen.kind === "part" ? partAt(system, chosen.place) : undefined;
    if (chosen.kind !== "part" || bank?.part !== "bank") return nothing;
    return html`<div class="buttons">${bank.branches.flatMap((parts, branch) =>
      parts.map(
        ({ name }, inner) =>
          html`<button type="button" @click=${() => this.choose({ kind: "part", place: { ...chosen.place, branch, inner } })}>${name}</button>`,
      ),
    )}</div>`;
  }

  private adding(place: Place): TemplateResult {
    return html`<p class="quiet">It begins with usual figures; put them right in the boxes.</p>
      <div class="buttons">${newParts.map((kind) =>
        this.button(kind, (system) => edits.insertPart(system, place, newPart(kind, system)), { kind: "part", place }),
      )}</div>`;
  }

  private button(words: string, change: (system: System) => System, then?: Chosen | null, look = ""): TemplateResult {
    return html`<button type="button" class=${look} @click=${() => {
      if (this.edit(change) && then !== undefined) this.choose(then);
    }}>${words}</button>`;
  }

  private onNumber(event: Event, change: (value: number) => (system: System) => System): void {
    const input = event.target as HTMLInputElement;
    if (input.reportValidity()) this.edit(change(input.valueAsNumber));
  }

  private onText(event: Event, change: (value: string) => (system: System) => System): void {
    const input = event.target as HTMLInputElement;
    if (input.reportValidity() && input.value.trim() !== "") this.edit(change(input.value.trim()));
    this.requestUpdate();
  }

  /** Whether the change was taken. */
  private edit(change: (system: System) => System): boolean {
    const taken = this.dispatchEvent(new EditEvent(change));
    this.requestUpdate();
    return taken;
  }

  private choose(chosen: Chosen | null): void {
    this.dispatchEvent(new ChooseEvent(chosen));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "part-editor": PartEditor;
  }
}
