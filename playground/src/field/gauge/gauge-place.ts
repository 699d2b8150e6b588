import type { GaugeReading, System } from "@thirstline/spec/system";
import type { GaugeAnswer, UnitSystem } from "@thirstline/study";
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import { chooseStyles } from "../../choose/chooseStyles.js";
import "../../elements/file-faults.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { EditEvent } from "../../model/events.js";
import { fileNameOf, saveFile } from "../../model/saveFile.js";
import type { Subject } from "../../working/Question.js";
import { FieldController } from "../FieldController.js";
import { fieldStyles } from "../fieldStyles.js";
import { troubleWords } from "../store/StoreTrouble.js";
import type { Course } from "./Course.js";
import "./gauge-answer.js";
import "./gauge-chart.js";
import "./gauge-tables.js";
import { soilOf, withoutPut, withPut } from "./gaugeSoil.js";
import { putIn } from "./putIn.js";
import { ReadingsController } from "./ReadingsController.js";
import type { ReadingForm } from "./reading-form.js";
import "./reading-form.js";
import "./reading-list.js";
import "./readings-desk.js";

/**
 * The gauge of the machine on the sheet: readings noted at it, and what they say. Nothing on the sheet changes by it, unless
 * the soil that was found is put there.
 * @fires sheet-edit - to put the soil on the sheet
 */
@customElement("gauge-place")
export class GaugePlace extends LitElement {
  static override styles = [controlStyles, chooseStyles, fieldStyles];
  @property({ attribute: false }) system!: System;
  @property() units: UnitSystem = "metric";
  @state() private found: {
    readonly answer: GaugeAnswer;
    readonly courses: readonly Course[];
    readonly of: readonly GaugeReading[];
    /** what its figures are of */
    readonly subject: Subject;
  } | null = null;
  @state() private over: GaugeReading | null = null;
  @state() private refusal = "";
  @state() private said = "";
  @query("reading-form") private form!: ReadingForm | null;
  private readonly kept = new ReadingsController(this);
  private readonly work = new FieldController(this, (told, asked) => {
    if (told.kind !== "gauge" || asked.kind !== "gauge") return;
    const { answer, courses } = told;
    const subject = { source: { ...asked, answer }, about: aboutOf };
    this.found = { answer, courses, of: asked.readings, subject };
  });
  /** What the worker was asked last. */
  private asked: { readonly system: System; readonly readings: readonly GaugeReading[]; readonly put: unknown } | null =
    null;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("system")) void this.kept.open(this.system.name);
    this.ask();
  }

  override render() {
    const { kept, over } = this;
    const { readings, trouble } = kept;
    return html`<readings-desk .machine=${this.system.name} .demo=${kept.demo} .count=${readings.length}
        @readings-open=${(event: HTMLElementEventMap["readings-open"]) => kept.take(event.file, event.given, event.keep)}
        @readings-save=${this.save} @readings-back=${() => kept.back()} @readings-forget=${() => kept.forget()}></readings-desk>
      ${trouble === null ? nothing : html`<p class="trouble" role="alert">${troubleWords(trouble, "these readings")}</p>`}
      ${this.faults()}
      <div>${this.answer()}</div>
      <section class="block no-print"><h2>${over === null ? "Note a reading" : "Change a reading"}</h2>
        <reading-form .units=${this.units} .over=${over} .refusal=${this.refusal} @reading-typed=${this.onTyped} @reading-leave=${() => {
          this.over = null;
          this.refusal = "";
        }}></reading-form></section>
      ${
        readings.length === 0
          ? nothing
          : html`<section class="block no-print"><h2>Readings</h2><reading-list .readings=${readings} .units=${this.units}
          @reading-change=${(event: HTMLElementEventMap["reading-change"]) => {
            this.over = readings[event.row - 1] ?? null;
            this.form?.scrollIntoView({ block: "center" });
          }} @reading-remove=${this.onRemove}></reading-list></section>`
      }`;
  }

  private answer(): TemplateResult | typeof nothing {
    const { found, kept, units, work } = this;
    if (work.refusal !== "") return html`<p class="fault" role="alert">There is no answer: ${work.refusal}.</p>`;
    if (kept.readings.length === 0) return nothing;
    if (found === null) return html`<p class="lead" role="status">Working it out.</p>`;
    const { answer, courses, of, subject } = found;
    return html`<gauge-answer .answer=${answer} .subject=${subject} .units=${units}></gauge-answer>
      ${this.putting(answer)}
      ${courses.length === 0 ? nothing : html`<gauge-chart class="block" .answer=${answer} .courses=${courses} .readings=${of} .subject=${subject} .units=${units}></gauge-chart>`}
      <gauge-tables class="block" .answer=${answer} .subject=${subject} .units=${units}></gauge-tables>`;
  }

  private putting(answer: GaugeAnswer): TemplateResult | typeof nothing {
    const soil = soilOf(answer);
    const there = withPut(this.system, soil);
    const words = this.said === "" ? nothing : html`<span role="status">${this.said}</span>`;
    if (soil.length === 0) return words;
    const already = JSON.stringify(there) === JSON.stringify(this.system);
    return html`<div class="row no-print"><button type="button" ?disabled=${already} @click=${() => this.put(answer)}>Put this soil on the sheet</button>
      ${already ? html`<span class="quiet">It is on the sheet, and left out where these readings are read. Ctrl+Z takes it off.</span>` : nothing}${words}</div>`;
  }

  private put(answer: GaugeAnswer): void {
    const soil = soilOf(answer);
    // Known before the sheet changes, so that nothing is read with it.
    const before = this.kept.put;
    void this.kept.setPut(soil);
    if (this.dispatchEvent(new EditEvent((system) => withPut(system, soil)))) return;
    void this.kept.setPut(before);
    this.said = "The sheet cannot take it.";
  }

  private ask(): void {
    const { readings, put } = this.kept;
    const { asked } = this;
    if (asked && asked.readings === readings && asked.system === this.system && asked.put === put) return;
    const system = withoutPut(this.system, put);
    const same =
      asked !== null &&
      asked.readings === readings &&
      JSON.stringify(system) === JSON.stringify(withoutPut(asked.system, put));
    this.asked = { system: this.system, readings, put };
    if (same) return;
    if (asked?.system.name !== this.system.name) this.found = null;
    if (readings.length === 0) this.found = null;
    else this.work.ask({ kind: "gauge", system, readings });
  }

  private async onTyped({ reading }: HTMLElementEventMap["reading-typed"]): Promise<void> {
    const others = this.kept.readings.filter((one) => one !== this.over);
    this.refusal = (await this.kept.change(putIn(others, reading))) ?? "";
    if (this.refusal !== "") return;
    this.over = null;
    this.form?.afresh();
  }

  private async onRemove({ row }: HTMLElementEventMap["reading-remove"]): Promise<void> {
    this.over = null;
    await this.kept.change(this.kept.readings.filter((one) => one.row !== row));
  }

  private async save(): Promise<void> {
    const { readingsCsv } = await import("./readingsCsv.js");
    saveFile(
      `${fileNameOf(this.system.name)}-readings.csv`,
      new Blob([readingsCsv(this.kept.readings)], { type: "text/csv" }),
    );
  }

  private faults(): TemplateResult | typeof nothing {
    const { refused } = this.kept;
    if (refused === null) return nothing;
    return html`<file-faults .file=${refused.file} .text=${refused.text} .faults=${refused.faults} .kept=${"The readings before it are still there."}
      .editable=${refused.text.length <= 200_000}
      @file-again=${(event: HTMLElementEventMap["file-again"]) => this.kept.take(refused.file, event.text, true)} @file-leave=${() => this.kept.leave()}></file-faults>`;
  }
}

/** What a figure of readings is of, in words. */
function aboutOf(of: string): string {
  if (of === "suction") return "What the gauge says, by the vacuum readings.";
  if (of === "delivery") return "What the gauge says, by the feed pressures.";
  if (of === "left without") return "What the gauge says, without the readings that stand off.";
  return "What the gauge says, by the readings.";
}

declare global {
  interface HTMLElementTagNameMap {
    "gauge-place": GaugePlace;
  }
}
