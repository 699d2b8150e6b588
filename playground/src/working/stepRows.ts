import type { UnitSystem } from "@thirstline/study";
import { type Check, letterTex, type Step } from "@thirstline/study/working";
import { html, nothing, type TemplateResult } from "lit";
import { leadsOn, originWords, sentenceOf } from "./originWords.js";
import { typeset } from "./typeset.js";
import { powersHtml, valueText } from "./valueText.js";

/** Rows shown before the rest is folded away. */
const ROWS = 14;

/** A value with more letters than this takes two lines. */
const LONG = 14;

/** How rows act: what happens when one is followed down, and when one is looked at. */
export interface RowActs {
  readonly units: UnitSystem;
  readonly down: (step: Step) => void;
  readonly look: (step: Step | null) => void;
}

/** A step something rests on, with the letter it stands for, or "". */
export interface RowGiven {
  readonly letter: string;
  readonly step: Step;
  /** what the letter means, where the step's own name does not say */
  readonly meaning?: string;
}

/** What was put in: letter, meaning and origin, value. Long lists are folded after the first rows. */
export function rowsTable(rows: readonly RowGiven[], caption: string, acts: RowActs): TemplateResult | typeof nothing {
  if (rows.length === 0) return nothing;
  const rest = rows.slice(ROWS);
  return html`${tableOf(rows.slice(0, ROWS), caption, acts)}
    ${
      rest.length === 0
        ? nothing
        : html`<details><summary>The other ${rest.length}</summary>${tableOf(rest, `${caption}, the rest`, acts)}</details>`
    }`;
}

function tableOf(rows: readonly RowGiven[], caption: string, acts: RowActs): TemplateResult {
  const lettered = rows.some(({ letter }) => letter !== "");
  return html`<table class="rows"><caption class="unseen">${caption}</caption>
    <thead class="unseen"><tr>${lettered ? html`<th scope="col">Letter</th>` : nothing}<th scope="col">Meaning and where from</th>
      <th scope="col">Value</th></tr></thead>
    <tbody>${rows.map((row) => rowOf(row, lettered, acts))}</tbody></table>`;
}

function rowOf({ letter, step, meaning }: RowGiven, lettered: boolean, acts: RowActs): TemplateResult {
  return html`<tr class=${step.part === undefined ? "" : "placed"} @pointerenter=${() => acts.look(step)} @pointerleave=${() => acts.look(null)}
      @focusin=${() => acts.look(step)} @focusout=${() => acts.look(null)}>
    ${lettered ? html`<td class="letter">${typeset(letterTex(letter))}</td>` : nothing}
    <td>${step.name}${meaning === undefined ? nothing : html`, ${meaning}`}<small>${originWords(step)}</small></td>
    <td class=${valueText(step, acts.units).shown.length > LONG ? "value long" : "value"}>${valueCell(step, acts)}</td></tr>`;
}

/** A value; what leads on opens its own working. */
function valueCell(step: Step, { units, down }: RowActs): TemplateResult {
  const { shown, si } = valueText(step, units);
  const below = si === "" ? nothing : html`<small>${powersHtml(si)}</small>`;
  if (!leadsOn(step)) return html`${powersHtml(shown)}${below}`;
  return html`<button type="button" class="figure why" aria-label=${`${shown}, ${step.name}: how it was reached`}
    @click=${() => down(step)}>${powersHtml(shown)}</button>${below}`;
}

const SIGNS = { "=": "=", "<=": "≤", ">=": "≥" } as const;

/** What a figure found by a search must satisfy, both sides worked out at it. */
export function checksList(checks: readonly Check[], acts: RowActs): TemplateResult {
  return html`<ol class="checks">${checks.map(
    ({ words, left, relation, right }) => html`<li><p>${sentenceOf(words)}</p>
      ${tableOf([{ letter: "", step: left }], words, acts)}
      <p class="relation" aria-label=${{ "=": "equals", "<=": "is at most", ">=": "is at least" }[relation]}>${SIGNS[relation]}</p>
      ${tableOf([{ letter: "", step: right }], words, acts)}</li>`,
  )}</ol>`;
}
