import type { System } from "@thirstline/spec/system";
import { type Caution, plain, type UnitSystem, verdictSentence } from "@thirstline/study";
import { html, LitElement, noChange, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { LifeWork } from "../life/LifeWork.js";
import { controlStyles, sheetStyles } from "../look/sheetStyles.js";
import type { AfterFrame } from "../model/AfterFrame.js";
import type { Answers } from "../model/answersOf.js";
import type { Example } from "../model/Example.js";
import { type Chosen, keyOf } from "../model/Place.js";
import type { Sheet } from "../model/Sheet.js";
import { SheetFollower } from "../model/SheetFollower.js";
import { whenPainted } from "../model/whenPainted.js";
import { assumedWords } from "../trial/assumedWords.js";
import { cautionedParts, cautionPlace } from "../words/cautionPlace.js";
import { verdictWord } from "../words/verdictWord.js";
import { wordsHtml } from "../words/wordsHtml.js";
import { whyStyles } from "../working/whyStyles.js";

import "./caution-list.js";
import "./fuel-path.js";
import "./place-controls.js";

const looks = { holds: "", tight: "care", starves: "bad", "cannot say": "unknown" } as const;

/** What the rest of the sheet shows. */
interface Settled {
  readonly answers: Answers;
  readonly system: System;
  /** those about parts */
  readonly cautions: readonly Caution[];
}

/** The bench sheet: the sentence, the path and all there is to see and change about one system. */
@customElement("bench-sheet")
export class BenchSheet extends LitElement {
  static override styles = [controlStyles, sheetStyles, whyStyles];
  @property({ attribute: false }) sheet!: Sheet;
  /** What is answered now, taken from the sheet as it changes: what gives the sheet its view may follow later. */
  @state() private answers!: Answers;
  @property({ attribute: false }) units: UnitSystem = "metric";
  @property({ attribute: false }) examples: readonly Example[] = [];
  /** The part that is spoken of beside the sheet; null for none. */
  @property({ attribute: false }) marked: Chosen | null = null;
  @state() private chosen: Chosen | null = null;
  /** Whether what comes after the path has been fetched. */
  @state() private complete = false;

  constructor() {
    super();
    new SheetFollower(this, () => {
      if (this.answers === this.sheet.answers) this.requestUpdate();
      this.answers = this.sheet.answers;
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener("keydown", this.onKey);
    addEventListener("beforeprint", this.onPrint);
    addEventListener("afterprint", this.onPrint);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener("keydown", this.onKey);
    removeEventListener("beforeprint", this.onPrint);
    removeEventListener("afterprint", this.onPrint);
  }

  protected override willUpdate(changed: PropertyValues): void {
    // What was chosen may have moved or gone, unless the change was made here.
    if (changed.has("answers") && !this.ownChange) this.chosen = null;
    this.ownChange = false;
    if (changed.has("answers")) this.rest?.ask();
    // While a slider is moved the sentence, the path and the curve come first.
    if (this.rest === null || changed.size !== 1 || !changed.has("answers")) this.settle();
  }

  /** Shows the rest of the sheet as it is answered now. */
  private settle(): void {
    const { answers, sheet } = this;
    this.sliding = false;
    if (this.settled?.answers === answers) return;
    this.cautioned = cautionedParts(answers.point.cautions);
    const ofParts = answers.point.cautions.filter((one) => typeof cautionPlace(one) === "object");
    this.settled = { answers, system: sheet.system, cautions: ofParts };
  }

  override render() {
    const { check, point } = this.answers;
    const { units } = this;
    const { system, refusal } = this.sheet;
    const { answers: rest, cautions } = this.settled;
    const sentence = verdictSentence(check, point, units);
    // A slider's step: sentence and descent now, the rest as it stands until they are painted.
    const ahead = this.sliding && rest !== this.answers;
    const near = this.renderRoot.querySelector("vacuum-chart")?.isNear ?? false;
    return html`
      <div class="sheet" @sheet-edit=${this.onEdit}
        @sheet-choose=${(event: HTMLElementEventMap["sheet-choose"]) => this.choose(event.chosen)}>
        <p class=${`verdict ${looks[point.verdict]}`}>${verdictWord(point.verdict)}</p>
        <p class="sentence">${wordsHtml(sentence, this.live?.(point, units))}</p>
        ${ahead ? noChange : assumedWords(system, units).map((words) => html`<p class="assumed"><b>Assumed, not tested:</b> ${words}. A flow test would settle it.</p>`)}
        <place-controls .system=${this.settled.system} .point=${rest.point} .units=${units} .examples=${this.examples}
          .chosen=${this.chosen} .soil=${this.life?.answer ? this.life.soil : undefined}></place-controls>
        <fuel-path .system=${system} .point=${point} .units=${units} .chosen=${this.chosen} .marked=${this.marked} .tools=${this.pathTools}
          .ahead=${ahead} .cautioned=${this.cautioned}></fuel-path>
        <path-saves class="no-print" .name=${system.name} .point=${rest.point} .units=${units}></path-saves>
        ${refusal === "" ? nothing : html`<p class="refusal" role="alert">That cannot be: ${refusal}.</p>`}
        ${this.editor()}
        <caution-list class="after" .cautions=${cautions} .units=${units}></caution-list>
        ${ahead && !near ? noChange : this.charts(near)}
        <details class="parts block after"><summary>Table of parts</summary>
          <parts-table .point=${rest.point} .pump=${rest.check.pump} .units=${units}></parts-table></details>
      </div>
      <p class="unseen" role="status">${ahead ? noChange : plain(verdictSentence(rest.check, rest.point, units))}</p>`;
  }

  protected override async firstUpdated(): Promise<void> {
    await whenPainted();
    const { AfterFrame, LifeWork, checkFigures, pathTools } = await import("./rest-of-sheet.js");
    this.rest = new AfterFrame(this, () => {
      this.life?.ask(this.sheet.system);
      this.requestUpdate();
    });
    this.life = new LifeWork(this);
    this.pathTools = pathTools;
    this.live = checkFigures;
    this.life.ask(this.sheet.system);
    this.complete = true;
  }

  private ownChange = false;
  /** Whether the last change was a step of one that goes on, as a slider's is. */
  private sliding = false;
  // What elements are given anew only when it is another: what is the same draws nothing.
  private cautioned: ReadonlySet<string> = new Set();
  private live: typeof import("../working/checkFigures.js").checkFigures | null = null;
  private pathTools: typeof import("../path/pathTools.js") | null = null;
  /** What is under the path, as it is shown: a frame behind the sentence and the path. */
  private settled!: Settled;
  private rest: AfterFrame | null = null;
  /** How long the elements last; there once the rest has been fetched. */
  private life: LifeWork | null = null;
  /** The page makes the change when the event gets there. */
  private onEdit({ merge }: HTMLElementEventMap["sheet-edit"]): void {
    this.ownChange = true;
    this.sliding = merge !== null;
  }

  private async choose(chosen: Chosen | null): Promise<void> {
    const before = this.chosen;
    this.chosen = chosen;
    this.sheet.refusal = "";
    await this.updateComplete;
    if (chosen !== null) {
      await customElements.whenDefined("part-editor");
      this.renderRoot.querySelector("part-editor")?.toHeading();
    } else if (before !== null) {
      this.renderRoot.querySelector("fuel-path")?.toName(keyOf(before));
    }
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key === "Escape" && this.chosen !== null) void this.choose(null);
  };

  /** On paper the table of parts is open, and the path drawn for the width of a sheet. */
  private readonly onPrint = ({ type }: Event): void => {
    const printing = type === "beforeprint";
    this.rest?.now();
    const table = this.renderRoot.querySelector<HTMLDetailsElement>("details.parts");
    if (table && printing) table.open = true;
    this.renderRoot.querySelector("fuel-path")?.toPaper(printing);
  };

  private editor() {
    if (this.chosen === null) return nothing;
    return html`<part-editor class="no-print" .system=${this.sheet.system} .chosen=${this.chosen} .units=${this.units}></part-editor>`;
  }

  /** What is fetched once the path stands: charts, the map, what is pinned. */
  private charts(near: boolean): TemplateResult | typeof nothing {
    if (!this.complete) return nothing;
    const { units, sheet } = this;
    const { answers, system } = this.settled;
    return html`
      <section class="block after"><vacuum-chart .system=${near ? sheet.system : system} .pins=${sheet.pins} .units=${units}></vacuum-chart></section>
      ${this.lasting()}
      <section class="block after halves">
        <cold-map .system=${system} .point=${answers.point} .units=${units}></cold-map>
        ${this.cleanliness()}</section>
      <section class="block after"><answer-figures .answer=${answers.check} .point=${answers.point} .units=${units}></answer-figures></section>
      <section class="block after"><pinned-variants .answers=${answers} .pins=${sheet.pins} .units=${units}
        @pin-this=${() => sheet.pin()}
        @pin-drop=${(event: HTMLElementEventMap["pin-drop"]) => sheet.unpin(event.pin)}></pinned-variants></section>`;
  }

  private lasting(): TemplateResult | typeof nothing {
    const { answer, progress, trouble } = this.life ?? { answer: null, progress: null, trouble: "" };
    if (answer === null) return trouble === "" ? nothing : html`<p class="block after" role="status">${trouble}</p>`;
    return html`<section class="block after"><life-panel .answer=${answer} .point=${this.settled.answers.point} .progress=${progress}
      .trouble=${trouble} .units=${this.units}></life-panel></section>`;
  }

  private cleanliness(): TemplateResult | typeof nothing {
    const answer = this.life?.first;
    if (!answer || answer.cleanliness.length === 0) return nothing;
    return html`<particle-chart .answer=${answer} .units=${this.units}></particle-chart>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "bench-sheet": BenchSheet;
  }
}
