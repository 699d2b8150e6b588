import { capital, type UnitSystem } from "@thirstline/study";
import { type Step, stepsBefore, type Working } from "@thirstline/study/working";
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { MarkEvent } from "./MarkEvent.js";
import { stepBody } from "./stepBody.js";
import { stepStyles } from "./stepStyles.js";
import { stepsAlong, type Trail } from "./trailOf.js";
import { mathsStyles } from "./typeset.js";
import { powersHtml, valueText } from "./valueText.js";
import { whyStyles } from "./whyStyles.js";

/**
 * The working of a figure, one step at a time: formula, values, where each comes from, and a trail back up.
 * @fires part-marked - which part of the system is spoken of
 */
@customElement("step-working")
export class StepWorking extends LitElement {
  static override styles = [controlStyles, whyStyles, mathsStyles, stepStyles];
  @property({ attribute: false }) working!: Working;
  @property() units: UnitSystem = "metric";
  @state() private trail: Trail = [];
  private marked: Step["part"] = undefined;

  /** From another figure on, at its own step. */
  toTop(): void {
    this.trail = [];
  }

  protected override willUpdate(changed: PropertyValues): void {
    const before = changed.get("working") as Working | undefined;
    if (before !== undefined && before.figure !== this.working.figure) this.trail = [];
  }

  override render() {
    const steps = stepsAlong(this.working.step, this.trail);
    const step = steps.at(-1) ?? this.working.step;
    const { shown, si } = valueText(step, this.units);
    return html`${this.above(steps)}
      <h3 tabindex="-1"><span>${capital(steps.length === 1 ? this.working.figure : step.name)}</span> <b class="figure">${powersHtml(shown)}</b>${si === "" ? nothing : html` <small>${powersHtml(si)}</small>`}</h3>
      ${stepBody(step, { units: this.units, down: (next) => this.down(steps, next), look: (one) => this.mark(one?.part ?? step.part) })}`;
  }

  protected override updated(): void {
    this.mark(stepsAlong(this.working.step, this.trail).at(-1)?.part);
  }

  /** Puts the keyboard on the name of the step shown. */
  toHeading(): void {
    this.renderRoot.querySelector<HTMLElement>("h3")?.focus({ preventScroll: true });
  }

  private above(steps: readonly Step[]): TemplateResult | typeof nothing {
    if (steps.length < 2) return nothing;
    const names = [this.working.figure, ...steps.slice(1).map(({ name }) => name)];
    return html`<nav aria-label="The way down"><ol class="trail">${names.map((name, at) =>
      at === names.length - 1
        ? html`<li aria-current="step">${name}</li>`
        : html`<li><button type="button" @click=${() => this.go(this.trail.slice(0, at))}>${name}</button></li>`,
    )}</ol></nav>`;
  }

  private down(steps: readonly Step[], next: Step): void {
    const step = steps.at(-1) ?? this.working.step;
    const way = this.trail.slice(0, steps.length - 1);
    void this.go([...way, { at: stepsBefore(step).indexOf(next), name: next.name }]);
  }

  private async go(trail: Trail): Promise<void> {
    this.trail = trail;
    await this.updateComplete;
    this.toHeading();
    this.dispatchEvent(new Event("step-shown", { bubbles: true, composed: true }));
  }

  private mark(part: Step["part"]): void {
    if (JSON.stringify(part) === JSON.stringify(this.marked)) return;
    this.marked = part;
    this.dispatchEvent(new MarkEvent(part ?? null));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "step-working": StepWorking;
  }
}
