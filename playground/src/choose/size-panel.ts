import type { System } from "@thirstline/spec/system";
import {
  type Arrangement,
  arrangedSystem,
  type SizeAnswer,
  sizeNamed,
  stagesText,
  temperaturesOf,
  type UnitSystem,
} from "@thirstline/study";
import { css, html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controlStyles } from "../look/sheetStyles.js";
import { EditEvent } from "../model/events.js";
import type { Subject } from "../working/Question.js";
import type { Catalogue } from "./Catalogue.js";
import { ChooseController } from "./ChooseController.js";
import { chooseStyles } from "./chooseStyles.js";
import type { Asked, FiguresOf } from "./messages.js";
import { noWishes, optionsOf, type SizeWishes } from "./SizeWishes.js";
import "./size-answer.js";
import "./size-wishes.js";
import { UsedEvent } from "./UsedEvent.js";
import "./work-progress.js";

/** Draws for the chance of starving, and of how many arrangements at least. */
const DRAWS = 200;
const FEW = 10;

/**
 * How many, which, how arranged? What to keep to, the search, and what it found.
 * @fires sheet-edit - to put an arrangement on the sheet
 * @fires choose-used - when that was done
 */
@customElement("size-panel")
export class SizePanel extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    css`
    .ask { font-size: 1.15rem; max-width: 34em; color: var(--soft); margin-top: 12px; }
    .old { border-left: 4px solid var(--edge); padding-left: 12px; margin-bottom: 12px; }
  `,
  ];
  @property({ attribute: false }) system!: System;
  @property({ attribute: false }) catalogue!: Catalogue;
  @property({ attribute: false }) units: UnitSystem = "metric";
  @state() private wishes: SizeWishes = noWishes;
  @state() private found: { readonly answer: SizeAnswer; readonly figures: FiguresOf; readonly drawn: boolean } | null =
    null;
  /** What the answer shown was asked for; another wish, machine or catalogue makes it an old one. */
  @state() private asked: Extract<Asked, { kind: "size" }> | null = null;
  /** What the figures found are of. */
  private subject: Subject | null = null;
  private readonly work = new ChooseController(this, (told) => {
    if (told.kind !== "size") return;
    this.found = { answer: told.answer, figures: told.figures, drawn: told.done };
    this.subject = this.asked && subjectOf(this.asked, told.answer);
  });

  protected override willUpdate(changed: PropertyValues): void {
    // Figures of another machine's duty would only mislead.
    if (changed.has("system") && changed.get("system")?.name !== this.system.name)
      this.wishes = { ...noWishes, parallel: this.wishes.parallel, stages: this.wishes.stages };
  }

  override render() {
    const { system, units, wishes, work } = this;
    return html`<div class="two">
      <div class="no-print">
        <size-wishes .system=${system} .wishes=${wishes} .temperatures=${temperaturesOf(system)} .units=${units}
          @wish-change=${(event: HTMLElementEventMap["wish-change"]) => {
            this.wishes = event.wishes;
          }}></size-wishes>
        <div class="row gap"><button type="button" class="main" ?disabled=${work.busy && this.found === null} @click=${this.search}>Look for arrangements</button></div>
        <work-progress .progress=${work.progress} @work-stop=${() => work.stop()}></work-progress>
      </div>
      <div>${this.result()}</div>
    </div>`;
  }

  private result() {
    const { found, units, work } = this;
    if (work.refusal !== "") return html`<p class="fault" role="alert">There is no answer: ${work.refusal}.</p>`;
    if (found === null) {
      return html`<p class="ask" role="status">${
        work.busy
          ? "Going through every arrangement of the catalogue's elements."
          : "Every arrangement of the catalogue's elements is tried in the place of those on the sheet: so many side by side, in so many stages. What holds in the cold, keeps the fuel clean and lasts the interval is listed by cost."
      }</p>`;
    }
    return html`${this.isOld() ? html`<p class="old" role="status">This is what was found for what stood here before. Look again to have it anew.</p>` : nothing}
      <size-answer .answer=${found.answer} .subject=${this.subject} .figures=${found.figures} .system=${this.asked?.system ?? this.system} .units=${units}
        @size-use=${(event: HTMLElementEventMap["size-use"]) => this.use(event.arrangement)}></size-answer>`;
  }

  /** An arrangement put on the sheet makes the answer no older: it was found for the same machine. */
  private isOld(): boolean {
    const { asked } = this;
    if (asked === null) return false;
    const now = this.question();
    return (
      asked.system.name !== now.system.name ||
      asked.elements !== now.elements ||
      JSON.stringify([asked.options, asked.stoppage]) !== JSON.stringify([now.options, now.stoppage])
    );
  }

  private question(): Extract<Asked, { kind: "size" }> {
    const { system, catalogue, wishes } = this;
    const options = optionsOf(wishes, temperaturesOf(system));
    return {
      kind: "size",
      system,
      elements: catalogue.elements,
      options,
      stoppage: wishes.stoppage,
      draws: DRAWS,
      few: FEW,
    };
  }

  private search(): void {
    this.found = null;
    this.asked = this.question();
    this.work.ask(this.asked);
  }

  private use(one: Arrangement): void {
    const { found, asked } = this;
    if (found === null || asked === null) return;
    const edit = new EditEvent((system) => arrangedSystem(system, asked.elements, found.answer.side, one));
    if (this.dispatchEvent(edit)) this.dispatchEvent(new UsedEvent(`On the sheet now: ${stagesText(one.stages)}.`));
  }
}

/** What the figures of a search's answer are of. */
function subjectOf(asked: Extract<Asked, { kind: "size" }>, answer: SizeAnswer): Subject {
  const { system, elements, options, stoppage, draws } = asked;
  return {
    source: {
      kind: "size",
      system,
      elements,
      answer,
      options: { ...options, draws, ...(stoppage === null ? {} : { stoppage }) },
    },
    about: (of) => {
      const shown = sizeNamed(answer, of);
      return shown ? `With ${stagesText(shown.stages)} on the ${answer.side} side.` : "The search.";
    },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    "size-panel": SizePanel;
  }
}
