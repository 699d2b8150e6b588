import type { UnitSystem } from "@thirstline/study";
import type { Leaf } from "@thirstline/study/working";
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, query } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { panelStyles } from "./panelStyles.js";
import { proofWords } from "./proofWords.js";
import type { Source } from "./Question.js";
import "./step-working.js";
import type { StepWorking } from "./step-working.js";
import { valueText } from "./valueText.js";
import { WorkingDesk } from "./WorkingDesk.js";

/**
 * How a figure was reached, beside the sheet; of a small screen it takes the lower part. It follows the system.
 * @fires working-close - when it is to be put away
 */
@customElement("working-panel")
export class WorkingPanel extends LitElement {
  static override styles = [controlStyles, panelStyles];
  @property({ attribute: false }) source!: Source;
  /** Which figure, and what it is asked with. */
  @property({ attribute: false }) leaf!: Leaf;
  @property() units: UnitSystem = "metric";
  /** What the figure is of, in words; "" for the sheet's own. */
  @property() about = "";
  /** Where the figure stands, as an address; "" while the page shows it. */
  @property() back = "";
  @query("dialog") private readonly dialog!: HTMLDialogElement;
  @query(".inside") private readonly inside!: HTMLElement;
  @query("step-working") private readonly steps!: StepWorking | null;
  private readonly desk = new WorkingDesk(this);
  private news = "";
  /** Whether the keyboard is to be put on the figure that comes. */
  private arriving = true;

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("leaf")) {
      this.arriving = true;
      this.desk.forget();
    }
    if (changed.has("leaf") || changed.has("source")) this.desk.ask(this.source, this.leaf);
    const { working } = this.desk;
    if (this.arriving && working && this.isAsked)
      this.news = `${working.figure}, ${valueText(working.step, this.units).shown}: how it was reached.`;
  }

  override render() {
    return html`<dialog aria-label="How a figure was reached" @step-shown=${this.onStep}>
      <div class="head"><h2>How it was reached</h2>
        ${this.back === "" ? nothing : html`<a class="button" href=${this.back}>Back to the ${this.back === "#sheet" ? "sheet" : "figure"}</a>`}
        <button type="button" @click=${this.close}>Close</button></div>
      <div class="inside" tabindex="0" role="region" aria-label="Working">${this.about === "" ? nothing : html`<p class="about">${this.about}</p>`}${this.content()}</div>
      <p class="unseen" role="status">${this.news}</p></dialog>`;
  }

  protected override firstUpdated(): void {
    this.dialog.show();
  }

  protected override async updated(): Promise<void> {
    if (!this.arriving || !this.isAsked) return;
    this.arriving = false;
    await this.steps?.updateComplete;
    this.inside.scrollTop = 0;
    this.steps?.toHeading();
  }

  /** Puts the keyboard on the figure, where it is open again. */
  toFigure(): void {
    this.steps?.toTop();
    this.steps?.toHeading();
  }

  private get isAsked(): boolean {
    return this.desk.working?.figure === this.leaf.figure && !this.desk.busy;
  }

  private content(): TemplateResult {
    const { working, proof, trouble } = this.desk;
    if (trouble !== "") return html`<p role="alert"><b>${this.leaf.figure}</b>: ${trouble}</p>`;
    if (working === null) return html`<p class="quiet">Working it out…</p>`;
    return html`<step-working .working=${working} .units=${this.units}></step-working>
      ${proof === null ? nothing : html`<p class="quiet proof">${proofWords(proof)}</p>`}`;
  }

  private onStep(): void {
    this.inside.scrollTop = 0;
  }

  private close(): void {
    this.dispatchEvent(new Event("working-close", { bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "working-panel": WorkingPanel;
  }
}
