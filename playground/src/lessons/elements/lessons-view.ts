import type { UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { lessons } from "../index.js";
import type { Lesson, Told } from "../Lesson.js";
import { forgetProgress, keptProgress, type Progress, withStage } from "../progress.js";
import { lessonSheets } from "../sheets/lessonSheets.js";
import { sheetStyles } from "../sheets/sheetStyles.js";
import { pageYard } from "../yard/pageYard.js";
import "./lesson-contents.js";
import "./lesson-view.js";

/** What is drawn again for paper. */
const DRAWN = "fuel-path, lesson-curve, lesson-particles";

/** The lessons: their contents or one of them, the progress with them, and their sheets on paper. */
@customElement("lessons-view")
export class LessonsView extends LitElement {
  static override styles = [
    sheetStyles,
    css`
    :host { display: block; }
    .paper { display: none; }
    .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
    @media print { .screen { display: none; } .paper { display: block; } }
  `,
  ];
  @property() units: UnitSystem = "metric";
  /** The lesson shown, by its id; "" or no lesson's for the contents. */
  @property() place = "";
  @state() private progress: Progress = keptProgress();
  /** What is on paper; none but while it prints. */
  @state() private sheets: readonly Lesson[] = [];
  @state() private news = "";
  private asked: readonly Lesson[] = [];
  private readonly told = new Map<string, Told>();

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener("beforeprint", this.onPrint);
    addEventListener("afterprint", this.onPrinted);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener("beforeprint", this.onPrint);
    removeEventListener("afterprint", this.onPrinted);
  }

  override render() {
    const { sheets, units } = this;
    const all = sheets.map((lesson) => ({ lesson, told: this.tell(lesson), number: lessons.indexOf(lesson) + 1 }));
    return html`<div class="screen">${this.shown()}<p class="unseen" role="status">${this.news}</p></div>
      ${all.length === 0 ? nothing : html`<div class="paper">${lessonSheets(all, units)}</div>`}`;
  }

  protected override async updated(changed: PropertyValues): Promise<void> {
    // On arrival the keyboard stays where it is; from one page to another it goes to the new one's name.
    if (!changed.has("place") || changed.get("place") === undefined) return;
    scrollTo(0, 0);
    const page =
      this.renderRoot.querySelector<HTMLElementTagNameMap["lesson-view" | "lesson-contents"]>(
        "lesson-view, lesson-contents",
      );
    await page?.updateComplete;
    page?.toTitle();
  }

  private shown() {
    const { units, lesson } = this;
    if (lesson === null) {
      return html`<lesson-contents .progress=${this.progress} @lesson-print-all=${() => this.print(lessons)}
        @lesson-forget=${this.onForget}></lesson-contents>`;
    }
    const at = lessons.indexOf(lesson);
    return html`<lesson-view .lesson=${lesson} .told=${this.tell(lesson)} .units=${units} .next=${lessons[at + 1] ?? null}
      .where=${`Lesson ${at + 1} of ${lessons.length}`} @lesson-print=${() => this.print([lesson])}
      @lesson-stage=${(event: HTMLElementEventMap["lesson-stage"]) => {
        this.progress = withStage(this.progress, lesson.id, event.stage);
      }}></lesson-view>`;
  }

  private get lesson(): Lesson | null {
    return lessons.find(({ id }) => id === this.place) ?? null;
  }

  /** What a lesson says, worked out when it is first wanted. */
  private tell(lesson: Lesson): Told {
    const told = this.told.get(lesson.id) ?? lesson.tell(pageYard);
    this.told.set(lesson.id, told);
    return told;
  }

  private print(wanted: readonly Lesson[]): void {
    this.asked = wanted;
    print();
  }

  /** Makes the sheets at once: a browser that prints does not wait. The contents print as every lesson's sheets. */
  private readonly onPrint = (): void => {
    const { lesson } = this;
    this.sheets = this.asked.length > 0 ? this.asked : lesson ? [lesson] : lessons;
    this.performUpdate();
    for (const drawing of this.renderRoot.querySelectorAll<
      HTMLElementTagNameMap["fuel-path" | "lesson-curve" | "lesson-particles"]
    >(DRAWN)) {
      drawing.toPaper(true);
    }
  };

  private readonly onPrinted = (): void => {
    this.asked = [];
    this.sheets = [];
  };

  private onForget(): void {
    forgetProgress();
    this.progress = {};
    this.news = "Forgotten: every lesson is as new.";
    void this.updateComplete.then(() => this.renderRoot.querySelector("lesson-contents")?.toTitle());
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "lessons-view": LessonsView;
  }
}
