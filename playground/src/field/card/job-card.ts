import {
  type CardAnswer,
  type CardItem,
  type CardSection,
  capital,
  cardTitle,
  typeSize,
  type Words,
} from "@thirstline/study";
import { css, html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { FigureShown } from "../../words/wordsHtml.js";
import { asButtons, leavesIn } from "../../working/liveFigures.js";
import type { Subject } from "../../working/Question.js";
import { whyStyles } from "../../working/whyStyles.js";

/** Type on paper over the size the card's own page takes: this page prints at 90 % and its sheet is a little smaller. */
const ON_THIS_PAGE = 1.06;

/** A job card on the screen, with boxes to tick, and on paper, on one sheet. */
@customElement("job-card")
export class JobCard extends LitElement {
  static override styles = css`
    ${whyStyles}
    :host { display: block; background: var(--raised); border: 1px solid var(--rule); padding: clamp(14px, 3vw, 36px); box-sizing: border-box; max-width: 74rem; }
    header { border-bottom: 2px solid var(--ink); margin-bottom: 12px; padding-bottom: 4px; }
    h2 { font-size: 1.5em; line-height: 1.15; margin: 0; overflow-wrap: anywhere; }
    header p { margin: 2px 0 0; overflow-wrap: anywhere; }
    .body { columns: 2 24rem; column-gap: 32px; column-rule: 1px solid var(--rule); }
    h3 { font-size: 1.06em; line-height: 1.2; margin: 0 0 4px; padding-bottom: 2px; border-bottom: 1px solid var(--soft); break-after: avoid; }
    section { margin-bottom: 14px; }
    ul { list-style: none; margin: 0; padding: 0; }
    li { break-inside: avoid; margin: 0 0 3px; overflow-wrap: anywhere; }
    .step { display: grid; grid-template-columns: auto minmax(0, 1fr); gap: 10px; padding: 3px 0; min-height: 24px; }
    .step span { cursor: pointer; }
    input { accent-color: var(--fuel); width: 18px; height: 18px; margin: 0.2em 0 0; }
    input:focus-visible { outline: 3px solid var(--cold); outline-offset: 1px; }
    .step:has(input:checked) { color: var(--soft); }
    b { font-weight: 700; }
    .read { white-space: nowrap; }
    .blank { display: inline-block; width: 5em; border-bottom: 1px solid var(--ink); }
    .cautions { border: 2px solid var(--limit); border-radius: 4px; padding: 10px 16px 6px; margin-bottom: 14px; }
    .cautions h3 { color: var(--limit); border-bottom-color: var(--limit); }
    .cautions ul { columns: 2 20rem; column-gap: 24px; }
    .log ul { display: grid; grid-template-columns: 1fr 1fr; column-gap: 12px; }
    .log { break-inside: avoid; }
    .log .note, .log .line { grid-column: 1 / -1; }
    .field + .note, .line + .note { margin-top: 0.5em; }
    .field, .line { display: flex; align-items: flex-end; gap: 6px; min-height: 1.95em; margin: 0; }
    .field::after, .line::after { content: ""; flex: 1; min-width: 2.5em; border-bottom: 1px solid var(--ink); }
    @media print {
      :host { border: 0; padding: 0; max-width: none; font-size: var(--card-type); line-height: 1.28; }
      header { margin-bottom: 2mm; padding-bottom: 0.8mm; }
      header p { margin: 0; }
      .body { columns: 2; column-gap: 18pt; }
      .cautions ul { columns: 2; column-gap: 14pt; }
      .cautions { padding: 1.3mm 2.2mm 0.8mm; margin-bottom: 2mm; border-width: 1.2pt; }
      section { margin-bottom: 1.7mm; }
      h3 { margin: 0 0 0.7mm; padding-bottom: 0.3mm; }
      li { margin: 0 0 0.5mm; }
      .step { padding: 0; min-height: 0; gap: 0.8em; }
      input { appearance: none; width: 0.95em; height: 0.95em; margin-top: 0.17em; border: 0.8pt solid var(--ink); border-radius: 0.5mm; print-color-adjust: exact; }
      input:checked { background: var(--ink); }
      .step:has(input:checked) { color: inherit; }
      .log ul { column-gap: 3mm; }
    }
  `;
  @property({ attribute: false }) answer!: CardAnswer;
  /** What its figures are of. */
  @property({ attribute: false }) subject!: Subject;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("answer")) {
      this.style.setProperty("--card-type", `${(ON_THIS_PAGE * typeSize(this.answer.sections)).toFixed(2)}pt`);
    }
  }

  override render() {
    const { answer } = this;
    const [cautions, ...rest] = answer.sections;
    const shown = asButtons(leavesIn("card"), this.subject);
    return html`<header><h2>${answer.system}</h2><p>${cardTitle(answer)}</p></header>
      ${cautions === undefined ? "" : section(cautions, shown)}
      <div class="body">${rest.map((one) => section(one, shown))}</div>`;
  }
}

function section({ name, title, items }: CardSection, shown: FigureShown): TemplateResult {
  const place = name.replaceAll(" ", "-");
  return html`<section class=${place}><h3>${title}</h3><ul>${items.map((one, at) => item(one, `${place}-${at}`, shown))}</ul></section>`;
}

/** A step is ticked off at its box or anywhere in its words, but for the figures in them, which open their workings. */
function item({ kind, words }: CardItem, id: string, shown: FigureShown): TemplateResult {
  const text = wordsOf(words, shown);
  return kind === "step"
    ? html`<li><div class="step"><input type="checkbox" aria-labelledby=${id} /><span id=${id} @click=${tickOff}>${text}</span></div></li>`
    : html`<li class=${kind}><span>${text}</span></li>`;
}

function tickOff(event: Event): void {
  const words = event.currentTarget as HTMLElement;
  if (!(event.target as HTMLElement).closest("button")) (words.previousElementSibling as HTMLElement).click();
}

/** Figures stand out; a row of underscores is a place to write in. */
function wordsOf(words: Words, shown: FigureShown): TemplateResult {
  return html`${words.map((piece, at) => {
    if (typeof piece !== "string") return shown(piece) ?? html`<b>${piece.text}</b>`;
    const [first = "", ...more] = (at === 0 ? capital(piece) : piece).split(/_{3,}/);
    if (more.length === 0) return first;
    // The word before a place to write in stays with it.
    const [, before = "", last = ""] = /^(.*?)(\S*\s*)$/s.exec(first) ?? [];
    return html`${before}${more.map((text, place) => html`<span class="read">${place === 0 ? last : ""}<span class="blank"></span></span>${text}`)}`;
  })}`;
}

declare global {
  interface HTMLElementTagNameMap {
    "job-card": JobCard;
  }
}
