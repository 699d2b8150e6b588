import type { Fault } from "@thirstline/spec";
import { capital, type FleetAnswer, fleetSentence, namesWords, type UnitSystem } from "@thirstline/study";
import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property, query, state } from "lit/decorators.js";
import { chooseStyles } from "../../choose/chooseStyles.js";
import { openedWords } from "../../file/openedWords.js";
import { controlStyles } from "../../look/sheetStyles.js";
import { OpenEvent } from "../../model/events.js";
import type { Subject } from "../../working/Question.js";
import { FieldController } from "../FieldController.js";
import { fieldStyles } from "../fieldStyles.js";
import { troubleWords } from "../store/StoreTrouble.js";
import { DEMO_DAY, demoYard } from "./demoYard.js";
import "./fleet-ahead.js";
import "./fleet-list.js";
import type { LogForm } from "./log-form.js";
import "./log-form.js";
import { today } from "./today.js";
import { YardController } from "./YardController.js";
import type { YardFile } from "./YardFile.js";
import "./yard-desk.js";
import { fileNamed } from "./yardPaths.js";

/** What is due, what is wrong with the files, and what the figures are of. */
interface Found {
  readonly answer: FleetAnswer;
  readonly faults: readonly Fault[];
  readonly subject: Subject;
}

/**
 * A yard's machines and what is due of them, from a folder that stays on the device.
 * @fires sheet-open - with a machine's system
 */
@customElement("fleet-place")
export class FleetPlace extends LitElement {
  static override styles = [
    controlStyles,
    chooseStyles,
    fieldStyles,
    css`
    .asked { display: flex; flex-wrap: wrap; gap: 8px 20px; align-items: end; margin-top: 16px; }
    .asked label { font-size: 0.86rem; color: var(--soft); display: block; }
    .asked input { width: 11rem; display: block; }
    .asked select { display: block; }
    .faults { margin-top: 16px; }
    .faults code { font-family: var(--mono); font-size: 0.86rem; overflow-wrap: anywhere; }
  `,
  ];
  @property() units: UnitSystem = "metric";
  @state() private on = today();
  @state() private within = 90;
  @state() private found: Found | null = null;
  @state() private refused: readonly string[] = [];
  @state() private said = "";
  @state() private conflict = false;
  @query("log-form") private form!: LogForm | null;
  private readonly yard = new YardController(this);
  private readonly work = new FieldController(this, (told, asked) => {
    if (told.kind !== "fleet" || asked.kind !== "fleet") return;
    const { answer, faults } = told;
    this.found = { answer, faults, subject: subjectOf(answer, asked.files) };
  });
  private readonly entering = new FieldController(this, (told) => {
    if (told.kind === "not entered") this.refused = told.why;
    else if (told.kind === "entry") void this.write(told.log, told.written);
  });
  private asked: readonly unknown[] = [];

  protected override willUpdate(): void {
    const { files } = this.yard;
    const asked = [files, this.on, this.within];
    if (asked.every((one, at) => one === this.asked[at])) return;
    if (this.asked[0] !== files && this.asked[0] !== undefined && files.length === 0) this.found = null;
    this.asked = asked;
    if (files.length > 0) this.work.ask({ kind: "fleet", files, on: this.on, within: this.within });
  }

  override render() {
    const { yard, found, work } = this;
    return html`<yard-desk .yard=${yard} .files=${yard.files} @yard-invented=${this.look}></yard-desk>
      ${yard.trouble === null || yard.invented ? nothing : html`<p class="trouble" role="alert">${troubleWords(yard.trouble, "this yard and its log")}</p>`}
      ${this.conflict ? this.conflicted() : nothing}
      ${work.refusal === "" ? nothing : html`<p class="fault" role="alert">There is no answer: ${work.refusal}.</p>`}
      ${yard.files.length === 0 ? nothing : html`${this.asking()}${found === null ? html`<p class="lead block" role="status">Working it out.</p>` : this.list(found)}`}`;
  }

  private list({ answer, faults, subject }: Found): TemplateResult {
    const { units } = this;
    return html`<p class="sentence" role="status">${fleetSentence(answer)}</p>
      ${this.faults(faults)}${this.unlisted(answer)}
      <fleet-list .answer=${answer} .subject=${subject} .units=${units} @machine-note=${this.onNote} @machine-open=${this.onOpen}></fleet-list>
      <fleet-ahead class="block" .answer=${answer} .subject=${subject} .units=${units}></fleet-ahead>
      <section class="block no-print"><h2>Put something into the log</h2>
        <log-form .entries=${answer.entries} .on=${this.on} .units=${units} .refused=${this.refused} @log-note=${(
          event: HTMLElementEventMap["log-note"],
        ) => {
          this.refused = [];
          this.said = "";
          this.entering.ask({ kind: "entry", files: this.yard.files, on: this.on, note: event.note });
        }}></log-form>
        <p role="status">${this.said}</p></section>`;
  }

  private asking(): TemplateResult {
    return html`<div class="asked no-print"><label>Today is<input type="date" .value=${this.on} @change=${(
      event: Event,
    ) => {
      this.on = (event.target as HTMLInputElement).value || today();
    }} /></label>
      <label>Look ahead<select @change=${(event: Event) => {
        this.within = Number((event.target as HTMLSelectElement).value);
      }}>${[30, 90, 180, 365].map((days) => html`<option value=${days} .selected=${days === this.within}>${days} days</option>`)}</select></label></div>`;
  }

  private faults(faults: readonly Fault[]): TemplateResult | typeof nothing {
    if (faults.length === 0) return nothing;
    const count = faults.length === 1 ? "One thing is wrong" : `${faults.length} things are wrong`;
    return html`<details class="trouble faults" ?open=${faults.length < 6}><summary>${count} in the yard's files</summary>
      <ul class="plain">${faults.slice(0, 100).map(({ file, line, path, message }) => html`<li><code>${file}:${line}</code> ${path === "" ? "" : `${path}: `}${message}.</li>`)}</ul></details>`;
  }

  private unlisted({ unlisted }: FleetAnswer): TemplateResult | typeof nothing {
    if (unlisted.length === 0) return nothing;
    return html`<p class="lead">The log has rows of machines that are not listed: ${namesWords(unlisted.slice(0, 5).map(({ machine }) => machine))}${unlisted.length > 5 ? ` and ${unlisted.length - 5} more` : ""}.</p>`;
  }

  private conflicted(): TemplateResult {
    return html`<div class="trouble row" role="alert"><span>${troubleWords("changed elsewhere", "this yard")} What you typed still stands below.</span>
      <button type="button" @click=${async () => {
        this.conflict = false;
        await this.yard.bringBack();
      }}>Take in what is there now</button></div>`;
  }

  private async look(): Promise<void> {
    this.on = DEMO_DAY;
    this.yard.look(await demoYard());
  }

  private onNote({ entry }: HTMLElementEventMap["machine-note"]): void {
    this.form?.begin(entry.machine);
  }

  private async write(log: YardFile, written: readonly string[]): Promise<void> {
    const trouble = await this.yard.write(log, written.length);
    this.conflict = trouble === "changed elsewhere";
    if (this.conflict) return;
    this.said = `In the log: ${written.join("; ")}`;
    this.form?.afresh();
  }

  private async onOpen({ entry }: HTMLElementEventMap["machine-open"]): Promise<void> {
    const { files } = this.yard;
    const path = fileNamed(
      entry.system,
      files.map((file) => file.path),
    );
    const file = files.find((one) => one.path === path);
    const { readSystem } = await import("@thirstline/spec");
    const read = file && readSystem(file.bytes, { file: file.path });
    if (!read || "faults" in read) {
      this.said = `${capital(entry.machine)} was not opened: its system file is missing or at fault.`;
      return;
    }
    this.dispatchEvent(new OpenEvent(read.system, openedWords(file.path, read.cautions)));
    location.hash = "#sheet";
  }
}

/** What the figures of a yard's answer are of: the files it was asked of. */
function subjectOf(answer: FleetAnswer, files: readonly YardFile[]): Subject {
  return {
    source: { kind: "fleet", files, answer },
    about: (of) => {
      const [list, at] = of.split(" ");
      if (list === "machine") return `${answer.entries[Number(at)]?.machine}, in the yard.`;
      return `${answer.parts[Number(at)]?.part}, for the yard.`;
    },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    "fleet-place": FleetPlace;
  }
}
